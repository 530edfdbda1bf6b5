using System.Globalization;

namespace CastBook.Workbooks.Verifying;

/// <summary>The formats a table uses are there, and each of its columns has a name.</summary>
internal sealed class TableFormatsRule : PackageRule
{
    private static readonly string[] Uses = ["headerRowDxfId", "dataDxfId", "totalsRowDxfId", "headerRowBorderDxfId", "tableBorderDxfId", "totalsRowBorderDxfId"];

    /// <inheritdoc/>
    public override IEnumerable<string> Faults(BookFacts book)
    {
        foreach (var table in book.Tables)
        {
            var part = table.Part;
            var columns = part.Child(part.Root, "tableColumns") is { } list ? part.Children(list) : [];
            if (columns.Any(c => string.IsNullOrEmpty(part.Attribute(c, "name"))))
            {
                yield return $"The table {table.Name} has a column without a name.";
            }

            if (columns.Append(part.Root).SelectMany(e => Uses.Select(u => part.Attribute(e, u)))
                .Any(u => int.TryParse(u, NumberStyles.None, CultureInfo.InvariantCulture, out var mark) && mark >= book.Marks))
            {
                yield return $"The table {table.Name} uses a format that is not there.";
            }
        }
    }
}
