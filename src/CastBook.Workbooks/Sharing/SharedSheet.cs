using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Grid;

namespace CastBook.Workbooks.Sharing;

/// <summary>A sheet that is shared, and what of its cells.</summary>
/// <param name="Part">The sheet.</param>
/// <param name="Grid">Its cells.</param>
/// <param name="Keeps">Whether the value of a cell is shared.</param>
internal sealed record SharedSheet(SheetPart Part, SheetGrid Grid, Func<int, int, bool> Keeps)
{
    /// <summary>Whether formulas are shared where they quote nothing; elsewhere they are shared as their value, where that is.</summary>
    public bool KeepsFormulas { get; init; }

    /// <summary>The last row whose merged cells are layout; below they belong to what is typed.</summary>
    public int LastMergedRow { get; init; } = int.MaxValue;

    /// <summary>The rows of headings of a list; missing on other sheets.</summary>
    public CellRange? Headings { get; init; }

    /// <summary>Whether the values of its cells are a secret to nobody: drop-down lists may quote them.</summary>
    public bool IsSettings => Headings is null;

    /// <summary>Headings that stand over no column CastBook knows.</summary>
    public IReadOnlyList<string> UnknownHeadings { get; init; } = [];

    /// <summary>What a sentence calls it.</summary>
    public required string Called { get; init; }

    /// <summary>The value of a cell, where it is shared; empty otherwise.</summary>
    /// <param name="row">Row, from 1.</param>
    /// <param name="column">Column, from 1.</param>
    public GridCell Value(int row, int column) =>
        Grid.Cell(row, column) is var cell && !(cell.HasFormula && KeepsFormulas) && Keeps(row, column) && cell.Kind != CellKind.Error ? cell : default;
}
