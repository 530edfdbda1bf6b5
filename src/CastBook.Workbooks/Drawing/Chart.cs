using CastBook.Workbooks.Reading;

namespace CastBook.Workbooks.Drawing;

/// <summary>A chart of numbers over numbers, of cells on its sheet.</summary>
/// <param name="Name">Its name in the book, after our own; unique on its sheet.</param>
/// <param name="Description">What it shows, for those who cannot see it.</param>
/// <param name="Frame">Where it is drawn.</param>
/// <param name="Title">Its title.</param>
/// <param name="Across">What is counted across, with its unit.</param>
/// <param name="Up">What is counted upwards, with its unit.</param>
/// <param name="Lines">Its lines, the hindmost first.</param>
internal sealed record Chart(
    string Name, string Description, Frame Frame, string Title, string Across, string Up, IReadOnlyList<ChartLine> Lines);

/// <summary>A line of a chart, or marks alone.</summary>
/// <param name="Name">What it is called beside the chart.</param>
/// <param name="Across">The cells of what is counted across, one column.</param>
/// <param name="Up">The cells of what is counted upwards, one column of as many.</param>
/// <param name="Points">What stands in those cells now, for programs that do not compute.</param>
internal sealed record ChartLine(string Name, CellRange Across, CellRange Up, IReadOnlyList<(double Across, double Up)> Points)
{
    /// <summary>Its colour.</summary>
    public string Color { get; init; } = Shape.Ink;

    /// <summary>Its thickness in points; 0 draws no line but triangles with its name.</summary>
    public double Thickness { get; init; } = 1.5;

    /// <summary>Whether it is dashed.</summary>
    public bool Dashed { get; init; }
}
