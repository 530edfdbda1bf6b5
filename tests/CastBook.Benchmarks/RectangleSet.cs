using System.Globalization;
using CastBook.Planning.Packing;

namespace CastBook.Benchmarks;

/// <summary>Two-dimensional sets of the literature: rectangles that are not turned, as pieces whose width is an angle and whose height is a length of trunk.</summary>
/// <remarks>
/// <para>Class 1 of J. O. Berkey and P. Y. Wang, "Two-Dimensional Finite Bin-Packing Algorithms", Journal of the Operational Research Society 38
/// (1987): sides of 1 to 10 in squares of 10. Numbers 1 to 6, 9 and 10 of 20 rectangles, and number 1 of 40, as in the collection BinPacking2D,
/// copyright (c) 2021 ktnr, under the MIT License, whose terms are those in LICENSE. The proven optima are those that it prints.</para>
/// <para>A tree is cut into sectors, and pieces stand one over the other in each. Rectangles may be placed freely, so that the
/// published optimum is never more than what trees take, and may be less.</para>
/// </remarks>
internal static class RectangleSet
{
    private const int Side = 10;

    // Squares at least, and width and height of each rectangle.
    private static readonly (int Optimum, string Sides)[] Published =
    [
        (8, "5x9 4x2 10x6 5x7 6x3 10x7 1x5 3x5 6x9 2x4 6x7 7x2 8x3 8x3 8x3 4x10 4x5 10x3 7x8 8x7"),
        (5, "2x2 2x2 6x8 10x2 1x3 8x4 3x10 1x9 1x9 1x5 6x3 1x1 4x2 9x2 9x5 4x7 3x4 9x7 4x1 9x8"),
        (9, "7x5 10x6 5x6 7x2 4x8 9x10 8x5 8x6 4x9 9x3 3x10 9x5 1x7 8x9 4x6 3x6 4x3 10x2 6x1 1x4"),
        (6, "4x7 1x3 1x3 6x7 8x2 9x4 6x2 7x7 3x6 2x7 3x8 4x3 1x9 8x1 1x10 7x6 9x5 3x7 8x3 6x9"),
        (6, "10x4 2x10 2x10 2x4 10x10 7x2 9x10 5x6 7x5 1x7 1x7 5x3 3x9 9x4 4x3 2x2 4x9 2x8 1x1 4x4"),
        (9, "2x7 8x2 3x9 9x5 2x8 10x10 6x8 6x9 8x7 5x6 1x6 7x9 7x9 3x10 3x10 6x7 3x7 5x10 3x5 10x1"),
        (8, "6x4 6x4 3x4 10x5 6x8 4x10 8x9 7x8 5x2 6x9 9x3 7x9 5x5 1x4 9x2 4x7 4x1 2x10 4x3 8x3"),
        (8, "8x10 6x5 3x2 10x10 8x8 2x2 2x6 10x6 2x9 5x8 3x9 2x1 9x5 7x8 2x8 3x8 2x3 4x2 8x6 6x3"),
        (10, "2x2 2x2 2x2 6x8 10x2 1x3 8x4 3x10 1x9 1x9 1x5 6x3 1x1 4x2 9x2 9x5 9x5 9x5 4x7 4x7 3x4 9x7 4x1 4x1 9x8 4x3 6x5 10x4 1x2 7x1 7x1 3x1 8x3 4x4 7x2 6x9 2x8 10x6 3x9 3x8"),
    ];

    /// <summary>How many there are.</summary>
    public static int Count => Published.Length;

    /// <summary>How few squares take all rectangles of one, freely placed.</summary>
    /// <param name="number">Which, from 0.</param>
    public static int Optimum(int number) => Published[number].Optimum;

    /// <summary>The set as pieces.</summary>
    /// <param name="number">Which, from 0.</param>
    /// <param name="lying">Whether each square is laid on its side with all in it, so that it is cut the other way first.</param>
    public static PackProblem Of(int number, bool lying)
    {
        var pieces = Published[number].Sides.Split(' ').Select(s => s.Split('x').Select(n => int.Parse(n, CultureInfo.InvariantCulture)).ToArray())
            .Select(s => lying ? (Width: s[1], Height: s[0]) : (Width: s[0], Height: s[1])).ToList();

        // Rounded down, a sum of whole widths is over a turn just where it is over the side: that of eleven loses less than a width.
        PackItem[] kinds = [.. pieces.GroupBy(p => p).Select(g => new PackItem(g.Count(), 0, [new PackShape(g.Key.Width * PackShape.Turn / Side, g.Key.Height, 0, 0)]))];
        return new PackProblem(kinds, [new PackSize(Side, 1, 1000, pieces.Count)]);
    }
}
