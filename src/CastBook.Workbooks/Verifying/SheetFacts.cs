using System.Buffers;
using System.Text;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Writing;
using CastBook.Workbooks.Xml;

namespace CastBook.Workbooks.Verifying;

/// <summary>What the rules look at in a sheet, gathered in one walk over its tags.</summary>
internal sealed partial class SheetFacts
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
}
