using System.Globalization;
using System.Text;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Words;
using CastBook.Workbooks.Xml;

namespace CastBook.Workbooks.Writing;

/// <summary>Gives new columns a width in a sheet's <c>cols</c>, splitting a range that already covers them.</summary>
internal static class ColumnWidths
{
    private const string RecordPrefix = "cols:";

    /// <summary>The <c>cols</c> element with the new columns in it.</summary>
    /// <param name="element">The element as it is.</param>
    /// <param name="widths">Widths in characters, by column.</param>
    public static byte[] Change(byte[] element, IReadOnlyDictionary<int, double> widths)
    {
        var part = new XmlPart(element);
        var xml = new StringBuilder();
        foreach (var col in part.Children(part.Root))
        {
            var (first, last) = RangeOf(part, col);
            var ours = widths.Keys.Where(c => c >= first && c <= last).Order().ToList();
            if (ours.Count == 0)
            {
                continue;
            }

            var tag = part.Text(col);
            foreach (var column in ours)
            {
                xml.Append(column > first ? Span(tag, first, column - 1) : "").Append(part.Own(New(column, widths[column])));
                first = column + 1;
            }

            part.Replace(col, xml.Append(first <= last ? Span(tag, first, last) : "").ToString());
            xml.Clear();
        }

        var covered = part.Children(part.Root).Select(c => RangeOf(part, c)).SelectMany(r => Enumerable.Range(r.First, r.Last - r.First + 1)).ToHashSet();
        PlaceUncovered(part, widths.Where(w => !covered.Contains(w.Key)).OrderBy(w => w.Key));
        return part.ToBytes();
    }

    /// <summary>A <c>cols</c> element for a sheet that has none, <c>~</c> where the prefix belongs.</summary>
    /// <param name="widths">Widths in characters, by column.</param>
    public static string Whole(IReadOnlyDictionary<int, double> widths) =>
        "<~cols>" + string.Concat(widths.OrderBy(w => w.Key).Select(w => New(w.Key, w.Value))) + "</~cols>";

    /// <summary>What the element is called in the record of what was written.</summary>
    /// <param name="ownName">Hidden name of the first of the new columns.</param>
    public static string RecordKey(string ownName) => $"{RecordPrefix}{ownName}";

    /// <summary>The <c>cols</c> element without columns of ours; null where nothing is left of it.</summary>
    /// <param name="element">The element as it stands.</param>
    /// <param name="columns">Our columns.</param>
    /// <param name="record">What was written; the element as it was before is put back where nobody changed it since.</param>
    /// <param name="ownNames">Hidden names of our columns.</param>
    public static byte[]? Without(byte[] element, IReadOnlyCollection<int> columns, FillRecord record, IEnumerable<string> ownNames)
    {
        var before = ownNames.Select(name => record.Before(RecordKey(name), element)).FirstOrDefault(b => b is not null);
        return before is null ? Cut(element, columns) : before.Length == 0 ? null : before;
    }

    private static byte[]? Cut(byte[] element, IReadOnlyCollection<int> columns)
    {
        var part = new XmlPart(element);
        var left = 0;
        foreach (var col in part.Children(part.Root))
        {
            var (first, last) = RangeOf(part, col);
            var kept = Runs(first, last, columns);
            left += kept.Count;
            if (kept is not [var whole] || whole != (first, last))
            {
                var tag = part.Text(col);
                part.Replace(col, string.Concat(kept.Select(run => Span(tag, run.First, run.Last))));
            }
        }

        return left == 0 ? null : part.ToBytes();
    }

    private static (int First, int Last) RangeOf(XmlPart part, XmlElement col)
    {
        var (first, last) = (part.Whole(col, "min", 1), Math.Min(part.Whole(col, "max", 1), CellRef.MaxColumn));
        return first >= 1 && first <= last ? (first, last) : throw new InvalidDataException(RefusalWords.ColumnsOutOfOrder(first, last));
    }

    /// <summary>The stretches of a range of columns that are not ours.</summary>
    private static List<(int First, int Last)> Runs(int first, int last, IReadOnlyCollection<int> ours)
    {
        var runs = new List<(int, int)>();
        foreach (var column in ours.Where(c => c >= first && c <= last).Order())
        {
            if (column > first)
            {
                runs.Add((first, column - 1));
            }

            first = column + 1;
        }

        if (first <= last)
        {
            runs.Add((first, last));
        }

        return runs;
    }

    private static void PlaceUncovered(XmlPart part, IEnumerable<KeyValuePair<int, double>> widths)
    {
        foreach (var (column, width) in widths)
        {
            var xml = part.Own(New(column, width));
            var next = part.Children(part.Root)
                .Where(c => RangeOf(part, c).First > column)
                .Select(c => (XmlElement?)c).FirstOrDefault();
            if (next is { } follower)
            {
                part.InsertBefore(follower, xml);
            }
            else
            {
                part.Append(part.Root, xml);
            }
        }
    }

    private static string New(int column, double width) => string.Create(
        CultureInfo.InvariantCulture, $"""<~col min="{column}" max="{column}" width="{width}" customWidth="1"/>""");

    private static string Span(string tag, int first, int last)
    {
        var part = new XmlPart(Encoding.UTF8.GetBytes(tag));
        part.SetAttribute(part.Root, "min", first.ToString(CultureInfo.InvariantCulture));
        part.SetAttribute(part.Root, "max", last.ToString(CultureInfo.InvariantCulture));
        return Encoding.UTF8.GetString(part.ToBytes());
    }
}
