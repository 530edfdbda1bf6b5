using CastBook.Planning;
using CastBook.Planning.Explaining;
using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Words;
using CastBook.Workbooks.Writing;
using UnitsNet;

namespace CastBook.Workbooks.Sheets;

/// <summary>The metal of the night: a line an alloy with what to buy, then a line a flask with what to weigh out for it.</summary>
internal static class MetalSheet
{
    private const int HeadingRow = 4;

    // What the columns from C on answer, of an alloy and of a flask.
    private static readonly string[] AlloyAnswers =
    [
        AnswerField.Needed, AnswerField.FreshInStock, AnswerField.RemeltInStock, AnswerField.FreshAtLeast, AnswerField.Fresh, AnswerField.Remelt, AnswerField.ToBuyAsSold,
    ];

    private static readonly string[] FlaskAnswers = [AnswerField.Charge, AnswerField.Fresh, AnswerField.Remelt];

    /// <summary>Makes the sheet.</summary>
    /// <param name="context">What it is made from.</param>
    public static OwnedSheet Make(SheetContext context)
    {
        var sheet = new OwnedSheet(MetalSheetWords.Sheet) { Landscape = true, HeadingRow = HeadingRow, Widths = [22, 22, 12, 12, 12, 12, 12, 12, 12] };
        sheet.Set(1, 1, MetalSheetWords.Title(context.BookName), CellLook.Title);
        sheet.Set(2, 1, MetalSheetWords.Under, CellLook.Small);
        var row = WriteAlloys(sheet, context);
        WriteFlasks(sheet, row + 2, context);
        return sheet;
    }

    private static int WriteAlloys(OwnedSheet sheet, SheetContext context)
    {
        var (unit, buying) = (context.Units.Metal, context.Units.Buying);
        var headings = MetalSheetWords.AlloyHeadings(unit.Name, buying.Name);
        for (var column = 1; column <= headings.Length; column++)
        {
            sheet.Set(HeadingRow, column, headings[column - 1], column == 1 ? CellLook.FirstHeading : column == 2 ? CellLook.Heading : CellLook.NumberHeading);
        }

        sheet.Height(HeadingRow, 32);
        var row = HeadingRow;
        foreach (var metal in context.Plan.Metal)
        {
            row++;
            sheet.Set(row, 1, metal.Alloy, CellLook.Strong);
            sheet.Set(row, 2, metal.Charges is null ? MetalWords.Pieces(metal, unit) : Flasks(metal, context.Plan), CellLook.Text);
            Amount(sheet, row, 3, unit, metal.Charges ?? metal.Pieces);
            Amount(sheet, row, 4, unit, metal.Fresh);
            Amount(sheet, row, 5, unit, metal.Remelt);
            sheet.Set(row, 6, CellValue.Of(metal.FreshAtLeast?.Percent), CellLook.Number("0.#"));
            Amount(sheet, row, 7, unit, Sum(metal, p => p.Fresh));
            Amount(sheet, row, 8, unit, Sum(metal, p => p.Remelt));
            sheet.Set(row, 9, CellValue.Of(metal.Buy is { Grams: > 0 } buy ? buying.UpIn(buy) : null), CellLook.Number(buying.Format) with { Bold = true });
            Answer(sheet, row, new Subject(SubjectKind.Alloy, metal.Alloy), AlloyAnswers);
        }

        return row;
    }

    private static void WriteFlasks(OwnedSheet sheet, int row, SheetContext context)
    {
        var (plan, unit, headings) = (context.Plan, context.Units.Metal, MetalSheetWords.FlaskHeadings(context.Units.Metal.Name));
        for (var column = 1; column <= headings.Length; column++)
        {
            sheet.Set(row, column, headings[column - 1], column == 1 ? CellLook.FirstHeading : column is >= 3 and <= 5 ? CellLook.NumberHeading : CellLook.Heading);
        }

        var portions = plan.Metal.SelectMany(m => m.Portions).ToDictionary(p => p.Flask, StringComparer.Ordinal);
        foreach (var flask in plan.Flasks.Where(f => f.State < FlaskState.Poured))
        {
            row++;
            sheet.Height(row, 26);
            sheet.Set(row, 1, flask.Letter, CellLook.Letter);
            sheet.Set(row, 2, flask.Alloy, CellLook.Strong);
            Big(sheet, row, 3, unit, flask.Charge);
            portions.TryGetValue(flask.Letter, out var portion);
            Big(sheet, row, 4, unit, portion?.Fresh);
            Big(sheet, row, 5, unit, portion?.Remelt);
            sheet.Set(row, 6, Rest(portion, unit), CellLook.Text with { Wrap = false });
            Answer(sheet, row, Subject.Flask(flask.Letter), FlaskAnswers);
            if (portion is { MadeUp.Count: > 0 })
            {
                sheet.Answer(row, 6, Subject.Flask(flask.Letter), AnswerField.MadeUp);
            }
        }
    }

    private static void Answer(OwnedSheet sheet, int row, Subject subject, string[] answers)
    {
        for (var i = 0; i < answers.Length; i++)
        {
            sheet.Answer(row, i + 3, subject, answers[i]);
        }
    }

    private static string Rest(MeltPortion? portion, WrittenMass unit) => portion switch
    {
        null => MetalSheetWords.StockNotTyped,
        { Fresh: null } => MetalSheetWords.NotEnough,
        _ => string.Join(" + ", portion.MadeUp.Select(p => $"{unit.SayFinely(p.Mass)} {p.Metal}")),
    };

    private static string Flasks(MetalPlan metal, NightPlan plan) =>
        MetalSheetWords.Flasks([.. plan.Flasks.Where(f => f.Alloy == metal.Alloy && f.State < FlaskState.Poured).Select(f => f.Letter)]);

    private static Mass? Sum(MetalPlan metal, Func<MeltPortion, Mass?> part) => metal.Portions.Count == 0
        ? null
        : metal.Portions.Aggregate(Mass.Zero, (sum, p) => sum + (part(p) ?? Mass.Zero));

    private static void Amount(OwnedSheet sheet, int row, int column, WrittenMass unit, Mass? mass) =>
        sheet.Set(row, column, CellValue.Of(unit.In(mass)), CellLook.Number(unit.Format));

    private static void Big(OwnedSheet sheet, int row, int column, WrittenMass unit, Mass? mass) =>
        sheet.Set(row, column, CellValue.Of(unit.In(mass)), CellLook.Big(unit.Format));
}
