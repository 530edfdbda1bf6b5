using System.IO.Hashing;
using CastBook.Workbooks.Xml;

namespace CastBook.Workbooks.Reading.Grid;

/// <summary>The cells of a row as the bytes they are, without parting them.</summary>
internal static class RowCells
{
    /// <summary>The closing tag of a row that has no prefix.</summary>
    public static ReadOnlySpan<byte> Closing => "</row>"u8;

    /// <summary>A digest of a row's cells, by which they are known again, the checksum of zips; never 0.</summary>
    /// <param name="cells">All between the row's two tags.</param>
    public static uint Digest(ReadOnlySpan<byte> cells) => Math.Max(1, Crc32.HashToUInt32(cells));

    /// <summary>The column of the last cell; null where it is not a plain cell of the row with an address.</summary>
    /// <param name="cells">All between the row's two tags.</param>
    /// <param name="row">The row.</param>
    public static int? LastColumn(ReadOnlySpan<byte> cells, int row)
    {
        var last = cells.LastIndexOf("<c "u8);
        return last >= 0 && PlainCell.TryRead(cells[last..], out var cell) && last + cell.Length == cells.Length
            && CellRef.TryParse(cell.Address, out var itsRow, out var column) && itsRow == row
            ? column
            : null;
    }
}
