using System.Globalization;
using CastBook.Cli.Tests.Watching;
using Xunit.Abstractions;

namespace CastBook.Cli.Tests.Trials;

/// <summary>
/// The program is killed at instants spread over its run. After each the book is the old one or the new one, whole, no backup is
/// half, and the next run puts everything right.
/// </summary>
/// <remarks><c>CASTBOOK_KILLS=500 dotnet test tests/CastBook.Cli.Tests --filter KillTests</c> runs more than the usual 25.</remarks>
public sealed class KillTests(ITestOutputHelper output) : IDisposable
{
    private static readonly int Kills = int.Parse(Environment.GetEnvironmentVariable("CASTBOOK_KILLS") ?? "25", CultureInfo.InvariantCulture);

    private readonly Watched folder = new();
    private readonly Random random = new(20261201);

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Fill_KilledAtAnyInstant_LosesNothing()
    {
        var (before, after, whole) = WholeRun();
        var (wasOld, wasNew) = (0, 0);
        for (var kill = 0; kill < Kills; kill++)
        {
            Clear();
            File.WriteAllBytes(folder.Of("night.xlsx"), before);

            // Writing stands at the end of a run: most kills fall there.
            Killed(["fill", "night.xlsx"], whole * (kill % 5 == 0 ? random.NextDouble() : 0.6 + (random.NextDouble() * 0.5)));

            var left = File.ReadAllBytes(folder.Of("night.xlsx"));
            (Same(left, before) || Same(left, after)).ShouldBeTrue();
            var isNew = Same(left, after);
            (wasOld, wasNew) = isNew ? (wasOld, wasNew + 1) : (wasOld + 1, wasNew);
            AllBackupsAre(before, isNew ? 1 : 0);
            CastBookRun.In(folder.Path, ["fill", "night.xlsx"]).ExitCode.ShouldBe(0);
            File.ReadAllBytes(folder.Of("night.xlsx")).ShouldBe(after);
            folder.Names.ShouldBe(["night.xlsx"]);
            AllBackupsAre(before, 1);
        }

        // Some fell before the swap, so that the kills were no kills of nothing.
        output.WriteLine($"{Kills} kills: {wasOld} left the old book, {wasNew} the new one");
        wasOld.ShouldBeGreaterThan(0);
    }

    [Fact]
    public void Watch_KilledAtAnyInstant_LosesNothingAndFillsTheRest()
    {
        // A book's own name stands in the titles of its sheets, so each has a result of its own.
        string[] names = ["a.xlsx", "b.xlsx", "c.xlsx"];
        var before = File.ReadAllBytes(folder.Book());
        File.Delete(folder.Of("night.xlsx"));
        Array.ForEach(names, name => File.WriteAllBytes(folder.Of(name), before));
        CastBookRun.In(folder.Path, ["watch", ".", "--once"]).ExitCode.ShouldBe(0);
        var after = names.ToDictionary(name => name, name => File.ReadAllBytes(folder.Of(name)), StringComparer.Ordinal);
        var (wasOld, wasNew) = (0, 0);
        for (var kill = 0; kill < (Kills + 4) / 5; kill++)
        {
            Clear();
            Array.ForEach(names, name => File.WriteAllBytes(folder.Of(name), before));

            Killed(["watch", ".", "--once"], TimeSpan.FromSeconds(2.3) + (TimeSpan.FromSeconds(1) * random.NextDouble()));

            foreach (var name in names)
            {
                var left = File.ReadAllBytes(folder.Of(name));
                (Same(left, before) || Same(left, after[name])).ShouldBeTrue();
                (wasOld, wasNew) = Same(left, before) ? (wasOld + 1, wasNew) : (wasOld, wasNew + 1);
            }

            CastBookRun.In(folder.Path, ["watch", ".", "--once"]).ExitCode.ShouldBe(0);
            names.ShouldAllBe(name => Same(File.ReadAllBytes(folder.Of(name)), after[name]));
            folder.Names.ShouldBe(names);
            AllBackupsAre(before, 3);
        }

        output.WriteLine($"{(Kills + 4) / 5} kills of a watcher with three books: {wasOld} were the old one, {wasNew} the new one");
    }

    private (byte[] Before, byte[] After, TimeSpan Whole) WholeRun()
    {
        var before = File.ReadAllBytes(folder.Book());
        var watch = System.Diagnostics.Stopwatch.StartNew();
        CastBookRun.In(folder.Path, ["fill", "night.xlsx"]).ExitCode.ShouldBe(0);
        return (before, File.ReadAllBytes(folder.Of("night.xlsx")), watch.Elapsed);
    }

    private void Killed(string[] words, TimeSpan after)
    {
        using var run = CastBookRun.Start(folder.Path, words);
        run.WaitForExit(after);
        run.Kill();
        run.WaitForExit();
    }

    private void AllBackupsAre(byte[] before, int atLeast)
    {
        var kept = folder.Of(".castbook");
        var backups = Directory.Exists(kept) ? Directory.GetFiles(kept, "*.xlsx").Where(f => !Path.GetFileName(f).StartsWith('.')).ToList() : [];
        backups.Count.ShouldBeGreaterThanOrEqualTo(atLeast);
        backups.Where(backup => !Same(File.ReadAllBytes(backup), before)).ShouldBeEmpty();
    }

    private static bool Same(byte[] one, byte[] other) => one.AsSpan().SequenceEqual(other);

    private void Clear()
    {
        foreach (var file in Directory.GetFiles(folder.Path, "*", new EnumerationOptions { AttributesToSkip = 0, RecurseSubdirectories = true }))
        {
            File.Delete(file);
        }
    }
}
