using System.Globalization;
using CastBook.Planning;
using CastBook.Planning.Clock;
using CastBook.Planning.Explaining;
using CastBook.Planning.Findings;
using CastBook.Workbooks.Columns;
using CastBook.Workbooks.Words;
using CastBook.Workbooks.Writing;
using UnitsNet;

namespace CastBook.Workbooks.Sheets;

/// <summary>The mixes of investment, a line each in the order in which they are made, with the minutes by which each must be over.</summary>
internal static class MixesSheet
{
    // More in one page would be too small to be read from the bench.
    private const int MostMixesOnAPage = 24;

    private const int HeadingRow = 4;

    // What the columns of a mix answer.
    private static readonly (int Column, string Answer)[] Answers =
    [
        (2, AnswerField.Mix), (3, AnswerField.MixBegins), (4, AnswerField.MixPowder), (5, AnswerField.MixWater), (6, AnswerField.MixSlurry), (7, AnswerField.MixTakes),
        (8, AnswerField.MixPourDoneBy), (9, AnswerField.MixGlossOff),
    ];

    /// <summary>The headings of the cells that are the shop's.</summary>
    public static IReadOnlyCollection<string> ShopHeadings { get; } = [MixesSheetWords.Mixed, MixesSheetWords.Remarks];

    /// <summary>Makes the sheet.</summary>
    /// <param name="context">What it is made from.</param>
    /// <param name="kept">What the shop wrote on it.</param>
    public static OwnedSheet Make(SheetContext context, KeptCells kept)
    {
        var sheet = new OwnedSheet(MixesSheetWords.Sheet)
        {
            Landscape = true,
            HeadingRow = HeadingRow,
            Widths = [16, 8, 13, 12, 12, 13, 13, 12, 11, 9, 30],
        };
        sheet.Set(1, 1, MixesSheetWords.Title(context.BookName), CellLook.Title);
        sheet.Set(2, 1, MixesSheetWords.Under, CellLook.Small);
        var headings = MixesSheetWords.Headings(context.Units.Powder.Name, context.Units.Water.Name);
        for (var column = 1; column <= headings.Length; column++)
        {
            sheet.Set(HeadingRow, column, headings[column - 1], column == 1 ? CellLook.FirstHeading : column is >= 3 and <= 9 ? CellLook.NumberHeading : CellLook.Heading);
        }

        sheet.Height(HeadingRow, 32);
        var row = HeadingRow;
        foreach (var mix in context.Plan.Mixes.OrderBy(m => Begun(context.Plan.Clock, m)?.Minutes ?? 0))
        {
            WriteMix(sheet, ++row, mix, context, kept);
        }

        row++;
        foreach (var line in Lines(context))
        {
            sheet.Set(++row, 1, line, CellLook.Small);
        }

        sheet.OnePage = context.Plan.Mixes.Count <= MostMixesOnAPage;
        return sheet;
    }

    // The water's temperature is memory of practice; the maker's sheet wins.
    private static IEnumerable<string> Lines(SheetContext context)
    {
        var units = context.Units.Temperature;
        yield return MixesSheetWords.Before(units.Number(20), units.Say(24));
        yield return MixesSheetWords.Filling;
        if (context.Plan.SetAtLeast is { } set)
        {
            yield return MixesSheetWords.Set(Say.Hours(set));
        }

        if (context.Reading.Night.Shop.Settings.SteamDewax is { Minutes: > 0 } steam)
        {
            yield return MixesSheetWords.Steam(CellNumbers.Minutes(steam)!.Value, units.Say(150));
        }

        yield return context.Reading.Night.Shop.Settings.KeptDamp == true ? MixesSheetWords.BagDamp : MixesSheetWords.OpenDries;
    }

    private static void WriteMix(OwnedSheet sheet, int row, MixPlan mix, SheetContext context, KeptCells kept)
    {
        var units = context.Units;
        var key = string.Join(' ', mix.Flasks);
        sheet.Height(row, 26);
        sheet.Set(row, 1, key, CellLook.Letter with { Wrap = true });
        sheet.Set(row, 2, mix.Number.ToString(CultureInfo.InvariantCulture), CellLook.Strong);
        sheet.Set(row, 3, Begins(context.Plan.Clock, mix), ClockSheet.BigTime);
        sheet.Set(row, 4, CellValue.Of(units.Powder.In(mix.Powder)), CellLook.Big(units.Powder.Format));
        sheet.Set(row, 5, CellValue.Of(units.Water.In(mix.Water)), CellLook.Big(units.Water.Format));
        sheet.Set(row, 6, CellValue.Of(units.Water.In(mix.Slurry)), CellLook.Number(units.Water.Format));
        sheet.Set(row, 7, CellValue.Of(CellNumbers.TenthsOfMinutes(mix.Takes)), CellLook.Number("0.0"));
        sheet.Set(row, 8, CellValue.Of(CellNumbers.TenthsOfMinutes(mix.PourDoneBy)), CellLook.Big("0.0"));
        sheet.Set(row, 9, CellValue.Of(CellNumbers.TenthsOfMinutes(mix.GlossOff)), CellLook.Big("0.0") with { Padded = true });
        foreach (var (column, answer) in Answers)
        {
            sheet.Answer(row, column, Subject.Flask(mix.Flasks[0]), answer);
        }

        sheet.Set(row, 10, kept.Of(key, MixesSheetWords.Mixed), CellLook.Box with { Horizontal = CellLook.Centre });
        sheet.Set(row, 11, kept.Of(key, MixesSheetWords.Remarks), CellLook.Box with { Wrap = true });
    }

    // The first powder in the water, from which the minutes of the line count.
    private static string? Begins(NightClock? clock, MixPlan mix) =>
        ClockSheet.DayAndTime(clock, Begun(clock, mix));

    private static Duration? Begun(NightClock? clock, MixPlan mix) => clock?.Steps.FirstOrDefault(s => s.Kind == ClockStepKind.Mix && s.Mix == mix.Number)?.Begins;
}
