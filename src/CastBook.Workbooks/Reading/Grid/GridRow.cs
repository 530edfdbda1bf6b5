namespace CastBook.Workbooks.Reading.Grid;

/// <summary>A row of a sheet, found once: to ask several cells of a row in turn is quicker of it than of the sheet.</summary>
internal readonly struct GridRow
{
    private readonly SheetGrid grid;
    private readonly RowPattern pattern;
    private readonly int start;

    internal GridRow(SheetGrid grid, int number, RowPattern pattern, int start) =>
        (this.grid, Number, this.pattern, this.start) = (grid, number, pattern, start);

    /// <summary>The row, from 1.</summary>
    public int Number { get; }

    /// <summary>A cell; empty where the file has none.</summary>
    /// <param name="column">Column, from 1.</param>
    public GridCell Cell(int column) => grid.Cell(Number, column, pattern, start);

    /// <summary>The format of a cell; 0 where the file has none.</summary>
    /// <param name="column">Column, from 1.</param>
    public int StyleOf(int column) => pattern.PlaceOf(column) is >= 0 and var place ? pattern.Styles[place] : 0;
}
