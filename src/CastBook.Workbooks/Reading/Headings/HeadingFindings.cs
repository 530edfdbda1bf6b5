using CastBook.Planning.Findings;
using CastBook.Workbooks.Words;

namespace CastBook.Workbooks.Reading.Headings;

/// <summary>What the headings of a list come to.</summary>
/// <param name="Fields">The fields that can be read.</param>
/// <param name="Unread">The columns of fields that stand in the list but cannot be read.</param>
/// <param name="Findings">What is to be said.</param>
internal sealed record HeadingJudgement(
    IReadOnlyDictionary<string, FieldColumn> Fields, IReadOnlyDictionary<string, int> Unread, IReadOnlyList<Finding> Findings);

/// <summary>What the headings of the list leave to say: ties, doubtful units, and what was assumed.</summary>
internal sealed class HeadingFindings
{
    private const string English = "English";

    private readonly List<Finding> findings = [];
    private readonly Dictionary<string, int> unread = new(StringComparer.Ordinal);
    private readonly Dictionary<string, FieldColumn> fields = new(StringComparer.Ordinal);

    private HeadingFindings()
    {
    }

    /// <summary>The fields that can be read, those that stand in the list but cannot, and what is to be said of the headings.</summary>
    public static HeadingJudgement Of(ListHeadings list)
    {
        var judged = new HeadingFindings();
        foreach (var tie in list.Match.Ties)
        {
            judged.Say(tie, list.Texts);
        }

        foreach (var unclear in list.Unclear)
        {
            judged.Say(unclear, list.Match);
        }

        foreach (var column in list.Match.Fields.Values)
        {
            judged.Take(column);
        }

        judged.SayAssumed();
        return new HeadingJudgement(judged.fields, judged.unread, judged.findings);
    }

    private void Say(FieldTie tie, IReadOnlyList<(int Column, Heading Heading)> texts)
    {
        string TextOf(int column) => texts.First(t => t.Column == column).Heading.Text;
        var (first, second) = (TextOf(tie.First), TextOf(tie.Second));
        var (letterOfFirst, letterOfSecond) = (CellRef.ColumnName(tie.First), CellRef.ColumnName(tie.Second));
        unread[tie.Field] = tie.First;
        findings.Add(string.Equals(first, second, StringComparison.OrdinalIgnoreCase)
            ? Catalogue.HeadingTwice.At(Subject.Column(tie.Field), letterOfFirst, letterOfSecond, first)
            : Catalogue.HeadingAmbiguous.At(
                Subject.Column(tie.Field), letterOfFirst, first, letterOfSecond, second, FieldWords.Of(tie.Field), tie.Field, first.Replace("\"", "\\\"", StringComparison.Ordinal)));
    }

    private void Say(UnclearHeading unclear, HeadingMatch match)
    {
        if (match.Fields.ContainsKey(unclear.Field))
        {
            return; // another column is that field, and this one is of the group
        }

        unread[unclear.Field] = unclear.Column;
        findings.Add(Catalogue.HeadingGroupUnclear.At(
            Subject.Column(unclear.Field), CellRef.ColumnName(unclear.Column), unclear.Text, unclear.Group, $"{unclear.Group} {unclear.Text}"));
    }

    private void Take(FieldColumn column)
    {
        var unit = column.Unit;
        if (unit is { IsGramOrGrain: true })
        {
            if (column.Word.Language is null or English)
            {
                unread[column.Field] = column.Column;
                findings.Add(Catalogue.UnitAmbiguous.At(Subject.Column(column.Field), column.Heading.Text));
                return;
            }

            // Where people do not speak English nobody weighs in grains, and gr is how many of them write grams.
            unit = CellUnit.Gram;
            findings.Add(Catalogue.UnitGrIsGram.At(Subject.Column(column.Field), column.Heading.Text));
        }
        else if (unit is { IsPlainOunce: true })
        {
            findings.Add(Catalogue.UnitPlainOunce.At(Subject.Column(column.Field), column.Heading.Text));
        }

        if (column.Field == PieceField.Length && column.Word.IsHeight)
        {
            findings.Add(Catalogue.HeightIsLength.At(Subject.Column(column.Field), column.Heading.Text));
        }

        fields[column.Field] = column with { Unit = unit };
    }

    // One finding for each unit, not one for each column.
    private void SayAssumed()
    {
        var without = fields.Values
            .Where(c => c.Unit is null && c.Field != PieceField.Sizes)
            .Select(c => (Column: c, Dimension: HeadingWords.DimensionOf(c.Field)))
            .Where(c => c.Dimension != Dimension.None)
            .GroupBy(c => c.Dimension);
        foreach (var group in without)
        {
            var columnsOfUnit = group.Select(c => c.Column).OrderBy(c => c.Column).ToList();
            var names = string.Join(", ", columnsOfUnit.Select(c => $"\"{c.Heading.Text}\""));
            var (unit, words) = Named(group.Key);
            findings.Add(Catalogue.UnitAssumed.At(
                [.. columnsOfUnit.Select(c => Subject.Column(c.Field))], names, words, $"{columnsOfUnit[0].Heading.Text} ({unit})"));
        }
    }

    private static (string Unit, string Words) Named(Dimension dimension) => dimension switch
    {
        Dimension.Mass => ("g", CellNameWords.Grams),
        Dimension.Length => ("mm", CellNameWords.Millimetres),
        Dimension.Volume => ("ml", CellNameWords.Millilitres),
        Dimension.Temperature => ("°C", CellNameWords.DegreesCelsius),
        _ => ("min", CellNameWords.Minutes),
    };
}
