using CastBook.Planning;
using CastBook.Planning.Explaining;
using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Words;
using CastBook.Workbooks.Writing;

namespace CastBook.Workbooks.Sheets;

/// <summary>
/// The trees: a line a flask with the cells to weigh into and the charge that follows, and below it a block a flask: letter,
/// drawing, and what hangs on the tree column by column from the button up.
/// </summary>
internal static class TreesSheet
{
    private const int HeadingRow = 4;
    private const int FirstShopColumn = 5;

    // What an A4 or Letter page takes at the scale it is printed at.
    private const int PrintScale = 75;
    private const double PagePoints = 940;
    private const double LinePoints = 24;

    private static readonly string[] Fields = [ShopField.Base, ShopField.TreeOnBase, ShopField.OfItWax, ShopField.State, ShopField.Charge];

    /// <summary>The headings of the cells that are the shop's.</summary>
    public static IReadOnlyCollection<string> ShopHeadings { get; } = [.. WrittenMass.OfMetal.SelectMany(unit => TreesSheetWords.Weighings(unit.Name)), TreesSheetWords.State];

    /// <summary>Makes the sheet, and tells where its cells stand.</summary>
    /// <param name="context">What it is made from.</param>
    /// <param name="kept">What the shop wrote on it.</param>
    public static OwnedSheet Make(SheetContext context, KeptCells kept)
    {
        var sheet = new OwnedSheet(TreesSheetWords.Sheet) { HeadingRow = HeadingRow, PrintScale = PrintScale, Widths = [8, 13, 20, 11, 11, 13, 12, 11, 12, 13] };
        sheet.Set(1, 1, TreesSheetWords.Title(context.BookName), CellLook.Title);
        sheet.Set(2, 1, TreesSheetWords.Under, CellLook.Small);
        sheet.Set(3, 1, context.Worth, CellLook.Small);
        var unit = WeighedIn(kept) ?? context.Units.Metal;
        var headings = TreesSheetWords.Headings(unit.Name, context.Units.Metal.Name);
        for (var column = 1; column <= headings.Length; column++)
        {
            sheet.Set(HeadingRow, column, headings[column - 1], column == 1 ? CellLook.FirstHeading : column is >= 4 and <= 7 or 9 ? CellLook.NumberHeading : CellLook.Heading);
        }

        sheet.Height(HeadingRow, 32);
        var row = HeadingRow;
        foreach (var flask in context.Plan.Flasks)
        {
            WriteLine(sheet, ++row, flask, kept, unit, context.Units.Metal);
        }

        foreach (var tree in context.Plan.TreesWithoutNumbers)
        {
            WriteLine(sheet, ++row, tree, kept, unit);
        }

        if (row > HeadingRow)
        {
            sheet.Choose(new CellRange(HeadingRow + 1, 8, row, 8), "planned", "waxed", "invested", "in kiln", "poured");
        }

        WriteBlocks(sheet, row + 2, context);
        return sheet;
    }

    /// <summary>Tells where the sheet's cells stand and marks those that findings speak of.</summary>
    /// <param name="sheet">The sheet, under its final name.</param>
    /// <param name="context">What it is made from.</param>
    public static void Map(OwnedSheet sheet, SheetContext context)
    {
        var row = HeadingRow;
        foreach (var letter in context.Plan.Flasks.Select(f => f.Letter).Concat(context.Plan.TreesWithoutNumbers.Select(t => t.Flask)))
        {
            row++;
            context.Cells.Add(Subject.Flask(letter), new CellRef(sheet.Name, row, 1));
            context.Cells.Add(Subject.Flask(letter, ShopField.Size), new CellRef(sheet.Name, row, 2));
            for (var i = 0; i < Fields.Length; i++)
            {
                context.Cells.Add(Subject.Flask(letter, Fields[i]), new CellRef(sheet.Name, row, FirstShopColumn + i));
            }
        }
    }

    /// <summary>A block a flask, two on a page where they fit; the first ones stand under the list.</summary>
    private static void WriteBlocks(OwnedSheet sheet, int row, SheetContext context)
    {
        var used = LinePoints * row;
        foreach (var flask in context.Plan.Flasks)
        {
            var end = TreeBlock.Write(sheet, row, flask, context);
            var height = TreeBlock.Height(end - row);
            if (used + height > PagePoints)
            {
                sheet.StartPage(row);
                used = 0;
            }

            used += height;
            row = end;
        }
    }

    // What was typed in one unit is never shown under the heading of another: the headings change once the cells are empty.
    private static WrittenMass? WeighedIn(KeptCells kept) => WrittenMass.OfMetal.FirstOrDefault(unit => TreesSheetWords.Weighings(unit.Name).Any(kept.Holds));

    private static void WriteLine(OwnedSheet sheet, int row, string letter, string? size, KeptCells kept, WrittenMass unit)
    {
        sheet.Height(row, 24);
        sheet.Set(row, 1, letter, CellLook.Letter);
        sheet.Set(row, 2, size, CellLook.Text);
        foreach (var (place, heading) in TreesSheetWords.Weighings(unit.Name).Append(TreesSheetWords.State).Index())
        {
            sheet.Set(row, FirstShopColumn + place, kept.Of(letter, heading), heading == TreesSheetWords.State ? CellLook.Box : CellLook.BoxNumber);
        }
    }

    /// <summary>A tree that is under way but of which something is not known: its line is kept as the shop left it.</summary>
    private static void WriteLine(OwnedSheet sheet, int row, TreeInHand tree, KeptCells kept, WrittenMass unit)
    {
        WriteLine(sheet, row, tree.Flask, tree.Size, kept, unit);
        sheet.Set(row, 3, TreesSheetWords.SeeChecks, CellLook.Text);
    }

    private static void WriteLine(OwnedSheet sheet, int row, FlaskPlan flask, KeptCells kept, WrittenMass unit, WrittenMass metal)
    {
        WriteLine(sheet, row, flask.Letter, flask.Size.Name, kept, unit);
        sheet.Set(row, 3, flask.Alloy, CellLook.Strong);
        sheet.Set(row, 4, CellValue.Of((double)flask.Pieces.Sum(p => p.Quantity)), CellLook.Number(CellLook.Whole));
        sheet.Set(row, 9, CellValue.Of(metal.In(flask.Charge)), CellLook.Big(metal.Format));
        sheet.Set(row, 10, flask.Weighed ? NightPlanSheetWords.WeighedTree : NightPlanSheetWords.Estimate, CellLook.Text);
        sheet.Answer(row, 4, Subject.Flask(flask.Letter), AnswerField.Pieces);
        sheet.Answer(row, 9, Subject.Flask(flask.Letter), AnswerField.Charge);
    }
}
