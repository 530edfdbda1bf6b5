using System.Globalization;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Grid;

namespace CastBook.Workbooks.Verifying;

/// <summary>A table is as wide as its columns, their names are unique and stand in the heading cells, and its filter lies inside.</summary>
internal sealed class TableRule : PackageRule
{
    /// <inheritdoc/>
    public override IEnumerable<string> Faults(BookFacts book)
    {
        var sheets = book.Sheets.Select(s => s.Sheet.PartName).ToHashSet(StringComparer.OrdinalIgnoreCase);
        return book.Tables.Where(t => sheets.Contains(t.Sheet.PartName)).SelectMany(t => FaultsOf(book, t));
    }

    private static IEnumerable<string> FaultsOf(BookFacts book, TableFacts table)
    {
        var (sheet, name, part) = (table.Sheet, table.Name, table.Part);
        if (table.Range is not { } range || part.Child(part.Root, "tableColumns") is not { } list)
        {
            yield return $"The table {name} has no range or no columns.";
            yield break;
        }

        var columns = part.Children(list);
        var width = range.LastColumn - range.FirstColumn + 1;
        if (columns.Count != width || part.Attribute(list, "count") is { } count && count != columns.Count.ToString(CultureInfo.InvariantCulture))
        {
            yield return $"The table {name} is {width} columns wide and lists {columns.Count}.";
        }

        var names = columns.Select(c => part.Attribute(c, "name") ?? "").ToList();
        if (names.Distinct(StringComparer.OrdinalIgnoreCase).Count() != names.Count
            || columns.Select(c => part.Attribute(c, "id")).Distinct().Count() != names.Count)
        {
            yield return $"The table {name} has two columns of one name or id.";
        }

        if (part.Child(part.Root, "autoFilter") is { } filter && CellRange.TryParse(part.Attribute(filter, "ref"), out var filtered)
            && (filtered.FirstRow != range.FirstRow || filtered.FirstColumn != range.FirstColumn || filtered.LastColumn != range.LastColumn))
        {
            yield return $"The filter of the table {name} does not lie on it.";
        }

        if (part.Attribute(part.Root, "headerRowCount") == "0")
        {
            yield break;
        }

        var grid = SheetReader.Read(book.Package, sheet, SharedStrings.Read(book.Package), range.FirstRow);
        for (var i = 0; i < Math.Min(width, names.Count); i++)
        {
            var heading = grid.Cell(range.FirstRow, range.FirstColumn + i);
            if (heading.Kind == CellKind.Text && WithoutBreaks(heading.Text ?? "") != WithoutBreaks(names[i].Replace("_x000a_", "\n", StringComparison.OrdinalIgnoreCase)))
            {
                yield return $"The table {name} calls its column {i + 1} \"{names[i]}\" and its heading cell says \"{heading.Text}\".";
            }
        }
    }

    private static string WithoutBreaks(string text) => text.Replace("\r", "", StringComparison.Ordinal).Replace("\n", " ", StringComparison.Ordinal).Trim();
}
