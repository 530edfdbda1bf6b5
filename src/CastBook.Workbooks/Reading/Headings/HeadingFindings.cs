using CastBook.Planning.Findings;

namespace CastBook.Workbooks.Reading.Headings;

/// <summary>What the headings of a list come to.</summary>
/// <param name="Fields">The fields that can be read.</param>
/// <param name="Unread">The columns of fields that stand in the list but cannot be read.</param>
/// <param name="Findings">What is to be said.</param>
internal sealed record HeadingJudgement(
    IReadOnlyDictionary<string, FieldColumn> Fields, IReadOnlyDictionary<string, int> Unread, IReadOnlyList<Finding> Findings);

/// <summary>What the headings of the list leave to say: ties, doubtful units, and what was assumed.</summary>
internal static class HeadingFindings
{
    private static readonly HashSet<string> HeightWords = new(StringComparer.OrdinalIgnoreCase) { "height", "h", "höhe" };

    /// <summary>The fields that can be read, those that stand in the list but cannot, and what is to be said of the headings.</summary>
    public static HeadingJudgement Of(FoundList list)
    {
        var findings = new List<Finding>();
        var unread = new Dictionary<string, int>(StringComparer.Ordinal);
        var fields = list.Match.Fields.ToDictionary(StringComparer.Ordinal);
        foreach (var tie in list.Match.Ties)
        {
            var heading = list.Headings.First(h => h.Column == tie.First).Heading.Text;
            unread[tie.Field] = tie.First;
            findings.Add(Catalogue.HeadingAmbiguous.At(
                Subject.Column(tie.Field), CellRef.ColumnName(tie.First), CellRef.ColumnName(tie.Second), heading));
        }

        foreach (var column in list.Match.Fields.Values)
        {
            if (column.Unit is { IsGramOrGrain: true })
            {
                fields.Remove(column.Field);
                unread[column.Field] = column.Column;
                findings.Add(Catalogue.UnitAmbiguous.At(Subject.Column(column.Field), column.Heading.Text));
            }
            else if (column.Unit is { IsPlainOunce: true })
            {
                findings.Add(Catalogue.UnitPlainOunce.At(Subject.Column(column.Field), column.Heading.Text));
            }

            if (column.Field == PieceField.Length && HeightWords.Contains(column.Word.Text))
            {
                findings.Add(Catalogue.HeightIsLength.At(Subject.Column(column.Field), column.Heading.Text));
            }
        }

        findings.AddRange(Assumed(fields.Values));
        return new HeadingJudgement(fields, unread, findings);
    }

    // One finding for each unit, not one for each column.
    private static IEnumerable<Finding> Assumed(IEnumerable<FieldColumn> columns)
    {
        var without = columns
            .Where(c => c.Unit is null)
            .Select(c => (Column: c, Dimension: HeadingWords.Piece.First(f => f.Field == c.Field).Dimension))
            .Where(c => c.Dimension != Dimension.None)
            .GroupBy(c => c.Dimension);
        foreach (var group in without)
        {
            var columnsOfUnit = group.Select(c => c.Column).OrderBy(c => c.Column).ToList();
            var names = string.Join(", ", columnsOfUnit.Select(c => $"\"{c.Heading.Text}\""));
            var (unit, words) = Named(group.Key);
            yield return Catalogue.UnitAssumed.At(
                [.. columnsOfUnit.Select(c => Subject.Column(c.Field))], names, words, $"{columnsOfUnit[0].Heading.Text} ({unit})");
        }
    }

    private static (string Unit, string Words) Named(Dimension dimension) => dimension switch
    {
        Dimension.Mass => ("g", "grams"),
        Dimension.Length => ("mm", "millimetres"),
        Dimension.Volume => ("ml", "millilitres"),
        Dimension.Temperature => ("°C", "degrees Celsius"),
        _ => ("min", "minutes"),
    };
}
