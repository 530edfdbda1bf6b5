using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Xml;

namespace CastBook.Workbooks.Writing;

/// <summary>Elements of a sheet that name the range they are about.</summary>
internal static class SheetRanges
{
    /// <summary>The element with another range.</summary>
    /// <param name="element">The element.</param>
    /// <param name="range">Its new range.</param>
    public static byte[] WithRange(byte[] element, CellRange range)
    {
        var part = new XmlPart(element);
        part.SetAttribute(part.Root, "ref", range.ToString());
        return part.ToBytes();
    }

    /// <summary>The element with another last column.</summary>
    /// <param name="element">The element.</param>
    /// <param name="column">The new last column, from its range.</param>
    public static byte[] WithLastColumn(byte[] element, Func<CellRange, int> column)
    {
        var part = new XmlPart(element);
        return CellRange.TryParse(part.Attribute(part.Root, "ref"), out var range)
            ? WithRange(element, range with { LastColumn = column(range) })
            : element;
    }

    /// <summary>A filter narrowed to a range.</summary>
    /// <param name="element">The filter.</param>
    /// <param name="range">Its new range.</param>
    public static byte[] WithFilter(byte[] element, CellRange range)
    {
        var part = new XmlPart(element);
        FilterEdits.Narrow(part, part.Root, range);
        return part.ToBytes();
    }
}
