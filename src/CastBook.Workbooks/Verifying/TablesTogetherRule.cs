namespace CastBook.Workbooks.Verifying;

/// <summary>No two tables of a book have one name or id, none has the name of a formula, and none lies on another.</summary>
internal sealed class TablesTogetherRule : PackageRule
{
    /// <inheritdoc/>
    public override IEnumerable<string> Faults(BookFacts book)
    {
        var names = book.Package.DefinedNames.Where(n => n.LocalSheet is null).Select(n => n.Name).ToHashSet(StringComparer.OrdinalIgnoreCase);
        var ids = new HashSet<string>(StringComparer.Ordinal);
        foreach (var table in book.Tables)
        {
            if (!names.Add(table.Name))
            {
                yield return $"The table {table.Name} has the name of something else.";
            }

            if (!ids.Add(table.Part.Attribute(table.Part.Root, "id") ?? ""))
            {
                yield return $"The table {table.Name} has the id of another table.";
            }
        }

        for (var i = 0; i < book.Tables.Count; i++)
        {
            foreach (var other in book.Tables.Skip(i + 1).Where(t => t.Sheet == book.Tables[i].Sheet && Overlap(t, book.Tables[i])))
            {
                yield return $"The tables {book.Tables[i].Name} and {other.Name} overlap.";
            }
        }
    }

    private static bool Overlap(TableFacts one, TableFacts other) => one.Range is { } a && other.Range is { } b
        && a.FirstRow <= b.LastRow && b.FirstRow <= a.LastRow && a.FirstColumn <= b.LastColumn && b.FirstColumn <= a.LastColumn;
}
