using System.Globalization;
using CastBook.Planning;
using CastBook.Planning.Explaining;
using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Columns;
using CastBook.Workbooks.Words;
using CastBook.Workbooks.Writing;

namespace CastBook.Workbooks.Sheets;

/// <summary>The plan for the bench: a line a flask, totals by alloy, cautions. Printed on its side, one page wide.</summary>
internal static class NightPlanSheet
{
    // More in one page would be too small to be read from the bench.
    private const int MostFlasksOnAPage = 24;

    private const int HeadingRow = 4;
    private const int FirstShopColumn = 16;

    // What the columns of a flask answer.
    private static readonly (int Column, string Answer)[] Answers =
    [
        (4, AnswerField.Pieces), (5, AnswerField.Charge), (7, AnswerField.Powder), (8, AnswerField.Water), (9, AnswerField.Mix), (10, AnswerField.Burnout),
        (11, AnswerField.MetalTemperature), (12, AnswerField.FlaskTemperature), (13, AnswerField.PourAt), (14, AnswerField.QuenchAfter), (15, AnswerField.QuenchAt),
    ];

    /// <summary>The headings of the cells that are the shop's.</summary>
    public static IReadOnlyCollection<string> ShopHeadings => NightPlanSheetWords.ShopHeadings;

    /// <summary>Makes the sheet.</summary>
    /// <param name="context">What it is made from.</param>
    /// <param name="kept">What the shop wrote on it.</param>
    public static OwnedSheet Make(SheetContext context, KeptCells kept)
    {
        var sheet = new OwnedSheet(NightPlanSheetWords.Sheet)
        {
            Landscape = true,
            HeadingRow = HeadingRow,
            Widths = [7, 12, 26, 8, 11, 10, 10, 10, 6, 10, 9, 9, 13, 11, 13, 9, 11, 9, 20],
        };
        sheet.Set(1, 1, NightPlanSheetWords.Title(context.BookName), CellLook.Title);
        sheet.Set(2, 1, Under(context), CellLook.Small);
        var headings = NightPlanSheetWords.Headings(context.Units.Metal.Name, context.Units.Powder.Name, context.Units.Water.Name, context.Units.Temperature.Name);
        for (var column = 1; column <= headings.Length; column++)
        {
            sheet.Set(HeadingRow, column, headings[column - 1], HeadingLook(column));
        }

        sheet.Height(HeadingRow, 32);
        var row = HeadingRow;
        foreach (var flask in context.Plan.Flasks)
        {
            row++;
            WriteFlask(sheet, row, flask, context, kept);
            MarkFlask(sheet, row, context, flask.Letter);
        }

        row = WriteTotals(sheet, row + 2, context.Plan, context.Units.Metal);
        foreach (var line in MethodLines.Of(context.Plan).Concat(Cautions.Lines))
        {
            sheet.Set(++row, 1, line, CellLook.Small);
        }

        sheet.OnePage = context.Plan.Flasks.Count <= MostFlasksOnAPage;
        return sheet;
    }

    private static CellLook HeadingLook(int column) => column switch
    {
        1 => CellLook.FirstHeading,
        >= 4 and <= 15 and not 6 => CellLook.NumberHeading,
        _ => CellLook.Heading,
    };

    private static string Under(SheetContext context) =>
        NightPlanSheetWords.Under(context.Plan.Flasks.Sum(f => f.Pieces.Sum(p => p.Quantity)), context.Plan.Flasks.Count, context.PlanKind);

    private static void WriteFlask(OwnedSheet sheet, int row, FlaskPlan flask, SheetContext context, KeptCells kept)
    {
        var (clock, units) = (context.Plan.Clock, context.Units);
        sheet.Height(row, 26);
        sheet.Set(row, 1, flask.Letter, CellLook.Letter);
        sheet.Set(row, 2, flask.Size.Name, CellLook.Text);
        sheet.Set(row, 3, flask.Alloy, CellLook.Strong);
        sheet.Set(row, 4, CellValue.Of((double)flask.Pieces.Sum(p => p.Quantity)), CellLook.Number(CellLook.Whole));
        sheet.Set(row, 5, CellValue.Of(units.Metal.In(flask.Charge)), CellLook.Big(units.Metal.Format));
        sheet.Set(row, 6, flask.Weighed ? NightPlanSheetWords.WeighedTree : NightPlanSheetWords.Estimate, CellLook.Text);
        sheet.Set(row, 7, CellValue.Of(units.Powder.In(flask.Powder)), CellLook.Big(units.Powder.Format));
        sheet.Set(row, 8, CellValue.Of(units.Water.In(flask.Water)), CellLook.Big(units.Water.Format));
        sheet.Set(row, 9, flask.Mix?.ToString(CultureInfo.InvariantCulture), CellLook.Text with { Horizontal = CellLook.Right });
        sheet.Set(row, 10, flask.Burnout is { } burnout ? Say.Hours(burnout) : null, CellLook.Text with { Horizontal = CellLook.Right });
        sheet.Set(row, 11, CellValue.Of(units.Temperature.In(flask.MetalTemperature)), CellLook.Big(CellLook.Whole));
        sheet.Set(row, 12, CellValue.Of(units.Temperature.In(flask.FlaskTemperature)), CellLook.Big(CellLook.Whole));
        sheet.Set(row, 13, ClockSheet.DayAndTime(clock, clock?.PourOf(flask.Letter)?.Begins), ClockSheet.BigTime);
        sheet.Set(row, 15, ClockSheet.DayAndTime(clock, clock?.QuenchOf(flask.Letter)?.Begins), ClockSheet.BigTime with { Padded = true });
        sheet.Set(row, 14, flask.NoQuench ? CellValue.Of(NightPlanSheetWords.NoQuench) : CellValue.Of(CellNumbers.Minutes(flask.QuenchAfter)), CellLook.Big(CellLook.Whole) with { Padded = true });
        foreach (var (column, answer) in Answers)
        {
            sheet.Answer(row, column, Subject.Flask(flask.Letter), answer);
        }

        var shops = NightPlanSheetWords.ShopHeadings;
        for (var i = 0; i < shops.Length; i++)
        {
            var look = i == shops.Length - 1 ? CellLook.Box with { Wrap = true } : CellLook.Box with { Horizontal = CellLook.Centre };
            sheet.Set(row, FirstShopColumn + i, kept.Of(flask.Letter, shops[i]), look);
        }
    }

    private static void MarkFlask(OwnedSheet sheet, int row, SheetContext context, string letter)
    {
        foreach (var finding in context.Findings.Where(f => f.Severity > Severity.Note))
        {
            if (finding.Subjects.Any(s => s.Kind == SubjectKind.Flask && s.Key == letter))
            {
                sheet.Mark(row, 1, finding.Severity);
            }
        }
    }

    private static int WriteTotals(OwnedSheet sheet, int row, NightPlan plan, WrittenMass unit)
    {
        var headings = NightPlanSheetWords.TotalHeadings(unit.Name);
        for (var column = 1; column <= headings.Length; column++)
        {
            sheet.Set(row, column, headings[column - 1], HeadingLook(column));
        }

        foreach (var metal in plan.Metal)
        {
            row++;
            sheet.Set(row, 1, metal.Alloy, CellLook.Strong with { Wrap = false });
            sheet.Set(row, 2, CellValue.Empty, CellLook.Text);
            sheet.Set(row, 3, CellValue.Empty, CellLook.Text);
            sheet.Set(row, 10, MetalWords.Pieces(metal, unit), CellLook.Small);
            sheet.Set(row, 4, CellValue.Empty, CellLook.Text);
            sheet.Set(row, 5, CellValue.Of(unit.In(metal.Charges)), CellLook.Number(unit.Format));
            sheet.Set(row, 6, CellValue.Empty, CellLook.Text);
            sheet.Set(row, 7, CellValue.Of(unit.In(MetalWords.Stock(metal))), CellLook.Number(unit.Format));
            sheet.Set(row, 8, CellValue.Of(unit.In(metal.Buy is { Grams: > 0 } buy ? buy : null)), CellLook.Number(unit.Format));
            sheet.Set(row, 9, CellValue.Empty, CellLook.Text);
            var alloy = new Subject(SubjectKind.Alloy, metal.Alloy);
            sheet.Answer(row, 5, alloy, AnswerField.Charges);
            sheet.Answer(row, 7, alloy, AnswerField.InStock);
            sheet.Answer(row, 8, alloy, AnswerField.ToBuy);
        }

        return row + 1;
    }
}
