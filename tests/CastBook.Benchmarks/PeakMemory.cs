using System.Diagnostics;
using System.Globalization;

namespace CastBook.Benchmarks;

/// <summary>Question: how much memory does one fill take at its peak, in a process of its own?</summary>
internal static class PeakMemory
{
    /// <summary>Runs once and prints the peak working set.</summary>
    /// <param name="what"><c>many</c> for 100,000 rows, <c>flasks</c> for a book with the shop's flasks, <c>floor</c> for unzip and rezip alone.</param>
    public static void Print(string[] what)
    {
        // The book is made in another process, so that making it does not count.
        var path = Path.GetTempFileName();
        try
        {
            MakeElsewhere(path, what);
            using var input = File.OpenRead(path);
            using var output = new FileStream(Path.GetTempFileName(), FileMode.Create, FileAccess.ReadWrite, FileShare.None, 1 << 16, FileOptions.DeleteOnClose);
            var clock = Stopwatch.StartNew();
            if (what.Contains("floor"))
            {
                Rezip.Run(input, output);
            }
            else
            {
                Filling.Run(input, output);
            }

            clock.Stop();
            using var process = Process.GetCurrentProcess();
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"{string.Join(' ', what)}: {input.Length:N0} bytes in, {output.Length:N0} out, {clock.ElapsedMilliseconds} ms cold, peak working set {process.PeakWorkingSet64 / 1e6:N1} MB"));
        }
        finally
        {
            File.Delete(path);
        }
    }

    private static void MakeElsewhere(string path, string[] what)
    {
        string[] arguments = [typeof(PeakMemory).Assembly.Location, "book", path, .. what];
        using var maker = Process.Start("dotnet", arguments);
        maker.WaitForExit();
    }
}
