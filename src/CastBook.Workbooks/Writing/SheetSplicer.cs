using System.Buffers;
using System.Globalization;
using System.Text;
using CastBook.Workbooks.Reading;

namespace CastBook.Workbooks.Writing;

/// <summary>Copies a sheet part and splices edits into it; every byte that is not ours stays as it was.</summary>
internal sealed class SheetSplicer
{
    private readonly XmlScanner scanner;
    private readonly Stream output;
    private readonly SheetEdits edits;
    private readonly Queue<int> rows;
    private readonly ArrayBufferWriter<byte> cell = new(256);
    private string prefix = "";
    private byte[] prefixBytes = [];

    private SheetSplicer(Stream source, Stream output, SheetEdits edits)
    {
        scanner = new XmlScanner(XmlEncoding.ToUtf8(source));
        this.output = output;
        this.edits = edits;
        rows = new Queue<int>(edits.Rows.Keys);
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
        var inserts = new Queue<SheetInsert>(edits.Inserts);
        while (scanner.Next() && scanner.Kind != TagKind.End)
        {
            var local = Encoding.UTF8.GetString(scanner.LocalName);
            var rank = SheetEdits.RankOf(local);
            while (rank >= 0 && inserts.TryPeek(out var next) && next.Rank <= rank)
            {
                inserts.Dequeue();
                if (!next.OnlyIfAbsent || next.Rank < rank)
                {
                    scanner.KeepBefore(output);
                    Write(XmlPart.WithPrefix(next.Xml, prefix));
                }
            }

            if (local == "sheetData")
            {
                SpliceRows();
            }
            else
            {
                SpliceElement(edits.ChangeOf(local));
            }
        }

        scanner.KeepBefore(output);
        foreach (var insert in inserts)
        {
            Write(XmlPart.WithPrefix(insert.Xml, prefix));
        }

        scanner.Keep(output);
        while (scanner.Next())
        {
            scanner.Keep(output);
        }

        scanner.Keep(output);
    }

    private void SpliceElement(Func<byte[], byte[]?>? change)
    {
        if (change is null)
        {
            scanner.SkipElement();
            scanner.Keep(output);
            return;
        }

        scanner.KeepBefore(output);
        output.Write(change(scanner.TakeElement()) ?? []);
    }

    private void SpliceRows()
    {
        if (scanner.Kind == TagKind.Empty)
        {
            if (rows.Count == 0)
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
            if (rows.TryPeek(out var next) && next < row)
            {
                scanner.KeepBefore(output);
                WriteNewRows(row);
            }

            if (rows.TryPeek(out next) && next == row)
            {
                rows.Dequeue();
                SpliceRow(row, edits.Sorted(row));
            }
            else
            {
                scanner.SkipElement();
                scanner.Keep(output);
            }
        }

        scanner.KeepBefore(output);
        WriteNewRows(int.MaxValue);
        scanner.Keep(output);
    }

    private void WriteNewRows(int before)
    {
        while (rows.TryPeek(out var row) && row < before)
        {
            rows.Dequeue();
            Write($"<{prefix}row r=\"{row.ToString(CultureInfo.InvariantCulture)}\">");
            foreach (var edit in edits.Sorted(row))
            {
                WriteCell(row, edit);
            }

            Write($"</{prefix}row>");
        }
    }

    private void SpliceRow(int row, List<CellEdit> cells)
    {
        scanner.KeepBefore(output);
        if (scanner.Kind == TagKind.Empty)
        {
            var tag = WidenSpans(Encoding.UTF8.GetString(scanner.Tag), cells[^1].Column);
            scanner.Drop();
            Write(string.Concat(tag.AsSpan(0, tag.Length - 2).TrimEnd(), ">"));
            cells.ForEach(edit => WriteCell(row, edit));
            Write($"</{prefix}row>");
            return;
        }

        WriteRowTag(cells[^1].Column);
        var at = 0;
        var column = 0;
        while (scanner.Next() && scanner.Kind != TagKind.End)
        {
            if (!scanner.LocalName.SequenceEqual("c"u8))
            {
                break;
            }

            column = ColumnOf(column);
            if (at < cells.Count && cells[at].Column <= column)
            {
                scanner.KeepBefore(output);
                while (at < cells.Count && cells[at].Column < column)
                {
                    WriteCell(row, cells[at++]);
                }
            }

            if (at < cells.Count && cells[at].Column == column)
            {
                ReplaceCell(row, cells[at++]);
            }
            else
            {
                scanner.SkipElement();
            }
        }

        scanner.KeepBefore(output);
        while (at < cells.Count)
        {
            WriteCell(row, cells[at++]);
        }

        while (scanner.Kind != TagKind.End)
        {
            scanner.SkipElement();
            scanner.Next();
        }

        scanner.Keep(output);
    }

    private void WriteRowTag(int lastColumn)
    {
        if (scanner.TryGetAttribute("spans"u8, out _))
        {
            var tag = Encoding.UTF8.GetString(scanner.Tag);
            scanner.Drop();
            Write(WidenSpans(tag, lastColumn));
        }
        else
        {
            scanner.Keep(output);
        }
    }

    private int ColumnOf(int last)
    {
        if (!TagAttributes.TryGet(scanner.Tag, "r"u8, out var raw) || raw.Length > 12)
        {
            return last + 1;
        }

        Span<char> address = stackalloc char[12];
        Encoding.UTF8.GetChars(raw, address);
        return CellRef.TryParse(address[..raw.Length], out _, out var column) ? column : last + 1;
    }

    private void ReplaceCell(int row, CellEdit edit)
    {
        var style = TagAttributes.Number(scanner.Tag, "s"u8);
        scanner.SkipElement();
        scanner.Drop();
        WriteCell(row, edit with { NewStyle = style });
    }

    private void WriteCell(int row, CellEdit edit)
    {
        cell.ResetWrittenCount();
        edit.Value.Write(cell, row, edit.Column, edit.NewStyle, prefixBytes);
        output.Write(cell.WrittenSpan);
    }

    private static string WidenSpans(string tag, int column)
    {
        const string Name = " spans=\"";
        var start = tag.IndexOf(Name, StringComparison.Ordinal);
        if (start < 0)
        {
            return tag;
        }

        start += Name.Length;
        var end = tag.IndexOf('"', start);
        var colon = tag.LastIndexOf(':', end);
        return colon > start && int.TryParse(tag.AsSpan(colon + 1, end - colon - 1), NumberStyles.None, CultureInfo.InvariantCulture, out var last) && last < column
            ? string.Concat(tag.AsSpan(0, colon + 1), column.ToString(CultureInfo.InvariantCulture), tag.AsSpan(end))
            : tag;
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
