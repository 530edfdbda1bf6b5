using BenchmarkDotNet.Running;
using CastBook.Benchmarks;

// dotnet run -c Release --project tests/CastBook.Benchmarks                      times, all of them
// dotnet run -c Release --project tests/CastBook.Benchmarks -- --filter *Fill*   times of filling beside unzip and rezip
// dotnet run -c Release --project tests/CastBook.Benchmarks -- memory [many]     peak memory of one fill, metal only; of 100,000 rows
// dotnet run -c Release --project tests/CastBook.Benchmarks -- memory flasks     the same with the shop's flasks, so with a plan
// dotnet run -c Release --project tests/CastBook.Benchmarks -- memory floor      the same for unzip and rezip alone
// dotnet run -c Release --project tests/CastBook.Benchmarks -- book FILE [flasks]  writes the book that is timed
// dotnet run -c Release --project tests/CastBook.Benchmarks -- packing [20 [200]]  what the search for flasks reaches on invented nights; on those of 200 pieces only
// Only ratios count: absolute times and bytes are those of one machine.
switch (args)
{
    case ["memory", .. var what]:
        PeakMemory.Print(what);
        break;
    case ["packing", .. var what]:
        PackingFigures.Print(what);
        break;
    case ["book", var path, .. var what]:
        File.WriteAllBytes(path, LargeBook.Make(LargeBook.RowsIn(what), withFlasks: what.Contains("flasks")));
        break;
    default:
        Time(args);
        break;
}

// In a method of its own, so that the library that times is not loaded where memory is measured.
static void Time(string[] args) => BenchmarkSwitcher.FromAssembly(typeof(FillBenchmarks).Assembly).Run(args.Length == 0 ? ["--filter", "*"] : args);
