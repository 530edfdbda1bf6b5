using System.IO.Compression;
using CastBook.Planning.Floors;
using CastBook.Workbooks.Drawing;
using CastBook.Workbooks.Sheets;
using CastBook.Workbooks.Tests.Filling;
using UnitsNet;

namespace CastBook.Workbooks.Tests.Drawing;

/// <summary>The floors of kiln loads, as drawn.</summary>
public sealed class FloorDrawingTests
{
    [Fact]
    public void Fill_KilnOfKnownSize_DrawsTheFloorAndSaysWhereEachStands()
    {
        var filled = Filled.From(Nights.Whole());
        var load = filled.Plan.Clock!.Loads.ShouldHaveSingleItem();

        filled["Floors", "A1"].ShouldBe("Floors: night");
        filled["Floors", "A4"].ShouldBe("Load 1, the kiln");
        var (left, front) = FloorPicture.Middle(load, 0);
        filled["Floors", "A21"].ShouldBe(FormattableString.Invariant($"Middles, mm from the left wall and the front: A {left.Millimeters:0} and {front.Millimeters:0}."));
        Drawings(filled.Bytes).ShouldContain("name=\"CastBook floor of load 1\" descr=\"Load 1 on the floor of the kiln from above, the door below: flasks A.\"");
        filled.SheetXml("Floors").ShouldContain("fitToPage");
    }

    [Fact]
    public void Fill_FilledBook_LeavesTheFloorsAsTheyAre() => Filled.From(Nights.Whole()).Again().Result.Changed.ShouldBeFalse();

    // As drawn: each within the outline, none upon another, the scale the same for all.
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Of_Flasks_StandWithinTheFloorAndApart(bool round)
    {
        var floor = round ? KilnFloor.Round(Length.FromMillimeters(400)) : KilnFloor.Square(Length.FromMillimeters(300), Length.FromMillimeters(400));
        Length[] outsides = [.. new[] { 108.0, 108, 83, 98 }.Select(mm => Length.FromMillimeters(mm))];
        FloorSpot[] spots = [At(-70, -100), At(70, -100), At(-60, 70), At(70, 70)];
        var load = Filled.From(Nights.Whole()).Plan.Clock!.Loads[0] with { Floor = floor, Spots = spots, Outsides = outsides, Flasks = ["A", "B", "C", "D"] };

        var picture = FloorPicture.Of(load, new Frame(1, 1, 82, 82));

        var outline = picture.Shapes[0];
        var scale = outline.Width / floor.Width.Millimeters;
        (outline.Kind, outline.Height / scale).ShouldBe((round ? ShapeKind.Ellipse : ShapeKind.Box, 400));
        var circles = picture.Shapes.Skip(1).Where(s => s.Kind == ShapeKind.Ellipse).ToList();
        circles.Select(c => c.Width / scale).ShouldBe([108, 108, 83, 98], 1e-6);
        picture.Shapes.Select(s => s.Text).OfType<string>().ShouldBe(["door", "A", "B", "C", "D"]);
        (circles[0].X < circles[1].X, circles[0].Y > circles[2].Y).ShouldBe((true, true));
        foreach (var (i, circle) in circles.Index())
        {
            circle.X.ShouldBeGreaterThan(outline.X);
            circle.Y.ShouldBeGreaterThan(outline.Y);
            (circle.X + circle.Width).ShouldBeLessThan(outline.X + outline.Width);
            (circle.Y + circle.Height).ShouldBeLessThan(outline.Y + outline.Height);
            circles.Take(i).Where(c => Apart(c, circle) / scale <= 19.9).ShouldBeEmpty();
        }
    }

    private static FloorSpot At(double x, double y) => new(Length.FromMillimeters(x), Length.FromMillimeters(y));

    private static string Drawings(byte[] book)
    {
        using var zip = new ZipArchive(new MemoryStream(book));
        return string.Concat(zip.Entries.Where(e => e.FullName.StartsWith("xl/drawings/drawing", StringComparison.Ordinal)).Select(e =>
        {
            using var text = new StreamReader(e.Open());
            return text.ReadToEnd();
        }));
    }

    private static double Apart(Shape a, Shape b) =>
        double.Hypot(a.X + (a.Width / 2) - b.X - (b.Width / 2), a.Y + (a.Height / 2) - b.Y - (b.Height / 2)) - ((a.Width + b.Width) / 2);
}
