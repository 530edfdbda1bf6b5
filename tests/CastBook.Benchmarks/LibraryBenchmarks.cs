using BenchmarkDotNet.Attributes;
using BenchmarkDotNet.Engines;

namespace CastBook.Benchmarks;

/// <summary>
/// Question: how long does the same job take when a general library loads the book, sets the two metal columns and saves it?
/// The metal is worked out beforehand, and nothing is checked or marked, so the library has less to do.
/// </summary>
[MemoryDiagnoser]
[MedianColumn]
[SimpleJob(RunStrategy.Monitoring, launchCount: 1, warmupCount: 1, iterationCount: 3)]
public class LibraryBenchmarks
{
    private byte[] book = [];
    private List<(int Row, double MetalEachGrams)> metal = [];

    /// <summary>Makes the book.</summary>
    [GlobalSetup]
    public void Prepare()
    {
        book = LargeBook.Make(LargeBook.UsualRows, withFlasks: false);
        metal = LargeBookMetal.Rows(LargeBook.UsualRows);
        FilledCheck.Require(book, Filling.Run(book), LargeBook.UsualRows, withFlasks: false);
    }

    /// <summary>The job.</summary>
    [Benchmark(Baseline = true)]
    public int Fill() => Filling.Run(book).Length;

    /// <summary>ClosedXML: load, edit, save.</summary>
    [Benchmark]
    public int LoadEditSave() => LibraryEdit.Run(book, metal).Length;
}
