using System.Buffers;
using System.Buffers.Text;
using System.Text;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Writing;

namespace CastBook.Workbooks.Verifying;

/// <summary>What the rules look at in a sheet, gathered in one walk over its tags.</summary>
internal sealed class SheetFacts
{
    private readonly SheetEdits? edits;
    private readonly ArrayBufferWriter<byte> expected = new(256);
    private readonly HashSet<int> rowsToRead;
    private byte[] prefix = [];

    private SheetFacts(SheetPart sheet, SheetEdits? edits)
    {
        Sheet = sheet;
        this.edits = edits;
        rowsToRead = [.. edits?.Rows.Keys ?? []];
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

    /// <summary>The highest differential format used; -1 for none.</summary>
    public int HighestMark { get; private set; } = -1;

    /// <summary>Merged ranges.</summary>
    public List<CellRange> Merges { get; } = [];

    /// <summary>Cells that do not say what was written into them.</summary>
    public List<string> Unwritten { get; } = [];

    /// <summary>Reads a sheet.</summary>
    /// <param name="package">The book.</param>
    /// <param name="sheet">The sheet.</param>
    /// <param name="edits">What was written into it, which is read back on the way; null for a book that was not written.</param>
    public static SheetFacts Read(BookPackage package, SheetPart sheet, SheetEdits? edits = null)
    {
        var facts = new SheetFacts(sheet, edits);
        using var raw = package.OpenPart(sheet.PartName);
        using var stream = XmlEncoding.ToUtf8(raw);
        var scanner = new XmlScanner(stream);
        scanner.Next();
        facts.prefix = scanner.Name[..(scanner.Name.IndexOf((byte)':') + 1)].ToArray();
        while (scanner.Next() && scanner.Kind != TagKind.End)
        {
            var name = Encoding.UTF8.GetString(scanner.LocalName);
            facts.Elements.Add(name);
            if (name == "sheetData" && scanner.Kind == TagKind.Start)
            {
                facts.ReadRows(scanner);
            }
            else
            {
                facts.ReadElement(scanner);
            }

            scanner.Drop();
        }

        facts.Unwritten.AddRange(facts.rowsToRead.Order().SelectMany(row => edits!.Sorted(row).Select(e => CellRef.AddressOf(row, e.Column))));
        return facts;
    }

    private void ReadRows(XmlScanner scanner)
    {
        var row = 0;
        while (scanner.Next() && scanner.Kind != TagKind.End)
        {
            var number = TagAttributes.Number(scanner.Tag, "r"u8) ?? row + 1;
            if (number <= row)
            {
                Disorder.Add($"{Sheet.Name}: row {number} comes after row {row}.");
            }

            row = number;
            if (scanner.Kind == TagKind.Start)
            {
                ReadCells(scanner, row);
            }

            scanner.Drop();
        }
    }

    private void ReadCells(XmlScanner scanner, int row)
    {
        var column = 0;
        var written = rowsToRead.Remove(row) ? edits!.Sorted(row) : [];
        var at = 0;
        Span<char> address = stackalloc char[12];
        while (scanner.Next() && scanner.Kind != TagKind.End)
        {
            var next = column + 1;
            if (TagAttributes.TryGet(scanner.Tag, "r"u8, out var raw) && raw.Length <= address.Length)
            {
                var length = Encoding.UTF8.GetChars(raw, address);
                if (CellRef.TryParse(address[..length], out var itsRow, out next) && itsRow != row)
                {
                    Disorder.Add($"{Sheet.Name}: cell {address[..length]} stands in row {row}.");
                }
            }

            if (next <= column)
            {
                Disorder.Add($"{Sheet.Name}: cell {CellRef.AddressOf(row, next)} comes after {CellRef.AddressOf(row, column)}.");
            }

            column = next;
            HighestFormat = Math.Max(HighestFormat, TagAttributes.Number(scanner.Tag, "s"u8) ?? 0);
            while (at < written.Count && written[at].Column < column)
            {
                Unwritten.Add(CellRef.AddressOf(row, written[at++].Column));
            }

            scanner.DropBefore();
            var isOurs = at < written.Count && written[at].Column == column;
            var isShared = TagAttributes.TryGet(scanner.Tag, "t"u8, out var type) && type.SequenceEqual("s"u8);
            if (isShared && scanner.Kind == TagKind.Start)
            {
                ReadString(scanner);
            }
            else
            {
                scanner.SkipElement();
            }

            if (isOurs && !Says(scanner.Passed, written[at++].Value))
            {
                Unwritten.Add(CellRef.AddressOf(row, column));
            }

            scanner.Drop();
        }

        while (at < written.Count)
        {
            Unwritten.Add(CellRef.AddressOf(row, written[at++].Column));
        }
    }

    /// <summary>Whether a cell's element says what was to be written, its place and format apart.</summary>
    private bool Says(ReadOnlySpan<byte> element, CellValue value)
    {
        expected.ResetWrittenCount();
        value.WriteContent(expected, prefix);
        return element.EndsWith(expected.WrittenSpan);
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

    private void ReadElement(XmlScanner scanner)
    {
        if (scanner.Kind == TagKind.Empty)
        {
            return;
        }

        var depth = 1;
        while (depth > 0 && scanner.Next())
        {
            depth += scanner.Kind switch { TagKind.Start => 1, TagKind.End => -1, _ => 0 };
            if (scanner.Kind == TagKind.End)
            {
                continue;
            }

            if (scanner.LocalName.SequenceEqual("cfRule"u8))
            {
                HighestMark = Math.Max(HighestMark, TagAttributes.Number(scanner.Tag, "dxfId"u8) ?? -1);
            }
            else if (scanner.LocalName.SequenceEqual("mergeCell"u8)
                && TagAttributes.TryGet(scanner.Tag, "ref"u8, out var merge) && CellRange.TryParse(Encoding.UTF8.GetString(merge), out var range))
            {
                Merges.Add(range);
            }
        }
    }
}
