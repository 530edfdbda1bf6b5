namespace CastBook.Workbooks.Drawing;

/// <summary>Shapes that move together.</summary>
/// <param name="Name">Its name in the book, after our own; unique on its sheet.</param>
/// <param name="Description">What it shows, for those who cannot see it.</param>
/// <param name="Frame">Where it is drawn.</param>
/// <param name="Shapes">The shapes, the hindmost first, in millimetres on paper from its upper left corner.</param>
internal sealed record Picture(string Name, string Description, Frame Frame, IReadOnlyList<Shape> Shapes);

/// <summary>A plain shape.</summary>
/// <param name="Kind">Its kind.</param>
/// <param name="X">Its left side before it is turned.</param>
/// <param name="Y">Its upper side before it is turned.</param>
/// <param name="Width">Its width before it is turned.</param>
/// <param name="Height">Its height before it is turned.</param>
internal sealed record Shape(ShapeKind Kind, double X, double Y, double Width, double Height)
{
    /// <summary>By how many degrees it is turned clockwise about its middle.</summary>
    public double Turn { get; init; }

    /// <summary>Colour it is filled with, as six hexadecimal digits; none leaves it clear.</summary>
    public string? Fill { get; init; }

    /// <summary>Colour of its outline; none leaves it without one.</summary>
    public string? Outline { get; init; } = Ink;

    /// <summary>Thickness of the outline, in points.</summary>
    public double OutlinePoints { get; init; } = 0.75;

    /// <summary>Whether the outline is dashed.</summary>
    public bool Dashed { get; init; }

    /// <summary>Words in its middle.</summary>
    public string? Text { get; init; }

    /// <summary>Size of the words, in points.</summary>
    public double TextPoints { get; init; } = 8;

    /// <summary>The colour of ink.</summary>
    public const string Ink = "1F2A30";

    /// <summary>A line from one point to another.</summary>
    /// <param name="x1">Where it begins.</param>
    /// <param name="y1">Where it begins.</param>
    /// <param name="x2">Where it ends.</param>
    /// <param name="y2">Where it ends.</param>
    public static Shape Line(double x1, double y1, double x2, double y2)
    {
        // A level line turned about its middle: a line of a box would need mirroring, which not every program heeds in a group.
        var length = double.Hypot(x2 - x1, y2 - y1);
        var turn = Math.Atan2(y2 - y1, x2 - x1) * 180 / Math.PI;
        return new(ShapeKind.Line, ((x1 + x2) / 2) - (length / 2), (y1 + y2) / 2, length, 0) { Turn = turn };
    }

    /// <summary>Words without an outline, about a point.</summary>
    /// <param name="x">The point.</param>
    /// <param name="y">The point.</param>
    /// <param name="words">The words.</param>
    /// <param name="points">Their size.</param>
    public static Shape Words(double x, double y, string words, double points)
    {
        // Wide enough for any typeface that may stand in for ours.
        var (width, height) = (4 + (words.Length * points * 0.3), points * 0.6);
        return new(ShapeKind.Box, x - (width / 2), y - (height / 2), width, height) { Outline = null, Text = words, TextPoints = points };
    }
}

/// <summary>The kinds of shape.</summary>
internal enum ShapeKind
{
    /// <summary>A rectangle.</summary>
    Box,

    /// <summary>A rectangle with round corners.</summary>
    RoundBox,

    /// <summary>A circle or an ellipse.</summary>
    Ellipse,

    /// <summary>A line.</summary>
    Line,
}
