namespace CastBook.Workbooks.Reading.Grid;

/// <summary>What stands around the cells of a sheet.</summary>
internal sealed class SheetFrame
{
    public List<CellRange> Merges { get; } = [];

    public CellRange? AutoFilter { get; set; }

    public List<CellRange> Arrays { get; } = [];

    public bool IsProtected { get; set; }

    public List<string> TablePartIds { get; } = [];

    public int HighestPriority { get; set; }

    public string? LegacyDrawingId { get; set; }
}
