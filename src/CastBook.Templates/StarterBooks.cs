using CastBook.Planning.Shops;
using CastBook.Templates.Sheets;
using CastBook.Templates.Starters;
using CastBook.Templates.Words;
using CastBook.Templates.Writing;
using CastBook.Workbooks.Adopting;
using CastBook.Workbooks.Clearing;

namespace CastBook.Templates;

/// <summary>The workbooks that a shop starts from.</summary>
public static class StarterBooks
{
    /// <summary>Every example row that a new book may hold, to be known again later.</summary>
    public static IReadOnlyList<KnownRow> ExampleRows { get; } =
    [
        .. from kind in Enum.GetValues<StarterKind>()
           from units in Enum.GetValues<UnitHabit>()
           from sheet in Content(kind, units, withExamples: true).Sheets
           from row in sheet.Rows
           where ExampleName.Is(row[0] as string)
           select Known(sheet.Spec, row),
    ];

    /// <summary>Writes a new book: sheets to fill in, and a first one that says how to use them.</summary>
    /// <param name="output">Where the .xlsx goes; left open.</param>
    /// <param name="kind">What it is for.</param>
    /// <param name="units">In which units it asks.</param>
    /// <param name="withExamples">Whether the example rows of an invented shop stand in it.</param>
    /// <exception cref="ArgumentNullException"><paramref name="output"/> is null.</exception>
    public static void Write(Stream output, StarterKind kind, UnitHabit units = UnitHabit.Metric, bool withExamples = true)
    {
        ArgumentNullException.ThrowIfNull(output);
        NewBookWriter.Write(Content(kind, units, withExamples), output);
    }

    /// <summary>Writes a shop file that holds what a shop has said of itself.</summary>
    /// <param name="output">Where the .xlsx goes; left open.</param>
    /// <param name="answers">What was said, numbers under headings in these units.</param>
    /// <param name="shop">The units in which the shop works.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static void WriteShop(Stream output, ShopAnswers answers, ShopUnits shop)
    {
        ArgumentNullException.ThrowIfNull(output);
        ArgumentNullException.ThrowIfNull(answers);
        ArgumentNullException.ThrowIfNull(shop);
        var content = Content(StarterKind.Shop, UnitHabit.Metric, withExamples: false);
        NewBookWriter.Write(
            content with { Sheets = [.. content.Sheets.Select(s => Answered(SheetUnits.Of(s.Spec, shop), answers, shop))], IsOnLetter = IsOnLetter(shop) }, output);
    }

    /// <summary>Writes a shop file that asks what is open and nothing else.</summary>
    /// <param name="output">Where the .xlsx goes; left open.</param>
    /// <param name="answers">What is known, such as the names that stand in the list.</param>
    /// <param name="open">What is asked.</param>
    /// <param name="shop">The units in which the shop works.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static void WriteQuestions(Stream output, ShopAnswers answers, ShopQuestions open, ShopUnits shop)
    {
        ArgumentNullException.ThrowIfNull(output);
        ArgumentNullException.ThrowIfNull(answers);
        ArgumentNullException.ThrowIfNull(open);
        ArgumentNullException.ThrowIfNull(shop);
        // Drop-down lists of the others take their words from these two.
        bool IsAsked(SheetSpec spec) => spec.Name is AlloysSheet.Name or MaterialsSheet.Name || open.Sheets.Contains(spec.Name)
            || (spec.Name == SettingsSheet.Name && open.Settings.Count > 0);
        NewBookWriter.Write(
            new BookContent(BookTitleWords.Shop, HowToWords.Asking,
            [
                .. ShopSheets.All.Skip(1).Where(IsAsked).Select(spec => Answered(SheetUnits.Of(spec, shop), answers, shop))
                    .Select(s => s.Spec.Name == SettingsSheet.Name ? s with { Rows = [.. s.Rows.Where(row => open.Settings.Contains((string)row[0]!))] } : s),
            ])
            { IsOnLetter = IsOnLetter(shop) },
            output);
    }

    private static bool IsOnLetter(ShopUnits shop) => shop.Length == WrittenLength.Inch;

    private static SheetContent Answered(SheetSpec spec, ShopAnswers answers, ShopUnits shop) => new(spec, spec.Name == SettingsSheet.Name
        ? RowOf.Settings(answers.Settings, shop)
        : [.. answers.Lines.Where(l => l.Sheet == spec.Name).Select(l => RowOf.Headings(spec, [.. l.Values.Keys], [.. l.Values.Values]))]);

    private static BookContent Content(StarterKind kind, UnitHabit units, bool withExamples)
    {
        var (title, specs) = kind switch
        {
            StarterKind.Night => (BookTitleWords.Night, ShopSheets.All),
            StarterKind.List => (BookTitleWords.List, [ShortPiecesSheet.Spec]),
            StarterKind.Shop => (BookTitleWords.Shop, [.. ShopSheets.All.Skip(1)]),
            _ => (BookTitleWords.Results, [ResultsSheet.Spec, ResultWordsSheet.Spec]),
        };
        return new BookContent(title, HowTo.Of(kind, withExamples), [.. specs.Select(s => Sheet(s, kind, units, withExamples))]) { IsOnLetter = units == UnitHabit.Us };
    }

    private static SheetContent Sheet(SheetSpec spec, StarterKind kind, UnitHabit units, bool withExamples)
    {
        var rows = spec.Name switch
        {
            SettingsSheet.Name => units == UnitHabit.Us ? RowOf.Settings(UsUnits.Answers, ShopUnits.UnitedStates) : RowOf.Settings(null),
            ResultWordsSheet.Name => ResultWordsSheet.Rows(withExamples),
            _ => withExamples ? Examples.Rows(spec, kind) : [],
        };
        return units == UnitHabit.Us ? UsUnits.Of(spec, rows) : new SheetContent(spec, rows);
    }

    private static KnownRow Known(SheetSpec spec, IReadOnlyList<object?> row) => new(
        spec.Name,
        spec.Columns.Select((c, i) => (c.Heading, Value: row[i])).Where(c => c.Value is not null).ToDictionary(c => c.Heading, c => c.Value!, StringComparer.Ordinal));
}
