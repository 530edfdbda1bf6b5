namespace CastBook.Workbooks.Drawing;

/// <summary>What is drawn on a sheet that CastBook makes, over its cells.</summary>
internal sealed class SheetDrawing
{
    private readonly List<Picture> pictures = [];
    private readonly List<Chart> charts = [];

    /// <summary>Pictures made of shapes.</summary>
    public IReadOnlyList<Picture> Pictures => pictures;

    /// <summary>Charts of the sheet's cells.</summary>
    public IReadOnlyList<Chart> Charts => charts;

    /// <summary>Whether nothing is drawn.</summary>
    public bool IsEmpty => pictures.Count == 0 && charts.Count == 0;

    /// <summary>Adds a picture.</summary>
    /// <param name="picture">The picture.</param>
    public void Add(Picture picture) => pictures.Add(picture);

    /// <summary>Adds a chart.</summary>
    /// <param name="chart">The chart.</param>
    public void Add(Chart chart) => charts.Add(chart);
}

/// <summary>Where something is drawn: its upper left corner at that of a cell, and its size on paper.</summary>
/// <param name="Row">The cell's row, from 1.</param>
/// <param name="Column">The cell's column, from 1.</param>
/// <param name="WidthMm">Width on paper.</param>
/// <param name="HeightMm">Height on paper.</param>
internal readonly record struct Frame(int Row, int Column, double WidthMm, double HeightMm);
