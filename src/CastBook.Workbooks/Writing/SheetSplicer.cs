using System.Buffers;
using System.Buffers.Text;
using System.Globalization;
using System.Text;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Xml;

namespace CastBook.Workbooks.Writing;

/// <summary>Copies a sheet part and splices edits into it; every byte that is not ours stays as it was.</summary>
internal sealed partial class SheetSplicer
{
    private readonly XmlScanner scanner;
    private readonly Stream output;
    private readonly SheetEdits edits;
    private readonly IEnumerator<int> rows;
    private readonly List<CellEdit> ofRow = [];
    private readonly ArrayBufferWriter<byte> cell = new(256);
    private int nextRow;
    private string prefix = "";
    private byte[] prefixBytes = [];

    private SheetSplicer(Stream source, Stream output, SheetEdits edits)
    {
        scanner = new XmlScanner(XmlEncoding.ToUtf8(source));
        this.output = output;
        this.edits = edits;
        rows = edits.Rows.GetEnumerator();
        MoveToNextRow();
    }

    /// <summary>Writes the part with the edits in it.</summary>
    /// <param name="source">The part as it is.</param>
    /// <param name="output">Where the new part goes.</param>
    /// <param name="edits">What to change.</param>
    public static void Apply(Stream source, Stream output, SheetEdits edits) =>
        new SheetSplicer(source, output, edits).Run();

    private void Run()
    {
        scanner.Next();
        var name = scanner.Name;
        prefixBytes = name[..(name.IndexOf((byte)':') + 1)].ToArray();
        prefix = Encoding.UTF8.GetString(prefixBytes);
        scanner.Keep(output);
        SpliceElements();
        scanner.Keep(output);
        while (scanner.Next())
        {
            scanner.Keep(output);
        }

        scanner.Keep(output);
    }

    private void SpliceRows()
    {
        if (scanner.Kind == TagKind.Empty)
        {
            if (nextRow == int.MaxValue)
            {
                scanner.Keep(output);
                return;
            }

            scanner.KeepBefore(output);
            var tag = Encoding.UTF8.GetString(scanner.Tag);
            scanner.Drop();
            Write(tag.Replace("/>", ">", StringComparison.Ordinal));
            WriteNewRows(int.MaxValue);
            Write($"</{prefix}sheetData>");
            return;
        }

        scanner.Keep(output);
        var row = 0;
        while (scanner.Next() && scanner.Kind != TagKind.End)
        {
            row = TagAttributes.Number(scanner.Tag, "r"u8) ?? row + 1;
            if (nextRow < row)
            {
                scanner.KeepBefore(output);
                WriteNewRows(row);
            }

            if (nextRow == row)
            {
                edits.Collect(row, ofRow);
                MoveToNextRow();
            }
            else
            {
                ofRow.Clear();
            }

            if (ofRow.Count > 0)
            {
                SpliceRow(row);
            }
            else
            {
                KeepRow();
            }
        }

        scanner.KeepBefore(output);
        WriteNewRows(int.MaxValue);
        scanner.Keep(output);
    }

    private void MoveToNextRow() => nextRow = rows.MoveNext() ? rows.Current : int.MaxValue;

    private void WriteNewRows(int before)
    {
        for (; nextRow < before; MoveToNextRow())
        {
            edits.Collect(nextRow, ofRow);
            if (ofRow.TrueForAll(c => c.IsRemoval))
            {
                continue;
            }

            Write($"""<{prefix}row r="{nextRow.ToString(CultureInfo.InvariantCulture)}">""");
            foreach (var edit in ofRow)
            {
                WriteCell(nextRow, edit);
            }

            Write($"</{prefix}row>");
        }
    }

    private void KeepRow()
    {
        for (var depth = scanner.DepthAfter(0); depth > 0;)
        {
            if (!scanner.NextPlainCell(out _))
            {
                scanner.NextInside();
                depth = scanner.DepthAfter(depth);
            }
        }

        scanner.Keep(output);
    }

    private void SpliceRow(int row)
    {
        scanner.KeepBefore(output);
        if (scanner.Kind == TagKind.Empty)
        {
            if (ofRow.TrueForAll(c => c.IsRemoval))
            {
                scanner.Keep(output);
                return;
            }

            cell.ResetWrittenCount();
            RowSpans.WriteFitted(scanner.Tag, ofRow, cell);
            scanner.Drop();
            output.Write(cell.WrittenSpan[..^2].TrimEnd((byte)' '));
            output.Write(">"u8);
            foreach (var edit in ofRow)
            {
                WriteCell(row, edit);
            }

            Write($"</{prefix}row>");
            return;
        }

        WriteRowTag();
        var at = PassIfLeftOf(row, ofRow[0].Column) ? 0 : SpliceCells(row);
        scanner.KeepBefore(output);
        for (; at < ofRow.Count; at++)
        {
            WriteCell(row, ofRow[at]);
        }

        while (scanner.Kind != TagKind.End)
        {
            scanner.SkipElement();
            scanner.NextInside();
        }

        scanner.Keep(output);
    }

    /// <summary>Passes all cells of a row at once where they stand left of a column, as those of a list do beside which new columns are set; false, and nothing passed, where that cannot be told.</summary>
    private bool PassIfLeftOf(int row, int column)
    {
        // Cells stand in order: a sheet in which they do not is refused when it is read.
        if (prefix.Length > 0 || !scanner.TryPeek(RowCells.Closing, out var cells) || !(RowCells.LastColumn(cells, row) < column))
        {
            return false;
        }

        scanner.PassPeeked(cells.Length, RowCells.Closing.Length);
        return true;
    }

    /// <summary>Splices the cells of a row up to the last that stands; answers how many edits are done by then.</summary>
    private int SpliceCells(int row)
    {
        var at = 0;
        for (var column = 0; NextCell(out var address, out var style);)
        {
            column = address.IsEmpty || !CellRef.TryParse(address, out _, out var itsColumn) ? column + 1 : itsColumn;
            if (at < ofRow.Count && ofRow[at].Column <= column)
            {
                scanner.KeepBefore(output);
                for (; at < ofRow.Count && ofRow[at].Column < column; at++)
                {
                    WriteCell(row, ofRow[at]);
                }
            }

            scanner.SkipElement();
            if (at < ofRow.Count && ofRow[at].Column == column)
            {
                scanner.Drop();
                var edit = ofRow[at++];
                WriteCell(row, edit.Restyles ? edit : edit with { NewStyle = style });
            }
        }

        return at;
    }

    // A plain cell is passed as a whole, so that nothing is left to skip.
    private bool NextCell(out ReadOnlySpan<byte> address, out int? style)
    {
        if (scanner.NextPlainCell(out var plain))
        {
            address = plain.Address;
            style = Utf8Parser.TryParse(plain.Style, out int number, out _) ? number : null;
            return true;
        }

        address = default;
        style = null;
        if (!scanner.NextInside() || !scanner.LocalName.SequenceEqual("c"u8))
        {
            return false;
        }

        _ = scanner.TryGetAttribute("r"u8, out address);
        style = TagAttributes.Number(scanner.Tag, "s"u8);
        return true;
    }

    private void WriteRowTag()
    {
        if (scanner.TryGetAttribute("spans"u8, out _))
        {
            cell.ResetWrittenCount();
            RowSpans.WriteFitted(scanner.Tag, ofRow, cell);
            scanner.Drop();
            output.Write(cell.WrittenSpan);
        }
        else
        {
            scanner.Keep(output);
        }
    }

    private void WriteCell(int row, CellEdit edit)
    {
        if (!edit.IsRemoval)
        {
            cell.ResetWrittenCount();
            edit.Value.Write(cell, row, edit.Column, edit.NewStyle, prefixBytes);
            output.Write(cell.WrittenSpan);
        }
    }

    private void Write(string text)
    {
        Span<byte> small = stackalloc byte[512];
        if (Encoding.UTF8.TryGetBytes(text, small, out var written))
        {
            output.Write(small[..written]);
            return;
        }

        output.Write(Encoding.UTF8.GetBytes(text));
    }
}
