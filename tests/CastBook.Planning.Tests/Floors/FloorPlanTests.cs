using CastBook.Planning.Floors;
using CastBook.Planning.Shops;
using UnitsNet;

namespace CastBook.Planning.Tests.Floors;

public sealed class FloorPlanTests
{
    // Best radii known of 1 to 20 equal circles in a unit square.
    // Source: E. Specht's tables of packings as quoted in public optimisation examples (read); proved optimal up to 20.
    private static readonly double[] BestInSquare =
    [
        0.5, 0.292893218813, 0.254333095030, 0.25, 0.207106781187, 0.187680601147, 0.174457630187, 0.170540688701, 0.166666666667,
        0.148204322565, 0.142399237696, 0.139958844038, 0.133993513499, 0.129331793710, 0.127166547515, 0.125,
        0.117196742783, 0.115521432464, 0.112265437571, 0.111382347512,
    ];

    // Radius of the container over the radius of the circles, 1 to 20 equal circles in a circle.
    // Source: the public encyclopaedia's table of circle packings in a circle (read); the digits past the third from closed forms.
    private static readonly double[] RatiosInCircle =
    [
        1, 2, 2.154701, 2.414214, 2.701302, 3, 3, 3.304765, 3.613126, 3.813026, 3.923804, 4.029602, 4.236068, 4.328429,
        4.521357, 4.615426, 4.792034, 4.863703, 4.863703, 5.122321,
    ];

    private static readonly Length None = Length.Zero;

    public static TheoryData<int> Counts => [.. Enumerable.Range(1, 20)];

    [Theory]
    [MemberData(nameof(Counts))]
    public void Place_EqualFlasksInSquare_FindsRoomAt997ThousandthsOfBestKnownRadius(int count)
    {
        var floor = KilnFloor.Square(Mm(1000), Mm(1000));
        var diameter = 2 * 0.997 * BestInSquare[count - 1] * 1000;

        Check(floor, Enumerable.Repeat(diameter, count), None, None);
    }

    [Theory]
    [MemberData(nameof(Counts))]
    public void Place_EqualFlasksInCircle_FindsRoomAt997ThousandthsOfBestKnownRadius(int count)
    {
        var floor = KilnFloor.Round(Mm(1000));
        var diameter = 0.997 * 1000 / RatiosInCircle[count - 1];

        Check(floor, Enumerable.Repeat(diameter, count), None, None);
    }

    [Theory]
    [MemberData(nameof(Counts))]
    public void Place_FlasksLargerThanBestKnownRadius_FindsNoRoom(int count)
    {
        FloorPlan.Place(KilnFloor.Square(Mm(1000), Mm(1000)), Equal(count, 2 * 1.002 * BestInSquare[count - 1] * 1000), None, None).ShouldBeNull();
        FloorPlan.Place(KilnFloor.Round(Mm(1000)), Equal(count, 1.002 * 1000 / RatiosInCircle[count - 1]), None, None).ShouldBeNull();
    }

    // The same encyclopaedia prints shares of the area that were reckoned from cut radii: circles of that share are up to 0.08 mm too
    // large for a circle of a metre, and those of the true share, n r², just fit. True shares from radii of 30 digits (Packomania).
    [Theory]
    [InlineData(3, 0.6466, 0.64617)]
    [InlineData(4, 0.6864, 0.68629)]
    [InlineData(5, 0.6854, 0.68521)]
    [InlineData(8, 0.7328, 0.73250)]
    public void Place_FlasksOfAShareOfTheFloorPrintedTooHigh_FindsNoRoom(int count, double printed, double share)
    {
        var floor = KilnFloor.Round(Mm(1000));

        FloorPlan.Place(floor, Equal(count, 1000 * Math.Sqrt(printed / count)), None, None).ShouldBeNull();
        Check(floor, Enumerable.Repeat(1000 * Math.Sqrt((share - 0.00001) / count), count), None, None);
    }

    // Hand-worked: the gaps make each flask 110 mm wide and the floor 220 or 300 mm; five circles in a square of 220 mm have a
    // radius of at most 0.2071 × 220 = 45.6 mm, seven in one of 300 mm at most 0.17446 × 300 = 52.3 mm.
    [Theory]
    [InlineData(220, 4, true)]
    [InlineData(220, 5, false)]
    [InlineData(300, 6, true)]
    [InlineData(300, 7, false)]
    public void Place_SquareKiln_HoldsWhatGeometryAllows(double sideMm, int count, bool fits)
    {
        var floor = KilnFloor.Square(Mm(sideMm), Mm(sideMm));

        (FloorPlan.Place(floor, Equal(count, 100), Mm(10), Mm(5)) is not null).ShouldBe(fits);
    }

    [Theory]
    [InlineData(300, 400, false)]
    [InlineData(400, 300, false)]
    [InlineData(380, 380, true)]
    public void Place_FlasksOfSeveralSizes_KeepsEveryGap(double widthMm, double depthMm, bool round)
    {
        var floor = round ? KilnFloor.Round(Mm(widthMm)) : KilnFloor.Square(Mm(widthMm), Mm(depthMm));

        Check(floor, [64, 106, 90, 64, 106, 90, 64], Mm(8), Mm(15));
    }

    [Fact]
    public void Place_SameFlasksAgain_GivesSameSpots()
    {
        var floor = KilnFloor.Round(Mm(1000));
        var flasks = Equal(17, 0.996 * 1000 / RatiosInCircle[16]);

        FloorPlan.Place(floor, flasks, None, None).ShouldBe(FloorPlan.Place(floor, flasks, None, None));
    }

    [Fact]
    public void Place_NoFlasks_IsEmpty() =>
        FloorPlan.Place(KilnFloor.Round(Mm(300)), [], Mm(10), Mm(10)).ShouldBeEmpty();

    [Fact]
    public void Of_KilnWithDiameterOnly_IsRound() =>
        KilnFloor.Of(new Kiln { Name = "K", InsideDiameter = Mm(400) }).ShouldBe(KilnFloor.Round(Mm(400)));

    [Fact]
    public void Of_KilnWithOneSide_IsSquare() =>
        KilnFloor.Of(new Kiln { Name = "K", Shape = KilnShape.Square, InsideWidth = Mm(300) }).ShouldBe(KilnFloor.Square(Mm(300), Mm(300)));

    [Fact]
    public void Of_RoundKilnWithoutDiameter_IsUnknown() =>
        KilnFloor.Of(new Kiln { Name = "K", Shape = KilnShape.Round, InsideWidth = Mm(300) }).ShouldBeNull();

    private static void Check(KilnFloor floor, IEnumerable<double> diametersMm, Length flaskGap, Length wallGap)
    {
        var diameters = diametersMm.ToArray();
        var spots = FloorPlan.Place(floor, [.. diameters.Select(d => Mm(d))], flaskGap, wallGap).ShouldNotBeNull();

        spots.Count.ShouldBe(diameters.Length);
        for (var i = 0; i < spots.Count; i++)
        {
            var (x, y, r) = (spots[i].X.Millimeters, spots[i].Y.Millimeters, diameters[i] / 2);
            var toWall = floor.IsRound
                ? (floor.Width.Millimeters / 2) - r - double.Hypot(x, y)
                : Math.Min((floor.Width.Millimeters / 2) - r - Math.Abs(x), (floor.Depth.Millimeters / 2) - r - Math.Abs(y));
            toWall.ShouldBeGreaterThan(wallGap.Millimeters - 0.0015);
            for (var j = 0; j < i; j++)
            {
                var apart = double.Hypot(x - spots[j].X.Millimeters, y - spots[j].Y.Millimeters) - r - (diameters[j] / 2);
                apart.ShouldBeGreaterThan(flaskGap.Millimeters - 0.0015);
            }
        }
    }

    private static Length[] Equal(int count, double diameterMm) => [.. Enumerable.Repeat(Mm(diameterMm), count)];

    private static Length Mm(double millimetres) => Length.FromMillimeters(millimetres);
}
