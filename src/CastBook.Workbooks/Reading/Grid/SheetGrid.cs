namespace CastBook.Workbooks.Reading.Grid;

/// <summary>The cells of a sheet, sparse: only what the file has is stored.</summary>
public sealed class SheetGrid
{
    private readonly SheetCells cells;
    private readonly SharedStrings strings;

    internal SheetGrid(SheetCells cells, SharedStrings strings, SheetFrame frame)
    {
        this.cells = cells;
        this.strings = strings;
        Merges = frame.Merges;
        AutoFilter = frame.AutoFilter;
        Arrays = frame.Arrays;
        IsProtected = frame.IsProtected;
        TablePartIds = frame.TablePartIds;
        HighestPriority = frame.HighestPriority;
        LegacyDrawingId = frame.LegacyDrawingId;
    }

    /// <summary>The rows that have cells, ascending, from 1.</summary>
    public IReadOnlyList<int> Rows => cells.Rows;

    /// <summary>The last row that has cells; 0 where none has.</summary>
    public int LastRow => cells.Rows.Count == 0 ? 0 : cells.Rows[^1];

    /// <summary>Whether a formula stands behind any cell.</summary>
    public bool HasFormulas => cells.HasFormulas;

    /// <summary>Merged ranges.</summary>
    public IReadOnlyList<CellRange> Merges { get; }

    /// <summary>The sheet's plain filter, where it has one.</summary>
    public CellRange? AutoFilter { get; }

    /// <summary>The ranges over which one formula spreads its results; the cells in them belong to it, those without a formula of their own too.</summary>
    public IReadOnlyList<CellRange> Arrays { get; }

    /// <summary>Whether the sheet is protected against changes in an office program.</summary>
    public bool IsProtected { get; }

    /// <summary>Relationship ids of the sheet's tables, in order.</summary>
    public IReadOnlyList<string> TablePartIds { get; }

    /// <summary>The highest priority number among the shop's conditional formatting rules of the sheet; 0 where it has none.</summary>
    public int HighestPriority { get; }

    /// <summary>Relationship id of the drawing behind the sheet's notes, where it has one.</summary>
    public string? LegacyDrawingId { get; }

    /// <summary>A cell; empty where the file has none.</summary>
    /// <param name="row">Row, from 1.</param>
    /// <param name="column">Column, from 1.</param>
    public GridCell Cell(int row, int column) => Row(row).Cell(column);

    /// <summary>A row; one without cells where the file has none.</summary>
    /// <param name="row">Row, from 1.</param>
    internal GridRow Row(int row)
    {
        var (pattern, start) = cells.Row(row);
        return new GridRow(this, row, pattern, start);
    }

    internal GridCell Cell(int row, int column, RowPattern pattern, int start)
    {
        var cell = cells.Cell(row, column, pattern, start, strings);
        return Arrays.Count > 0 && IsInArray(row, column) ? cell with { HasFormula = true } : cell;
    }

    /// <summary>Forgets the values of all cells but some, which a long list no longer needs once its pieces are read; formats stay.</summary>
    /// <param name="wholeTo">The last row that is kept whole.</param>
    /// <param name="columns">The columns that are kept in the rows below.</param>
    internal void KeepOnly(int wholeTo, IReadOnlySet<int> columns) => cells.KeepOnly(wholeTo, columns);

    /// <summary>The last column of a row that has a cell, an empty formatted one too; 0 where the row has none.</summary>
    /// <param name="row">Row, from 1.</param>
    public int LastColumnOf(int row) => cells.LastColumnOf(row);

    /// <summary>The digest of a row's cells as they were read (<see cref="RowCells.Digest"/>); 0 where none was taken.</summary>
    /// <param name="row">Row, from 1.</param>
    internal uint DigestOf(int row) => cells.DigestOf(row);

    /// <summary>Whether any text of the book is struck out run by run.</summary>
    internal bool AnyStruckText => cells.Struck.Count + strings.Struck.Count > 0;

    /// <summary>Whether every run of a cell's text is struck out.</summary>
    /// <param name="cell">A cell of this sheet.</param>
    internal bool IsTextStruck(GridCell cell) => cell.Text is { } text && (cells.Struck.Contains(text) || strings.Struck.Contains(text));

    /// <summary>Whether the row is hidden, by hand or by a filter.</summary>
    /// <param name="row">Row, from 1.</param>
    public bool IsRowHidden(int row) => cells.HiddenRows.Contains(row);

    private bool IsInArray(int row, int column)
    {
        for (var i = 0; i < Arrays.Count; i++)
        {
            if (Arrays[i].Contains(row, column))
            {
                return true;
            }
        }

        return false;
    }
}
