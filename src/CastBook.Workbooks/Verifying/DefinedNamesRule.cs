namespace CastBook.Workbooks.Verifying;

/// <summary>No name is defined twice in one scope, every scope is a sheet, and what a name stands for is whole.</summary>
internal sealed class DefinedNamesRule : PackageRule
{
    /// <inheritdoc/>
    public override IEnumerable<string> Faults(BookFacts book)
    {
        var names = book.Package.DefinedNames;
        foreach (var twice in names.GroupBy(n => (n.Name.ToUpperInvariant(), n.LocalSheet)).Where(g => g.Count() > 1))
        {
            yield return $"The name {twice.First().Name} is defined twice.";
        }

        foreach (var astray in names.Where(n => n.LocalSheet >= book.Package.AllSheetNames.Count))
        {
            yield return $"The name {astray.Name} belongs to a sheet that is not there.";
        }

        foreach (var broken in names.Where(n => !FormulaText.IsWhole(n.Text)))
        {
            yield return $"The name {broken.Name} stands for a formula that is not whole.";
        }
    }
}
