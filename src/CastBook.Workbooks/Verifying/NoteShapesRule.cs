using System.Globalization;
using System.Text;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Xml;

namespace CastBook.Workbooks.Verifying;

/// <summary>Every note has its shape, and no two shapes of a sheet have one id.</summary>
internal sealed class NoteShapesRule : PackageRule
{
    /// <inheritdoc/>
    public override IEnumerable<string> Faults(BookFacts book)
    {
        foreach (var sheet in book.Sheets.Select(s => s.Sheet))
        {
            var parts = book.Package.Relationships(sheet.PartName).Where(r => !r.IsExternal && book.Package.Has(r.Target)).ToList();
            if (parts.FirstOrDefault(r => r.Is("vmlDrawing")) is not { } drawing || parts.FirstOrDefault(r => r.Is("comments")) is not { } notes)
            {
                continue;
            }

            var shaped = new HashSet<string>(StringComparer.Ordinal);
            if (!ReadShapes(book.Package.Read(drawing.Target), shaped))
            {
                yield return $"{sheet.Name}: two shapes of notes have one id.";
            }

            var part = new XmlPart(book.Package.Read(notes.Target));
            foreach (var note in part.Child(part.Root, "commentList") is { } list ? part.Children(list) : [])
            {
                if (part.Attribute(note, "ref") is { } cell && !shaped.Contains(cell))
                {
                    yield return $"{sheet.Name}: the note at {cell} has no shape.";
                }
            }
        }
    }

    // Adds the cells whose notes have shapes, and answers whether no id is there twice.
    private static bool ReadShapes(byte[] drawing, HashSet<string> shaped)
    {
        var (scanner, ids, unique, row) = (new XmlScanner(drawing), new HashSet<string>(StringComparer.Ordinal), true, 0);
        while (scanner.Next())
        {
            if (scanner.Kind != TagKind.Start)
            {
                continue;
            }

            if (scanner.LocalName.SequenceEqual("shape"u8) && TagAttributes.TryGet(scanner.Tag, "id"u8, out var id))
            {
                unique &= ids.Add(Encoding.UTF8.GetString(id));
            }
            else if (scanner.LocalName.SequenceEqual("Row"u8))
            {
                row = Number(scanner.ReadText());
            }
            else if (scanner.LocalName.SequenceEqual("Column"u8))
            {
                shaped.Add(CellRef.AddressOf(row + 1, Number(scanner.ReadText()) + 1));
            }
        }

        return unique;
    }

    private static int Number(ReadOnlySpan<byte> text) =>
        int.TryParse(text, NumberStyles.AllowLeadingWhite | NumberStyles.AllowTrailingWhite, CultureInfo.InvariantCulture, out var number) ? number : 0;
}
