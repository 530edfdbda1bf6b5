using System.Globalization;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Xml;

namespace CastBook.Workbooks.Writing;

/// <summary>Narrows a filter to fewer columns: what it says of the others goes, or an office program repairs the file.</summary>
internal static class FilterEdits
{
    /// <summary>Narrows the filter of a part.</summary>
    /// <param name="part">The part.</param>
    /// <param name="filter">The filter's element.</param>
    /// <param name="range">Its new range.</param>
    public static void Narrow(XmlPart part, XmlElement filter, CellRange range)
    {
        part.SetAttribute(filter, "ref", range.ToString());
        var width = range.LastColumn - range.FirstColumn + 1;
        foreach (var child in part.Children(filter))
        {
            var isBeyond = child.LocalName == "filterColumn"
                ? int.TryParse(part.Attribute(child, "colId"), NumberStyles.None, CultureInfo.InvariantCulture, out var column) && column >= width
                : child.LocalName == "sortState" && LooksBeyond(part, child, range.LastColumn);
            if (isBeyond)
            {
                part.Replace(child, "");
            }
        }
    }

    /// <summary>Whether a sort, or one of its conditions, reaches beyond a column.</summary>
    /// <param name="part">The part.</param>
    /// <param name="sort">The sort's element.</param>
    /// <param name="lastColumn">The column.</param>
    public static bool LooksBeyond(XmlPart part, XmlElement sort, int lastColumn) => part.Children(sort).Append(sort)
        .Any(e => CellRange.TryParse(part.Attribute(e, "ref"), out var range) && range.LastColumn > lastColumn);
}
