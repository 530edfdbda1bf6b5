using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace CastBook.Benchmarks;

/// <summary>Requires that a filled book is what it should be, before anything is timed.</summary>
internal static partial class FilledCheck
{
    private const double Tolerance = 0.006; // shown to a hundredth of a gram

    /// <summary>Every cell of the shop unchanged, and the metal of every row right.</summary>
    /// <param name="before">The book.</param>
    /// <param name="after">The filled book.</param>
    /// <param name="rows">How many rows the book has.</param>
    /// <param name="withFlasks">Whether every row must stand in a flask, or say why not.</param>
    /// <exception cref="InvalidOperationException">It is not.</exception>
    public static void Require(byte[] before, byte[] after, int rows, bool withFlasks)
    {
        var cells = SavedCells.Of(after);
        SavedCells.RequireEqual(SavedCells.Of(before), cells);
        var metal = ColumnOf(cells, "Metal each (g)");
        var flask = ColumnOf(cells, "Flask");
        var checks = ColumnOf(cells, "Checks");
        foreach (var row in LargeBookMetal.Rows(rows))
        {
            var shown = Number(cells, $"{metal}{row.Row}");
            if (Math.Abs(shown - row.MetalEachGrams) > Tolerance)
            {
                throw new InvalidOperationException(string.Create(CultureInfo.InvariantCulture,
                    $"Row {row.Row} takes {row.MetalEachGrams} g and the book says {shown}: nothing was timed."));
            }

            if (withFlasks && !HasText(cells, $"{flask}{row.Row}") && !HasText(cells, $"{checks}{row.Row}"))
            {
                throw new InvalidOperationException(string.Create(CultureInfo.InvariantCulture, $"Row {row.Row} stands in no flask and nothing says why."));
            }
        }
    }

    private static string ColumnOf(Dictionary<string, string> cells, string heading)
    {
        var cell = cells.FirstOrDefault(c => RowOne().IsMatch(c.Key) && c.Value.Contains($">{heading}<", StringComparison.Ordinal)).Key
            ?? throw new InvalidOperationException($"The filled book has no column \"{heading}\".");
        return cell[..^1];
    }

    private static double Number(Dictionary<string, string> cells, string reference) =>
        cells.TryGetValue(reference, out var cell) && double.TryParse(XElement.Parse(cell).Value, NumberStyles.Float, CultureInfo.InvariantCulture, out var number)
            ? number
            : throw new InvalidOperationException($"Cell {reference} of the filled book holds no number.");

    private static bool HasText(Dictionary<string, string> cells, string reference) =>
        cells.TryGetValue(reference, out var cell) && XElement.Parse(cell).Value.Length > 0;

    [GeneratedRegex("^[A-Z]+1$")]
    private static partial Regex RowOne();
}
