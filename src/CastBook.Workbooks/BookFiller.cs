using CastBook.Planning;
using CastBook.Planning.Findings;
using CastBook.Workbooks.Files;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reports;
using CastBook.Workbooks.Settings;
using CastBook.Workbooks.Sheets;
using CastBook.Workbooks.Verifying;
using CastBook.Workbooks.Writing;

namespace CastBook.Workbooks;

/// <summary>The main job: a shop's workbook in, the same workbook filled.</summary>
public static class BookFiller
{
    private const long MuchMemory = 24_000_000;

    /// <summary>Fills a workbook.</summary>
    /// <param name="book">The workbook; must be able to seek. It is only read.</param>
    /// <param name="output">Where the filled workbook goes; must be able to read, write and seek.</param>
    /// <param name="bookName">The book's file name with its extension, for titles and for telling a wrong extension.</param>
    /// <param name="settings">What <c>castbook.json</c> and the environment say.</param>
    /// <returns>What was answered, and whether any part of the book differs from before.</returns>
    /// <exception cref="BookRefusedException">The workbook cannot be read. Nothing was written to it.</exception>
    /// <exception cref="BrokenOutputException">A fault of CastBook: the filled book does not pass its own checks.</exception>
    public static FillResult Fill(Stream book, Stream output, string bookName, BookSettings settings)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(output);
        ArgumentNullException.ThrowIfNull(bookName);
        ArgumentNullException.ThrowIfNull(settings);
        var reading = BookReader.Read(book, settings, bookName);
        using var package = reading.Package;
        if (Own(reading, OwnName.ComputedSheet) is { } computed)
        {
            var pieces = ComputedSheet.WithLastFlasks(reading, computed);
            reading = reading with { Night = reading.Night with { Pieces = pieces } };
        }

        var record = FillRecord.Read(Own(reading, OwnName.ChecksSheet), ChecksSheet.RecordColumn);
        var typed = TypedCells.Find(reading, record);
        reading = reading with { Night = typed.Heard(reading) };
        Tidy();
        var plan = NightPlanner.Plan(reading.Night);
        Tidy();
        var written = BookWriter.Write(reading, plan, record, typed, Path.GetFileNameWithoutExtension(bookName), output);
        var places = written.Findings.Select(f => FindingPlace.Of(f, reading)).ToList();
        return new FillResult(reading.Night, plan, written.Findings, places, new PiecePlaces(reading.Lists), written.Changed);
    }

    // Between two steps little of a long list's memory is in use; left alone, the runtime would take half as much again.
    private static void Tidy()
    {
        if (GC.GetTotalMemory(forceFullCollection: false) > MuchMemory)
        {
            GC.Collect(GC.MaxGeneration, GCCollectionMode.Aggressive, blocking: true, compacting: true);
        }
    }

    private static SheetGrid? Own(BookReading reading, string ownName) => reading.OwnSheets.TryGetValue(ownName, out var sheet)
        ? SheetReader.Read(reading.Package, sheet, SharedStrings.Read(reading.Package))
        : null;
}

/// <summary>What filling answered.</summary>
/// <param name="Night">What was asked.</param>
/// <param name="Plan">What was answered.</param>
/// <param name="Findings">Everything found, repeats folded, stops first.</param>
/// <param name="Places">Where each finding stands, in the same order.</param>
/// <param name="Pieces">Where each piece stands.</param>
/// <param name="Changed">Whether any part of the book differs from before.</param>
public sealed record FillResult(
    Night Night,
    NightPlan Plan,
    IReadOnlyList<Finding> Findings,
    IReadOnlyList<FindingPlace> Places,
    PiecePlaces Pieces,
    bool Changed);
