using System.Globalization;
using System.Text;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Writing;

namespace CastBook.Workbooks.Verifying;

/// <summary>Reads back the cells that were written, by their bytes.</summary>
internal static class EditsReread
{
    /// <summary>The cells that do not say what was written, a sentence each.</summary>
    /// <param name="package">The book as written.</param>
    /// <param name="part">The sheet's part.</param>
    /// <param name="edits">What was written into it.</param>
    public static IEnumerable<string> Faults(BookPackage package, string part, SheetEdits edits)
    {
        var missing = edits.Rows.ToDictionary(r => r.Key, r => r.Value.ToDictionary(c => c.Column, c => c.Value));
        using var raw = package.OpenPart(part);
        using var stream = XmlEncoding.ToUtf8(raw);
        var scanner = new XmlScanner(stream);
        var row = 0;
        while (scanner.Next())
        {
            if (scanner.Kind != TagKind.End && scanner.LocalName.SequenceEqual("row"u8))
            {
                row = TagAttributes.Number(scanner.Tag, "r"u8) ?? row + 1;
                if (scanner.Kind == TagKind.Start && missing.TryGetValue(row, out var cells))
                {
                    ReadRow(scanner, row, cells);
                    if (cells.Count == 0)
                    {
                        missing.Remove(row);
                    }
                }
            }

            scanner.Drop();
        }

        return missing.SelectMany(r => r.Value.Keys.Select(c => $"{part}: cell {Reading.CellRef.AddressOf(r.Key, c)} was not written."));
    }

    private static void ReadRow(XmlScanner scanner, int row, Dictionary<int, CellValue> cells)
    {
        scanner.Drop();
        while (scanner.Next() && scanner.Kind != TagKind.End)
        {
            var isOurs = TagAttributes.TryGet(scanner.Tag, "r"u8, out var address)
                & Reading.CellRef.TryParse(Encoding.UTF8.GetString(address), out _, out var column)
                && cells.ContainsKey(column);
            if (!isOurs)
            {
                scanner.SkipElement();
                scanner.Drop();
                continue;
            }

            var element = Encoding.UTF8.GetString(scanner.TakeElement());
            var expected = cells[column];
            if (Says(element, expected, row, column))
            {
                cells.Remove(column);
            }
        }
    }

    /// <summary>Whether the cell's content, its format apart, is what the value writes.</summary>
    private static bool Says(string element, CellValue value, int row, int column)
    {
        var bare = value.ToXml(row, column, style: null, Prefix(element));
        var content = bare.IndexOf('>', StringComparison.Ordinal);
        return element.EndsWith(value.IsEmpty ? "/>" : bare[content..], StringComparison.Ordinal);
    }

    private static string Prefix(string element)
    {
        var name = element[1..element.AsSpan().IndexOfAny(' ', '>', '/')];
        return name[..(name.IndexOf(':', StringComparison.Ordinal) + 1)].ToString(CultureInfo.InvariantCulture);
    }
}
