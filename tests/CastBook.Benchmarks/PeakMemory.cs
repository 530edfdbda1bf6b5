using System.Diagnostics;
using System.Globalization;

namespace CastBook.Benchmarks;

/// <summary>Question: how much memory does one fill take at its peak, in a process of its own?</summary>
internal static class PeakMemory
{
    /// <summary>Runs once and prints the peak working set.</summary>
    /// <param name="what"><c>flasks</c> for a book with the shop's flasks, <c>floor</c> for unzip and rezip alone.</param>
    public static void Print(string[] what)
    {
        // The book is made in another process, so that making it does not count.
        var path = Path.GetTempFileName();
        try
        {
            MakeElsewhere(path, what.Contains("flasks"));
            var book = File.ReadAllBytes(path);
            var clock = Stopwatch.StartNew();
            var length = (what.Contains("floor") ? Rezip.Run(book) : Filling.Run(book)).Length;
            clock.Stop();
            using var process = Process.GetCurrentProcess();
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"{string.Join(' ', what)}: {book.Length:N0} bytes in, {length:N0} out, {clock.ElapsedMilliseconds} ms cold, peak working set {process.PeakWorkingSet64 / 1e6:N1} MB"));
        }
        finally
        {
            File.Delete(path);
        }
    }

    private static void MakeElsewhere(string path, bool withFlasks)
    {
        string[] arguments = [typeof(PeakMemory).Assembly.Location, "book", path, .. withFlasks ? ["flasks"] : Array.Empty<string>()];
        using var maker = Process.Start("dotnet", arguments);
        maker.WaitForExit();
    }
}
