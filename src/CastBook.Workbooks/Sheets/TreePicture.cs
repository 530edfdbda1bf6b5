using System.Globalization;
using CastBook.Planning;
using CastBook.Workbooks.Drawing;
using CastBook.Workbooks.Words;

namespace CastBook.Workbooks.Sheets;

/// <summary>Draws a tree in its flask: from the side, and seen from above.</summary>
/// <remarks>From the side only the columns at the right and the left are drawn: those in front would hide all others.</remarks>
internal sealed class TreePicture
{
    private const string Tone = "EEF2F3";
    private const string OtherTone = "DCE5E7";
    private const string Quiet = "7C8A90";
    private const double Margin = 2;
    private const double RoomForNumber = 3;

    private readonly FlaskPlan flask;
    private readonly IReadOnlyDictionary<int, int> numbers;
    private readonly double diameterMm;
    private readonly double heightMm;
    private readonly double baseMm;
    private readonly double trunkMm;

    /// <param name="flask">The flask; its tree has columns, and its size is known.</param>
    /// <param name="numbers">The number of each row in the list beside the picture.</param>
    public TreePicture(FlaskPlan flask, IReadOnlyDictionary<int, int> numbers)
    {
        this.flask = flask;
        this.numbers = numbers;
        diameterMm = flask.Size.InsideDiameter!.Value.Millimeters;
        heightMm = flask.Size.Height!.Value.Millimeters;
        baseMm = flask.Size.BaseHeight!.Value.Millimeters;
        trunkMm = flask.Size.SprueDiameter!.Value.Millimeters;
    }

    /// <summary>The columns that are drawn from the side: the one at the right, and the one at the left where there is one.</summary>
    public (int Right, int? Left) SideColumns
    {
        get
        {
            var left = Enumerable.Range(1, flask.Columns.Count - 1)
                .Select(i => (Column: i, Off: Math.Abs(flask.Columns[i].Middle.Degrees - 180)))
                .Where(c => c.Off <= 60).OrderBy(c => c.Off).Select(c => (int?)c.Column).FirstOrDefault();
            return (0, left);
        }
    }

    /// <summary>The tree from the side, the button below.</summary>
    /// <param name="frame">Where.</param>
    public Picture FromSide(Frame frame)
    {
        var scale = Math.Min((frame.WidthMm - (2 * Margin)) / diameterMm, (frame.HeightMm - (2 * Margin)) / heightMm);
        var side = new SideView(frame.WidthMm / 2, frame.HeightMm - Margin, scale);
        List<Shape> shapes =
        [
            side.Box(diameterMm, 0, heightMm) with { OutlinePoints = 1.5 },
            side.Box(diameterMm - (2 * flask.ToWall.Millimeters), baseMm, heightMm - flask.AboveTree.Millimeters) with { Dashed = true, Outline = Quiet },
            side.Box(Math.Min(diameterMm, trunkMm * 3), 0, baseMm) with { Kind = ShapeKind.RoundBox, Fill = OtherTone },
            side.Box(trunkMm, baseMm, heightMm - flask.AboveTree.Millimeters) with { Fill = OtherTone },
        ];
        var (right, left) = SideColumns;
        Hang(shapes, side, right, 1);
        if (left is { } other)
        {
            Hang(shapes, side, other, -1);
        }

        return new Picture(TreesSheetWords.FromSide(flask.Letter), Told(right, left), frame, shapes);
    }

    /// <summary>The tree seen from above: which way each column points.</summary>
    /// <param name="frame">Where.</param>
    public Picture FromAbove(Frame frame)
    {
        var scale = (Math.Min(frame.WidthMm, frame.HeightMm) - (2 * Margin)) / diameterMm;
        var above = new AboveView(frame.WidthMm / 2, frame.HeightMm / 2, scale);
        List<Shape> shapes =
        [
            above.Circle(diameterMm) with { OutlinePoints = 1.5 },
            above.Circle(diameterMm - (2 * flask.ToWall.Millimeters)) with { Dashed = true, Outline = Quiet },
        ];
        foreach (var column in flask.Columns)
        {
            foreach (var piece in column.Places.DistinctBy(p => (p.PieceId, p.OnEdge)).OrderByDescending(p => p.Around))
            {
                var (inner, outer) = Reach(piece);
                shapes.Add(above.Outwards(column.Middle.Degrees, inner, outer, piece.Around.Millimeters) with { Fill = ToneOf(piece) });
            }
        }

        shapes.Add(above.Circle(trunkMm) with { Fill = OtherTone });
        for (var i = 0; i < flask.Columns.Count; i++)
        {
            var (x, y) = above.At(flask.Columns[i].Middle.Degrees, (diameterMm - flask.ToWall.Millimeters) / 2);
            shapes.Add(Shape.Words(x, y, Number(i + 1), 10));
        }

        return new Picture(TreesSheetWords.FromAbove(flask.Letter), TreesSheetWords.FromAboveTells(flask.Letter, flask.Columns.Count), frame, shapes);
    }

    private string Told(int right, int? left) => left is { } other
        ? TreesSheetWords.FromSideTells(flask.Letter, right + 1, other + 1)
        : TreesSheetWords.FromSideTells(flask.Letter, right + 1);

    private void Hang(List<Shape> shapes, SideView side, int column, int direction)
    {
        foreach (var piece in flask.Columns[column].Places)
        {
            var (sin, cos) = (Math.Sin(piece.Tilt.Radians), Math.Cos(piece.Tilt.Radians));
            var foot = baseMm + piece.Height.Millimeters;
            var gate = piece.Gate.Millimeters;
            var (x, z) = side.At(direction * trunkMm / 2, foot);
            var (gateX, gateZ) = side.At(direction * ((trunkMm / 2) + (gate * sin)), foot + (gate * cos));
            shapes.Add(Shape.Line(x, z, gateX, gateZ) with { OutlinePoints = 2 });

            var toMiddle = gate + (piece.Along.Millimeters / 2);
            var (middleX, middleY) = side.At(direction * ((trunkMm / 2) + (toMiddle * sin)), foot + (toMiddle * cos));
            var (along, deep) = (piece.Along.Millimeters * side.Scale, piece.Deep.Millimeters * side.Scale);
            shapes.Add(new Shape(piece.IsRing ? ShapeKind.Ellipse : ShapeKind.Box, middleX - (along / 2), middleY - (deep / 2), along, deep)
            {
                Turn = piece.IsRing ? 0 : -direction * Math.Atan2(cos, sin) * 180 / Math.PI,
                Fill = ToneOf(piece),
            });
            shapes.Add(Labelled(side, piece, direction, foot, (middleX, middleY)));
        }
    }

    /// <summary>The number of a piece: upon it where there is room, else beyond its outer end.</summary>
    private Shape Labelled(SideView side, HungPiece piece, int direction, double foot, (double X, double Y) middle)
    {
        var number = Number(numbers[piece.PieceId]);
        if (Math.Min(piece.Along.Millimeters, piece.Deep.Millimeters) * side.Scale >= RoomForNumber)
        {
            return Shape.Words(middle.X, middle.Y, number, 8);
        }

        var end = piece.Gate.Millimeters + piece.Along.Millimeters + (1.5 / side.Scale);
        var (x, y) = side.At(direction * ((trunkMm / 2) + (end * Math.Sin(piece.Tilt.Radians))), foot + (end * Math.Cos(piece.Tilt.Radians)));
        return Shape.Words(x, y, number, 6);
    }

    /// <summary>How far from the middle of the trunk a piece begins and ends, seen from above.</summary>
    private (double Inner, double Outer) Reach(HungPiece piece)
    {
        var (sin, cos) = (Math.Sin(piece.Tilt.Radians), Math.Cos(piece.Tilt.Radians));
        var (start, gate, along) = (trunkMm / 2, piece.Gate.Millimeters, piece.Along.Millimeters);
        if (piece.IsRing)
        {
            var middle = start + ((gate + (along / 2)) * sin);
            return (middle - (along / 2), middle + (along / 2));
        }

        var lean = piece.Deep.Millimeters / 2 * cos;
        return (start + (gate * sin) - lean, start + ((gate + along) * sin) + lean);
    }

    private string ToneOf(HungPiece piece) => numbers[piece.PieceId] % 2 == 1 ? Tone : OtherTone;

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    /// <summary>From flask to paper, seen from the side: across from the middle, up from the bottom.</summary>
    private readonly record struct SideView(double MiddleX, double BottomY, double Scale)
    {
        public (double X, double Y) At(double across, double up) => (MiddleX + (across * Scale), BottomY - (up * Scale));

        public Shape Box(double width, double from, double to) =>
            new(ShapeKind.Box, MiddleX - (width / 2 * Scale), BottomY - (to * Scale), width * Scale, (to - from) * Scale);
    }

    /// <summary>From flask to paper, seen from above: clockwise from the right, out from the middle.</summary>
    private readonly record struct AboveView(double MiddleX, double MiddleY, double Scale)
    {
        public (double X, double Y) At(double degrees, double from)
        {
            var radians = degrees * Math.PI / 180;
            return (MiddleX + (from * Scale * Math.Cos(radians)), MiddleY + (from * Scale * Math.Sin(radians)));
        }

        public Shape Circle(double diameter) =>
            new(ShapeKind.Ellipse, MiddleX - (diameter / 2 * Scale), MiddleY - (diameter / 2 * Scale), diameter * Scale, diameter * Scale);

        public Shape Outwards(double degrees, double inner, double outer, double width)
        {
            var (x, y) = At(degrees, (inner + outer) / 2);
            var (along, across) = ((outer - inner) * Scale, width * Scale);
            return new(ShapeKind.Box, x - (along / 2), y - (across / 2), along, across) { Turn = degrees };
        }
    }
}
