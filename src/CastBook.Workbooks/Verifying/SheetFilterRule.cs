namespace CastBook.Workbooks.Verifying;

/// <summary>The hidden name of a sheet's filter covers the cells that the filter covers.</summary>
internal sealed class SheetFilterRule : PackageRule
{
    /// <inheritdoc/>
    public override IEnumerable<string> Faults(BookFacts book)
    {
        foreach (var sheet in book.Sheets)
        {
            var place = book.Package.AllSheetNames.ToList().IndexOf(sheet.Sheet.Name);
            var name = book.Package.DefinedNames.FirstOrDefault(n => n.LocalSheet == place && n.Name == "_xlnm._FilterDatabase");
            if (name is not null && sheet.Around.Filter is { } filter && Cells(name.Text) != Cells(filter))
            {
                yield return $"{sheet.Sheet.Name}: the filter and its hidden name cover different cells.";
            }
        }
    }

    private static string Cells(string range) => range[(range.LastIndexOf('!') + 1)..].Replace("$", "", StringComparison.Ordinal);
}
