using CastBook.Planning;
using CastBook.Planning.Explaining;
using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Explaining;
using CastBook.Workbooks.Files;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Values;
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
        return Run(book, output, bookName, settings, night => NightPlanner.Plan(night, settings.Search), (filling, written) =>
        {
            var places = written.Findings.Select(f => FindingPlace.Of(f, filling.Reading)).ToList();
            return new FillResult(filling.Reading.Night, filling.Plan, written.Findings, places, new PiecePlaces(filling.Reading.Lists), written.Changed);
        });
    }

    /// <summary>Fills a workbook to see how each of its numbers comes to be.</summary>
    /// <param name="book">The workbook; must be able to seek. It is only read.</param>
    /// <param name="output">Where the filled workbook goes, to be thrown away; must be able to read, write and seek.</param>
    /// <param name="bookName">The book's file name with its extension.</param>
    /// <param name="settings">What <c>castbook.json</c> and the environment say.</param>
    /// <returns>What its cells come from.</returns>
    /// <exception cref="BookRefusedException">The workbook cannot be read.</exception>
    /// <exception cref="BrokenOutputException">A fault of CastBook: the filled book does not pass its own checks.</exception>
    public static BookExplanation Explain(Stream book, Stream output, string bookName, BookSettings settings)
    {
        NightAccounts? accounts = null;
        return Run(book, output, bookName, settings, Plan, (filling, written) => new BookExplanation(filling, accounts!, written));

        NightPlan Plan(Night night)
        {
            accounts = NightAccounts.Of(night);
            return accounts.Plan;
        }
    }

    /// <summary>Plans the night of a workbook and writes nothing; flasks in the kiln and poured ones are planned as if they were still to be burnt out.</summary>
    /// <param name="book">The workbook; must be able to seek. It is only read.</param>
    /// <param name="bookName">The book's file name with its extension.</param>
    /// <param name="settings">What <c>castbook.json</c> and the environment say.</param>
    /// <returns>The plan, and the units in which the shop wants its answers.</returns>
    /// <exception cref="BookRefusedException">The workbook cannot be read.</exception>
    public static (NightPlan Plan, ShopUnits Units) PlanBurnout(Stream book, string bookName, BookSettings settings)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(settings);
        var (reading, _, _) = Ready(book, bookName, settings);
        using var package = reading.Package;
        var trees = reading.Night.Trees.Select(t => t.State > FlaskState.Invested ? t with { State = FlaskState.Invested } : t).ToList();
        return (NightPlanner.Plan(reading.Night with { Trees = trees }), reading.Night.Shop.Settings.Units);
    }

    private static T Run<T>(
        Stream book, Stream output, string bookName, BookSettings settings, Func<Night, NightPlan> planning, Func<Filling, WrittenBook, T> answer)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(output);
        ArgumentNullException.ThrowIfNull(bookName);
        ArgumentNullException.ThrowIfNull(settings);
        var (reading, record, typed) = Ready(book, bookName, settings);
        using var package = reading.Package;
        Tidy();
        var plan = planning(reading.Night);
        if (plan.Findings.FirstOrDefault(f => f.Kind == Catalogue.NightWithoutRows) is { } noSuchNight)
        {
            throw new BookRefusedException(noSuchNight);
        }

        Tidy();
        return answer(new Filling(reading, plan, typed), PlanWriter.Write(reading, plan, record, typed, Path.GetFileNameWithoutExtension(bookName), output));
    }

    private static (BookReading Reading, FillRecord Record, TypedCells Typed) Ready(Stream book, string bookName, BookSettings settings)
    {
        var reading = BookReader.Read(book, settings, bookName);
        try
        {
            return Ready(reading);
        }
        catch
        {
            reading.Package.Dispose();
            throw;
        }
    }

    private static (BookReading Reading, FillRecord Record, TypedCells Typed) Ready(BookReading reading)
    {
        if (Own(reading, OwnName.ComputedSheet) is { } computed)
        {
            var pieces = ComputedSheet.WithLastFlasks(reading, computed);
            reading = reading with { Night = reading.Night with { Pieces = pieces } };
        }

        if (Own(reading, OwnName.ClockSheet) is { } clock)
        {
            var findings = new List<Finding>();
            var values = new CellValues(NumberFormats.Read(reading.Package), reading.Package.Date1904);
            reading = reading with { Night = reading.Night with { Done = DoneHoursReader.Read(clock, values, reading.Days, findings) }, Findings = [.. reading.Findings, .. findings] };
        }

        var record = FillRecord.Read(Own(reading, OwnName.ChecksSheet), ChecksSheet.RecordColumn);
        var typed = TypedCells.Find(reading, record);
        return (reading with { Night = typed.Heard(reading) }, record, typed);
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
        ? SheetReader.Read(reading.Package, sheet, reading.Strings)
        : null;
}

/// <summary>A book while it is filled.</summary>
/// <param name="Reading">The book as read.</param>
/// <param name="Plan">The night as answered.</param>
/// <param name="Typed">Cells of computed columns in which a person typed.</param>
internal sealed record Filling(BookReading Reading, NightPlan Plan, TypedCells Typed);

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
