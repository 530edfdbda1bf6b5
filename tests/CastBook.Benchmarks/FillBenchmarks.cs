using BenchmarkDotNet.Attributes;
using BenchmarkDotNet.Engines;

namespace CastBook.Benchmarks;

/// <summary>
/// Question: how long does filling a book of 20 columns take, and how much does it allocate, beside inflating and
/// deflating the same file in the same run? Without flasks metal is computed and nothing planned; with flasks the whole night is.
/// </summary>
[MemoryDiagnoser]
[MinColumn]
[MedianColumn]
[SimpleJob(RunStrategy.Monitoring, launchCount: 1, warmupCount: 6, iterationCount: 9)]
public class FillBenchmarks
{
    private byte[] book = [];

    /// <summary>The books: rows, and whether the shop's flasks are in it.</summary>
    public static IEnumerable<(int Rows, bool Flasks)> Books => [(LargeBook.UsualRows, false), (LargeBook.UsualRows, true), (LargeBook.ManyRows, false)];

    /// <summary>The book that is filled.</summary>
    [ParamsSource(nameof(Books))]
    public (int Rows, bool Flasks) Book { get; set; }

    /// <summary>Makes the book, and checks once what is going to be timed.</summary>
    [GlobalSetup]
    public void Prepare()
    {
        book = LargeBook.Make(Book.Rows, Book.Flasks);
        SavedCells.RequireEqual(SavedCells.Of(book), SavedCells.Of(Rezip.Run(book)));
        FilledCheck.Require(book, Filling.Run(book), Book.Rows, Book.Flasks);
    }

    /// <summary>The floor.</summary>
    [Benchmark(Baseline = true)]
    public int UnzipAndRezip() => Rezip.Run(book).Length;

    /// <summary>The job.</summary>
    [Benchmark]
    public int Fill() => Filling.Run(book).Length;
}
