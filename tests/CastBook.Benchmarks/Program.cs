using BenchmarkDotNet.Running;
using CastBook.Benchmarks;

// dotnet run -c Release --project tests/CastBook.Benchmarks                      times
// dotnet run -c Release --project tests/CastBook.Benchmarks -- memory            peak memory of one fill, metal only
// dotnet run -c Release --project tests/CastBook.Benchmarks -- memory flasks     the same with the shop's flasks, so with a plan
// dotnet run -c Release --project tests/CastBook.Benchmarks -- memory floor      the same for unzip and rezip alone
// dotnet run -c Release --project tests/CastBook.Benchmarks -- book FILE [flasks]  writes the book that is timed
// Only ratios count: absolute times and bytes are those of one machine.
switch (args)
{
    case ["memory", .. var what]:
        PeakMemory.Print(what);
        break;
    case ["book", var path, .. var what]:
        File.WriteAllBytes(path, LargeBook.Make(LargeBook.RowsIn(what), withFlasks: what.Contains("flasks")));
        break;
    default:
        BenchmarkRunner.Run<FillBenchmarks>(args: args);
        break;
}
