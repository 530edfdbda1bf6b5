using CastBook.Planning.Clock;
using CastBook.Workbooks.Drawing;
using CastBook.Workbooks.Words;
using UnitsNet;

namespace CastBook.Workbooks.Sheets;

/// <summary>Draws the floor of a kiln from above, the door below, with the flasks of a load where they stand.</summary>
internal static class FloorPicture
{
    private const string Tone = "EEF2F3";
    private const string Quiet = "7C8A90";
    private const double Margin = 2;
    private const double RoomForDoor = 5;
    private const double LargestLetter = 20;

    /// <summary>The floor with its flasks.</summary>
    /// <param name="load">The load; its spots and its kiln's floor are known.</param>
    /// <param name="frame">Where.</param>
    public static Picture Of(KilnLoad load, Frame frame)
    {
        var (floor, width, depth) = (load.Floor!, load.Floor!.Width.Millimeters, load.Floor.Depth.Millimeters);
        var scale = Math.Min((frame.WidthMm - (2 * Margin)) / width, (frame.HeightMm - (2 * Margin) - RoomForDoor) / depth);
        var (middleX, middleY) = (frame.WidthMm / 2, Margin + (depth / 2 * scale));
        var door = middleY + (depth / 2 * scale);
        List<Shape> shapes =
        [
            new(floor.IsRound ? ShapeKind.Ellipse : ShapeKind.Box, middleX - (width / 2 * scale), Margin, width * scale, depth * scale) { OutlinePoints = 1.5 },
            Shape.Line(middleX - (width / 4 * scale), door + 1, middleX + (width / 4 * scale), door + 1) with { Outline = Quiet, OutlinePoints = 2 },
            Shape.Words(middleX, door + 3, FloorsSheetWords.Door, 8),
        ];
        for (var i = 0; i < load.Flasks.Count; i++)
        {
            var (x, y) = (middleX + (load.Spots[i].X.Millimeters * scale), middleY - (load.Spots[i].Y.Millimeters * scale));
            var across = load.Outsides[i].Millimeters * scale;
            shapes.Add(new Shape(ShapeKind.Ellipse, x - (across / 2), y - (across / 2), across, across) { Fill = Tone });
            shapes.Add(Shape.Words(x, y, load.Flasks[i], Math.Min(LargestLetter, Math.Max(6, across))));
        }

        return new Picture(FloorsSheetWords.Picture(load.Number), FloorsSheetWords.PictureTells(load.Number, load.Flasks), frame, shapes);
    }

    /// <summary>How far the middle of a flask is from the left wall and from the front; of a round floor from lines that touch it there.</summary>
    /// <param name="load">The load.</param>
    /// <param name="flask">The flask's place in it.</param>
    public static (Length FromLeft, Length FromFront) Middle(KilnLoad load, int flask) =>
        ((load.Floor!.Width / 2) + load.Spots[flask].X, (load.Floor.Depth / 2) + load.Spots[flask].Y);
}
