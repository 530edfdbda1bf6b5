using System.Buffers;
using System.Buffers.Text;
using System.Text;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Writing;
using CastBook.Workbooks.Xml;

namespace CastBook.Workbooks.Verifying;

/// <summary>What the rules look at in a sheet, gathered in one walk over its tags.</summary>
internal sealed class SheetFacts
{
    private readonly SheetEdits? edits;
    private readonly ArrayBufferWriter<byte> expected = new(256);
    private readonly IEnumerator<int> rowsToRead;
    private readonly List<CellEdit> written = [];
    private int nextRow;
    private byte[] prefix = [];

    private SheetFacts(SheetPart sheet, SheetEdits? edits)
    {
        Sheet = sheet;
        this.edits = edits;
        rowsToRead = (edits?.Rows ?? []).GetEnumerator();
        MoveToNextRow();
    }

    /// <summary>The sheet.</summary>
    public SheetPart Sheet { get; }

    /// <summary>Cells and rows out of order or twice.</summary>
    public List<string> Disorder { get; } = [];

    /// <summary>The elements directly in the sheet, in order.</summary>
    public List<string> Elements { get; } = [];

    /// <summary>The highest cell format used.</summary>
    public int HighestFormat { get; private set; }

    /// <summary>The highest shared string used; -1 for none.</summary>
    public int HighestString { get; private set; } = -1;

    /// <summary>What stands around the cells.</summary>
    public SheetElements Around { get; } = new();

    /// <summary>Formulas that cells share.</summary>
    public SharedFormulas Shared { get; } = new();

    /// <summary>Cells that hold what their type or any cell cannot hold.</summary>
    public List<string> Unholdable { get; } = [];

    /// <summary>Cells that do not say what was written into them.</summary>
    public List<string> Unwritten { get; } = [];

    /// <summary>Reads a sheet.</summary>
    /// <param name="package">The book.</param>
    /// <param name="sheet">The sheet.</param>
    /// <param name="edits">What was written into it, which is read back on the way; null for a book that was not written.</param>
    public static SheetFacts Read(BookPackage package, SheetPart sheet, SheetEdits? edits = null)
    {
        using var part = package.OpenPart(sheet.PartName);
        return Read(part, sheet, edits);
    }

    /// <summary>Reads a sheet from its part.</summary>
    /// <param name="part">The part.</param>
    /// <param name="sheet">The sheet.</param>
    /// <param name="edits">What was written into it.</param>
    public static SheetFacts Read(Stream part, SheetPart sheet, SheetEdits? edits)
    {
        var facts = new SheetFacts(sheet, edits);
        using var stream = XmlEncoding.ToUtf8(part);
        var scanner = new XmlScanner(stream);
        if (scanner.NextInside() && scanner.Kind == TagKind.Start)
        {
            facts.prefix = scanner.Name[..(scanner.Name.IndexOf((byte)':') + 1)].ToArray();
            facts.ReadElements(scanner);
        }

        facts.MissRowsBefore(int.MaxValue);
        while (scanner.Next())
        {
            // What follows is read to the part's end, so that a stream of it is not left half read.
            scanner.Drop();
        }

        return facts;
    }

    private void ReadElements(XmlScanner scanner)
    {
        while (scanner.NextInside())
        {
            var name = Encoding.UTF8.GetString(scanner.LocalName);
            Elements.Add(name);
            if (name == "sheetData" && scanner.Kind == TagKind.Start)
            {
                ReadRows(scanner);
            }
            else
            {
                Around.Read(scanner, name);
            }

            scanner.Drop();
        }
    }

    private void MoveToNextRow() => nextRow = rowsToRead.MoveNext() ? rowsToRead.Current : int.MaxValue;

    /// <summary>Rows that should be there by now and are not.</summary>
    private void MissRowsBefore(int row)
    {
        for (; nextRow < row; MoveToNextRow())
        {
            edits!.Collect(nextRow, written);
            written.ForEach(edit => MissWritten(nextRow, edit));
        }
    }

    private void ReadRows(XmlScanner scanner)
    {
        var row = 0;
        while (scanner.NextInside())
        {
            var number = TagAttributes.Number(scanner.Tag, "r"u8) ?? row + 1;
            if (number <= row)
            {
                Disorder.Add($"{Sheet.Name}: row {number} comes after row {row}.");
            }

            row = number;
            MissRowsBefore(row);
            if (scanner.Kind == TagKind.Start)
            {
                ReadCells(scanner, row);
            }

            scanner.Drop();
        }
    }

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
