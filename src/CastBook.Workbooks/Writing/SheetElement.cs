using System.Text;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Xml;

namespace CastBook.Workbooks.Writing;

/// <summary>Looks up an element that stands directly in a sheet, before its cells.</summary>
internal static class SheetElement
{
    /// <summary>The element in UTF-8, null where the sheet has none; and the prefix of the part.</summary>
    /// <param name="package">The book.</param>
    /// <param name="part">The sheet's part.</param>
    /// <param name="localName">The element's name without prefix.</param>
    public static (byte[]? Element, string Prefix) Read(BookPackage package, string part, string localName)
    {
        using var raw = package.OpenPart(part);
        using var stream = XmlEncoding.ToUtf8(raw);
        var scanner = new XmlScanner(stream);
        scanner.Next();
        var prefix = Encoding.UTF8.GetString(scanner.Name[..(scanner.Name.IndexOf((byte)':') + 1)]);
        var wanted = Encoding.UTF8.GetBytes(localName);
        while (scanner.Next() && scanner.Kind != TagKind.End && !scanner.LocalName.SequenceEqual("sheetData"u8))
        {
            if (scanner.LocalName.SequenceEqual(wanted))
            {
                return (scanner.TakeElement(), prefix);
            }

            scanner.SkipElement();
            scanner.Drop();
        }

        return (null, prefix);
    }
}
