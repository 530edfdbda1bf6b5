using CastBook.Planning.Shops;

namespace CastBook.Workbooks.Reading.Headings;

/// <summary>A field's column in a heading row.</summary>
/// <param name="Field">The field.</param>
/// <param name="Column">The column, from 1.</param>
/// <param name="Heading">The heading.</param>
/// <param name="Word">The words it was known by.</param>
/// <param name="Unit">The unit it names; missing where none is.</param>
internal sealed record FieldColumn(string Field, int Column, Heading Heading, HeadingWord Word, CellUnit? Unit);

/// <summary>A field that two columns claim with the same words.</summary>
/// <param name="Field">The field.</param>
/// <param name="First">The first of the two columns.</param>
/// <param name="Second">The second.</param>
internal sealed record FieldTie(string Field, int First, int Second);

/// <summary>Which field each column of a heading row is.</summary>
internal sealed class HeadingMatch
{
    private readonly Dictionary<string, FieldColumn> byField = new(StringComparer.Ordinal);

    /// <summary>The fields found, each with its column.</summary>
    public IReadOnlyDictionary<string, FieldColumn> Fields => byField;

    /// <summary>The fields that cannot be settled.</summary>
    public List<FieldTie> Ties { get; } = [];

    /// <summary>Settles which column is which.</summary>
    /// <param name="headings">The headings by column, in column order.</param>
    /// <param name="fields">The fields to look for; earlier ones choose first.</param>
    /// <param name="own">More words of the shop's own, which come before all others.</param>
    public static HeadingMatch Of(
        IReadOnlyList<(int Column, Heading Heading)> headings,
        IReadOnlyList<FieldWords> fields,
        IReadOnlyDictionary<string, IReadOnlyList<string>> own)
    {
        var match = new HeadingMatch();
        var taken = new HashSet<int>();
        foreach (var field in fields)
        {
            var extra = own.TryGetValue(field.Field, out var words)
                ? words.Select(w => new HeadingWord(Heading.Parse(w).AllWords, Meaning: WeightMeaning.Pattern))
                : [];
            match.Settle(field, extra.Concat(field.Words), headings, taken);
        }

        return match;
    }

    /// <summary>Gives columns whose heading names no unit the unit that a row below names.</summary>
    /// <param name="units">The units by column.</param>
    /// <param name="fields">What the fields measure; a unit of something else is not taken.</param>
    public void TakeUnits(IReadOnlyDictionary<int, CellUnit> units, IReadOnlyList<FieldWords> fields)
    {
        foreach (var column in byField.Values.ToList())
        {
            if (column.Unit is null && units.TryGetValue(column.Column, out var unit) && fields.First(f => f.Field == column.Field).Dimension == unit.Dimension)
            {
                byField[column.Field] = column with { Unit = unit };
            }
        }
    }

    private void Settle(FieldWords field, IEnumerable<HeadingWord> words, IReadOnlyList<(int Column, Heading Heading)> headings, HashSet<int> taken)
    {
        foreach (var word in words)
        {
            FieldColumn? first = null;
            foreach (var (column, heading) in headings)
            {
                if (taken.Contains(column) || !heading.Says(word.Text, out var unit) || !Fits(field, word, unit))
                {
                    continue;
                }

                if (first is not null)
                {
                    Ties.Add(new FieldTie(field.Field, first.Column, column));
                    return;
                }

                first = new FieldColumn(field.Field, column, heading, word, unit);
            }

            if (first is not null)
            {
                byField[field.Field] = first;
                taken.Add(first.Column);
                return;
            }
        }
    }

    private static bool Fits(FieldWords field, HeadingWord word, CellUnit? unit) =>
        unit is null ? !word.NeedsUnit : unit.Dimension == field.Dimension;
}
