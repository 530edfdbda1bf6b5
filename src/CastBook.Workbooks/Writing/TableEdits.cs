using System.Globalization;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Xml;

namespace CastBook.Workbooks.Writing;

/// <summary>Widens a table by columns at its right: range, filter and column list together, or an office program drops the table.</summary>
internal static class TableEdits
{
    /// <summary>The table part with the columns appended.</summary>
    /// <param name="content">The part as it is.</param>
    /// <param name="table">The table.</param>
    /// <param name="headings">The new columns' headings, unique in the table.</param>
    public static byte[] Widen(byte[] content, SheetTable table, IReadOnlyList<string> headings)
    {
        var part = new XmlPart(content);
        var range = table.Range with { LastColumn = table.Range.LastColumn + headings.Count };
        part.SetAttribute(part.Root, "ref", range.ToString());
        if (part.Child(part.Root, "autoFilter") is { } filter)
        {
            var filtered = table.HasTotalsRow ? range with { LastRow = range.LastRow - 1 } : range;
            part.SetAttribute(filter, "ref", filtered.ToString());
        }

        if (part.Child(part.Root, "tableColumns") is { } columns)
        {
            var known = part.Children(columns);
            var id = known.Select(c => part.Whole(c, "id", 0)).DefaultIfEmpty().Max();
            part.SetAttribute(columns, "count", (known.Count + headings.Count).ToString(CultureInfo.InvariantCulture));
            part.Append(columns, string.Concat(headings.Select(heading =>
                part.Own($"""<~tableColumn id="{(++id).ToString(CultureInfo.InvariantCulture)}" name="{XmlText.EscapeAttribute(heading)}"/>"""))));
        }

        return part.ToBytes();
    }

    /// <summary>The table part over another range of as many columns, some of them under other headings.</summary>
    /// <param name="content">The part as it is; without a row of totals.</param>
    /// <param name="range">The range.</param>
    /// <param name="headings">The headings, by the place of their column in the table, from 0.</param>
    public static byte[] Reach(byte[] content, CellRange range, IReadOnlyDictionary<int, string> headings)
    {
        var part = new XmlPart(content);
        part.SetAttribute(part.Root, "ref", range.ToString());
        if (part.Child(part.Root, "autoFilter") is { } filter)
        {
            part.SetAttribute(filter, "ref", range.ToString());
        }

        if (part.Child(part.Root, "tableColumns") is { } columns)
        {
            var known = part.Children(columns);
            foreach (var (place, heading) in headings.Where(h => h.Key < known.Count))
            {
                part.SetAttribute(known[place], "name", XmlText.EscapeAttribute(heading));
            }
        }

        return part.ToBytes();
    }

    /// <summary>The table part with a column under another heading.</summary>
    /// <param name="content">The part as it is.</param>
    /// <param name="place">The column's place in the table, from 0.</param>
    /// <param name="heading">The heading.</param>
    public static byte[] Rename(byte[] content, int place, string heading)
    {
        var part = new XmlPart(content);
        if (part.Child(part.Root, "tableColumns") is { } columns && part.Children(columns) is var known && place >= 0 && place < known.Count)
        {
            part.SetAttribute(known[place], "name", XmlText.EscapeAttribute(heading));
        }

        return part.ToBytes();
    }

    /// <summary>The table part without its last columns.</summary>
    /// <param name="content">The part as it is.</param>
    /// <param name="table">The table.</param>
    /// <param name="count">How many columns go; fewer than it has.</param>
    public static byte[] Narrow(byte[] content, SheetTable table, int count)
    {
        var part = new XmlPart(content);
        var range = table.Range with { LastColumn = table.Range.LastColumn - count };
        part.SetAttribute(part.Root, "ref", range.ToString());
        if (part.Child(part.Root, "autoFilter") is { } filter)
        {
            FilterEdits.Narrow(part, filter, table.HasTotalsRow ? range with { LastRow = range.LastRow - 1 } : range);
        }

        if (part.Child(part.Root, "sortState") is { } sort && FilterEdits.LooksBeyond(part, sort, range.LastColumn))
        {
            part.Replace(sort, "");
        }

        if (part.Child(part.Root, "tableColumns") is { } columns)
        {
            var known = part.Children(columns);
            part.SetAttribute(columns, "count", (known.Count - count).ToString(CultureInfo.InvariantCulture));
            foreach (var column in known.TakeLast(count))
            {
                part.Replace(column, "");
            }
        }

        return part.ToBytes();
    }
}
