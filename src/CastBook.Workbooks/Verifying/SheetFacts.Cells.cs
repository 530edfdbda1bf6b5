using System.Buffers.Text;
using System.Text;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Writing;
using CastBook.Workbooks.Xml;

namespace CastBook.Workbooks.Verifying;

/// <content>What stands in the rows: cells as they were read, as they were to be written, and all others.</content>
internal sealed partial class SheetFacts
{
    private void ReadCells(XmlScanner scanner, int row)
    {
        written.Clear();
        if (nextRow == row)
        {
            edits!.Collect(row, written);
            MoveToNextRow();
        }

        if (PassAsRead(scanner, row))
        {
            return;
        }

        var (column, at) = (0, 0);
        while (NextCell(scanner, out var address, out var format, out var isString, out var isPlain))
        {
            column = NextColumn(row, column, address);
            HighestFormat = Math.Max(HighestFormat, format);
            for (; at < written.Count && written[at].Column < column; at++)
            {
                MissWritten(row, written[at]);
            }

            if (isString)
            {
                ReadString(scanner);
            }
            else
            {
                scanner.SkipElement();
                LookInside(scanner, row, column, isPlain);
            }

            if (at < written.Count && written[at].Column == column && !Says(scanner.Passed, written[at++]))
            {
                Unwritten.Add(CellRef.AddressOf(row, column));
            }

            scanner.Drop();
        }

        for (; at < written.Count; at++)
        {
            MissWritten(row, written[at]);
        }
    }

    /// <summary>Passes the cells of a row at once where they are, byte for byte, what was read and behind it what was to be written; false, and nothing passed, where that cannot be told.</summary>
    /// <remarks>What the rules ask of cells that are as they were was as it is before the book was written.</remarks>
    private bool PassAsRead(XmlScanner scanner, int row)
    {
        if (edits?.List?.DigestOf(row) is not (> 0 and var digest) || !scanner.TryPeek(RowCells.Closing, out var cells))
        {
            return false;
        }

        var format = HighestFormat;
        expected.ResetWrittenCount();
        foreach (var edit in written)
        {
            if (edit.IsRemoval)
            {
                return false;
            }

            edit.Value.Write(expected, row, edit.Column, edit.NewStyle, prefix);
            format = Math.Max(format, edit.NewStyle ?? 0);
        }

        if (!cells.EndsWith(expected.WrittenSpan) || cells[..^expected.WrittenCount] is var shops && RowCells.Digest(shops) != digest
            || (written.Count > 0 && !shops.IsEmpty && !(RowCells.LastColumn(shops, row) < written[0].Column)))
        {
            return false;
        }

        HighestFormat = format;
        scanner.PassPeeked(cells.Length, RowCells.Closing.Length);
        return true;
    }

    /// <summary>A cell that is not there, as one that was taken out should not be.</summary>
    private void MissWritten(int row, CellEdit edit)
    {
        if (!edit.IsRemoval)
        {
            Unwritten.Add(CellRef.AddressOf(row, edit.Column));
        }
    }

    // A plain cell is passed as a whole, and its string is counted here.
    private bool NextCell(XmlScanner scanner, out ReadOnlySpan<byte> address, out int format, out bool isString, out bool isPlain)
    {
        if (scanner.NextPlainCell(out var plain))
        {
            address = plain.Address;
            isString = false;
            isPlain = plain.Type.Length != "inlineStr".Length;
            _ = Utf8Parser.TryParse(plain.Style, out format, out _);
            if (plain.Type is [(byte)'s'] && Utf8Parser.TryParse(plain.Value, out int index, out _))
            {
                HighestString = Math.Max(HighestString, index);
            }

            return true;
        }

        (format, isString, isPlain) = (0, false, false);
        address = default;
        if (!scanner.NextInside())
        {
            return false;
        }

        scanner.DropBefore();
        format = TagAttributes.Number(scanner.Tag, "s"u8) ?? 0;
        isString = scanner.Kind == TagKind.Start && TagAttributes.TryGet(scanner.Tag, "t"u8, out var type) && type is [(byte)'s'];
        _ = scanner.TryGetAttribute("r"u8, out address);
        return true;
    }

    private int NextColumn(int row, int column, ReadOnlySpan<byte> address)
    {
        var next = column + 1;
        if (!address.IsEmpty && CellRef.TryParse(address, out var itsRow, out var itsColumn))
        {
            next = itsColumn;
            if (itsRow != row)
            {
                Disorder.Add($"{Sheet.Name}: cell {Encoding.UTF8.GetString(address)} stands in row {row}.");
            }
        }

        if (next <= column)
        {
            Disorder.Add($"{Sheet.Name}: cell {CellRef.AddressOf(row, next)} comes after {CellRef.AddressOf(row, column)}.");
        }

        return next;
    }

    private void LookInside(XmlScanner scanner, int row, int column, bool isPlain)
    {
        if (isPlain)
        {
            return;
        }

        var element = scanner.Passed;
        Shared.Look(element);
        if (element.IndexOf("\"inlineStr\""u8) >= 0 && element.IndexOf("</v>"u8) >= 0)
        {
            Unholdable.Add($"{Sheet.Name}: cell {CellRef.AddressOf(row, column)} is a text of its own and has a value.");
        }
    }

    /// <summary>Whether a cell's element says what was to be written, its place and format apart.</summary>
    private bool Says(ReadOnlySpan<byte> element, CellEdit edit)
    {
        expected.ResetWrittenCount();
        edit.Value.WriteContent(expected, prefix);
        return !edit.IsRemoval && element.EndsWith(expected.WrittenSpan);
    }

    private void ReadString(XmlScanner scanner)
    {
        // The text between two tags is what stands before the closing one.
        var from = scanner.End;
        while (scanner.Next() && !(scanner.Kind == TagKind.End && scanner.LocalName.SequenceEqual("c"u8)))
        {
            if (scanner.Kind == TagKind.End && scanner.LocalName.SequenceEqual("v"u8)
                && Utf8Parser.TryParse(scanner.TextSince(from), out int index, out _))
            {
                HighestString = Math.Max(HighestString, index);
            }

            from = scanner.End;
        }
    }
}
