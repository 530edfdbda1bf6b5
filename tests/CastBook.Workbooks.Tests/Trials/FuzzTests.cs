using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;
using System.IO.Compression;
using CastBook.Workbooks.Files;
using CastBook.Workbooks.Settings;
using Xunit.Abstractions;

namespace CastBook.Workbooks.Tests.Trials;

/// <summary>Damaged books, by thousands: each is filled or refused in one sentence; none crashes, hangs or swells, and the book itself is only read.</summary>
/// <remarks><c>CASTBOOK_FUZZ=100000 dotnet test tests/CastBook.Workbooks.Tests --filter FuzzTests</c> tries more than the usual 2,000.</remarks>
[Collection(Alone.Name)]
public sealed class FuzzTests(ITestOutputHelper output)
{
    private static readonly int Inputs = int.Parse(Environment.GetEnvironmentVariable("CASTBOOK_FUZZ") ?? "2000", CultureInfo.InvariantCulture);
    private static readonly TimeSpan Hang = TimeSpan.FromSeconds(30);

    private static readonly string[] Sources =
    [
        "01_rich_excel365_like.xlsx", "03_chart_pivot_slicer_totals.xlsx", "04_strict_iso29500.xlsx", "06b_libreoffice_macro_ext.xlsm",
        "07_exceljs_webform.xlsx", "09_sheetjs_export.xlsx", "11_spreadcheetah_noref.xlsx", "14_openxmlsdk_minimal.xlsx",
    ];

    [Fact]
    public void Fill_DamagedBook_IsFilledOrRefused()
    {
        var books = Sources.Select(name => (name, File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "Books", name)))).ToList();
        var faults = new ConcurrentQueue<string>();
        var (filled, refused, most) = (0, 0, 0L);
        var before = GC.GetTotalMemory(forceFullCollection: true);
        Parallel.For(0, Inputs, new ParallelOptions { MaxDegreeOfParallelism = Environment.ProcessorCount }, seed =>
        {
            var random = new Random(seed);
            var (name, book) = books[random.Next(books.Count)];
            var damaged = Damage(book, random);
            var copy = damaged.ToArray();
            var watch = Stopwatch.StartNew();
            try
            {
                using var source = new MemoryStream(damaged, writable: false);
                using var target = new MemoryStream();
                BookFiller.Fill(source, target, name, BookSettings.None);
                Interlocked.Increment(ref filled);
            }
            catch (Exception e) when (e is BookRefusedException || e is InvalidDataException)
            {
                // Damage that only writing meets is told as a refusal by whoever puts the book in its place.
                Interlocked.Increment(ref refused);
            }
#pragma warning disable CA1031 // Do not catch general exception types: all others are faults, and all are wanted.
            catch (Exception e)
#pragma warning restore CA1031
            {
                faults.Enqueue($"seed {seed}, {name}: {e.GetType().Name} {e.Message.Split('\n')[0]} {e.StackTrace?.Split('\n').FirstOrDefault(l => l.Contains("CastBook", StringComparison.Ordinal))?.Trim()}");
            }

            if (watch.Elapsed > Hang)
            {
                faults.Enqueue($"seed {seed}, {name}: took {watch.Elapsed.TotalSeconds:0} s");
            }

            if (!damaged.AsSpan().SequenceEqual(copy))
            {
                faults.Enqueue($"seed {seed}, {name}: the book itself was altered");
            }

            Raise(ref most, GC.GetTotalMemory(forceFullCollection: false) - before);
        });

        output.WriteLine($"{Inputs} damaged books: {filled} filled, {refused} refused, {most / 1_000_000} MB at most");
        faults.Take(20).ShouldBeEmpty();
        most.ShouldBeLessThan(300_000_000);
        filled.ShouldBeGreaterThan(Inputs / 20);
        refused.ShouldBeGreaterThan(Inputs / 20);
    }

    private static void Raise(ref long most, long to)
    {
        for (var seen = Volatile.Read(ref most); to > seen; seen = Volatile.Read(ref most))
        {
            Interlocked.CompareExchange(ref most, to, seen);
        }
    }

    private static byte[] Damage(byte[] book, Random random) => random.Next(4) == 0 ? Bytes(book, random) : Parts(book, random);

    // The container itself: bytes changed, cut off, doubled.
    private static byte[] Bytes(byte[] book, Random random)
    {
        var bytes = book.ToList();
        for (var change = random.Next(1, 6); change > 0; change--)
        {
            var at = random.Next(bytes.Count);
            switch (random.Next(4))
            {
                case 0: bytes[at] = (byte)random.Next(256); break;
                case 1: bytes.RemoveRange(at, Math.Min(random.Next(1, 400), bytes.Count - at)); break;
                case 2: bytes.InsertRange(at, bytes.GetRange(at, Math.Min(random.Next(1, 400), bytes.Count - at))); break;
                default: bytes[bytes.Count - 1 - random.Next(Math.Min(bytes.Count, 120))] ^= (byte)(1 << random.Next(8)); break;
            }

            if (bytes.Count == 0)
            {
                break;
            }
        }

        return [.. bytes];
    }

    // The parts in a sound container: markup cut, doubled, swapped, values made strange.
    private static byte[] Parts(byte[] book, Random random)
    {
        using var source = new ZipArchive(new MemoryStream(book));
        using var result = new MemoryStream();
        using (var target = new ZipArchive(result, ZipArchiveMode.Create, leaveOpen: true))
        {
            var victim = source.Entries[random.Next(source.Entries.Count)].FullName;
            var second = source.Entries[random.Next(source.Entries.Count)].FullName;
            foreach (var entry in source.Entries)
            {
                using var from = new StreamReader(entry.Open(), System.Text.Encoding.Latin1);
                var text = from.ReadToEnd();
                if (entry.FullName == victim || (entry.FullName == second && random.Next(3) == 0))
                {
                    if (random.Next(40) == 0)
                    {
                        continue;
                    }

                    text = Markup(text, random);
                }

                using var to = new StreamWriter(target.CreateEntry(entry.FullName).Open(), System.Text.Encoding.Latin1);
                to.Write(text);
            }
        }

        return result.ToArray();
    }

    private static string Markup(string text, Random random)
    {
        string[] strange =
        [
            "", "-1", "0", "99999999999", "1048577", "XFE1", "A0", "A1:", "#REF!", "NaN", "1e400", "&#0;", "&lt;", "&unknown;", "<", ">", "\"", "]]>", "<!--", "<?x?>", "<![CDATA[",
            "\uFFFD", "\0", "true", "<!DOCTYPE a [<!ENTITY b \"c\">]>", new string('9', 400), new string('<', 50), "<a><a><a>", "</worksheet>", "xmlns:x=\"y\"", "../../../etc/passwd",
        ];
        for (var change = random.Next(1, 5); change > 0 && text.Length > 2; change--)
        {
            var at = random.Next(text.Length);
            var (open, close) = (text.IndexOf('<', at), text.IndexOf('>', at));
            var (quote, next) = (text.IndexOf('"', at), 0);
            next = quote < 0 ? -1 : text.IndexOf('"', quote + 1);
            text = random.Next(6) switch
            {
                0 when open >= 0 && close > open => text.Remove(open, close - open + 1),
                1 when open >= 0 && close > open => text.Insert(open, text[open..(close + 1)]),
                2 when next > quote => text[..(quote + 1)] + strange[random.Next(strange.Length)] + text[next..],
                3 => text.Insert(at, strange[random.Next(strange.Length)]),
                4 => text[..at],
                _ => text.Remove(at, Math.Min(random.Next(1, 60), text.Length - at)),
            };
        }

        return text;
    }
}

/// <summary>Tests beside which no others run, as they look at the memory of the whole process.</summary>
[CollectionDefinition(Name, DisableParallelization = true)]
public sealed class Alone
{
    public const string Name = "alone";
}
