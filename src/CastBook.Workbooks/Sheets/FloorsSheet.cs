using CastBook.Planning.Clock;
using CastBook.Workbooks.Drawing;
using CastBook.Workbooks.Words;
using CastBook.Workbooks.Writing;
using UnitsNet;

namespace CastBook.Workbooks.Sheets;

/// <summary>Which flasks stand where in which kiln load: a drawing of the floor for each load, two beside each other, on one page.</summary>
internal static class FloorsSheet
{
    private const int FirstRow = 4;
    private const int PictureRows = 16;
    private const double RowPoints = 15;
    private const double PictureMm = (PictureRows * RowPoints / 72 * 25.4) - 2;
    private const double WidthMm = 82;

    // A line of the places of a load's flasks takes so many characters.
    private const int LineLength = 46;
    private const double LinePoints = 13;

    /// <summary>Whether there is anything to draw.</summary>
    /// <param name="clock">The night hour by hour.</param>
    public static bool HasAny(NightClock? clock) => clock?.Loads.Any(IsKnown) == true;

    /// <summary>Makes the sheet.</summary>
    /// <param name="context">What it is made from.</param>
    public static OwnedSheet Make(SheetContext context)
    {
        var sheet = new OwnedSheet(FloorsSheetWords.Sheet) { Widths = [46, 46], OnePage = true };
        sheet.Set(1, 1, FloorsSheetWords.Title(context.BookName), CellLook.Title);
        sheet.Set(2, 1, FloorsSheetWords.Under, CellLook.Small);
        var loads = context.Plan.Clock?.Loads.Where(IsKnown).ToList() ?? [];
        for (var i = 0; i < loads.Count; i += 2)
        {
            var row = FirstRow + (i / 2 * (PictureRows + 3));
            var longest = loads.Skip(i).Take(2).Select((load, side) => Draw(sheet, row, side + 1, load, context)).Max();
            sheet.Height(row + PictureRows + 1, LinePoints * (1 + (longest / LineLength)));
        }

        return sheet;
    }

    private static bool IsKnown(KilnLoad load) => load.Floor is not null && load.Spots.Count == load.Flasks.Count && load.Spots.Count > 0;

    // Says how long the words under it are.
    private static int Draw(OwnedSheet sheet, int row, int column, KilnLoad load, SheetContext context)
    {
        sheet.Set(row, column, FloorsSheetWords.Load(load.Number, load.Kiln), CellLook.Strong);
        for (var i = 1; i <= PictureRows; i++)
        {
            sheet.Height(row + i, RowPoints);
        }

        sheet.Drawing.Add(FloorPicture.Of(load, new Frame(row + 1, column, WidthMm, PictureMm)));
        var places = Places(load, context);
        sheet.Set(row + PictureRows + 1, column, places, CellLook.Small with { Wrap = true });
        return places.Length;
    }

    private static string Places(KilnLoad load, SheetContext context)
    {
        var unit = context.Units.Length;
        var middles = load.Flasks.Select((letter, i) => FloorPicture.Middle(load, i) is var (left, front) ? FloorsSheetWords.Middle(letter, In(left), In(front)) : "");
        return FloorsSheetWords.Middles(unit.Name, load.Floor!.IsRound, middles);

        string In(Length length) => unit.OnTheTree(length);
    }
}
