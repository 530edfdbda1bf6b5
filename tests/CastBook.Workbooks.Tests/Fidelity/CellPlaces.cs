using System.Globalization;
using CastBook.Workbooks.Reading;

namespace CastBook.Workbooks.Tests.Fidelity;

/// <summary>Where the rows and cells of a sheet stand, written or counted.</summary>
internal sealed class CellPlaces
{
    private readonly Dictionary<RawNode, int> rows = [];
    private readonly Dictionary<RawNode, (int Row, int Column)> cells = [];

    /// <summary>The cells by place.</summary>
    public Dictionary<(int Row, int Column), RawNode> At { get; } = [];

    /// <summary>Takes in the rows of a sheet; may be called for a sheet as it was and again for it as it is.</summary>
    public void Add(RawNode sheetData)
    {
        var row = 0;
        foreach (var node in sheetData.Elements)
        {
            row = node["r"] is { } number ? int.Parse(number, CultureInfo.InvariantCulture) : row + 1;
            rows[node] = row;
            var column = 0;
            foreach (var cell in node.Elements.Where(e => e.LocalName == "c"))
            {
                column = CellRef.TryParse(cell["r"], out _, out var written) ? written : column + 1;
                cells[cell] = (row, column);
                At[(row, column)] = cell;
            }
        }
    }

    public bool HasRow(int row) => rows.ContainsValue(row);

    public int RowOf(RawNode row) => rows[row];

    public (int Row, int Column) Of(RawNode cell) => cells[cell];
}
