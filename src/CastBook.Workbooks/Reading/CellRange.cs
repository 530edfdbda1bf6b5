namespace CastBook.Workbooks.Reading;

/// <summary>A rectangle of cells; rows and columns count from 1 and both ends are inside.</summary>
/// <param name="FirstRow">First row.</param>
/// <param name="FirstColumn">First column.</param>
/// <param name="LastRow">Last row.</param>
/// <param name="LastColumn">Last column.</param>
public readonly record struct CellRange(int FirstRow, int FirstColumn, int LastRow, int LastColumn)
{
    /// <summary>As the file format writes it: <c>A4:M17</c>, or <c>A4</c> for one cell.</summary>
    public override string ToString() => FirstRow == LastRow && FirstColumn == LastColumn
        ? CellRef.AddressOf(FirstRow, FirstColumn)
        : $"{CellRef.AddressOf(FirstRow, FirstColumn)}:{CellRef.AddressOf(LastRow, LastColumn)}";

    /// <summary>Whether the cell lies inside.</summary>
    /// <param name="row">Row, from 1.</param>
    /// <param name="column">Column, from 1.</param>
    public bool Contains(int row, int column) =>
        row >= FirstRow && row <= LastRow && column >= FirstColumn && column <= LastColumn;

    /// <summary>Reads <c>A4:M17</c> or <c>A4</c>, dollar signs allowed.</summary>
    /// <param name="text">The range.</param>
    /// <param name="range">What it says.</param>
    public static bool TryParse(ReadOnlySpan<char> text, out CellRange range)
    {
        range = default;
        var colon = text.IndexOf(':');
        var first = colon < 0 ? text : text[..colon];
        var last = colon < 0 ? text : text[(colon + 1)..];
        if (!CellRef.TryParse(first, out var r1, out var c1) || !CellRef.TryParse(last, out var r2, out var c2))
        {
            return false;
        }

        range = new CellRange(Math.Min(r1, r2), Math.Min(c1, c2), Math.Max(r1, r2), Math.Max(c1, c2));
        return true;
    }
}
