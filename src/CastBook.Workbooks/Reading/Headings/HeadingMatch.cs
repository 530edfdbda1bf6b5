using CastBook.Planning.Findings;
using CastBook.Planning.Shops;

namespace CastBook.Workbooks.Reading.Headings;

/// <summary>A field's column in a heading row.</summary>
/// <param name="Field">The field.</param>
/// <param name="Column">The column, from 1.</param>
/// <param name="Heading">The heading.</param>
/// <param name="Word">The words it was known by.</param>
/// <param name="Unit">The unit it names; missing where none is.</param>
internal sealed record FieldColumn(string Field, int Column, Heading Heading, HeadingWord Word, CellUnit? Unit);

/// <summary>A field that two columns claim equally.</summary>
/// <param name="Field">The field.</param>
/// <param name="First">The first of the two columns.</param>
/// <param name="Second">The second.</param>
internal sealed record FieldTie(string Field, int First, int Second);

/// <summary>Which field each column of a heading row is.</summary>
internal sealed class HeadingMatch
{
    private readonly Dictionary<string, FieldColumn> byField = new(StringComparer.Ordinal);
    private readonly IReadOnlyList<(int Column, Heading Heading)> headings;
    private readonly List<HeadingSense>[] senses;
    private readonly bool[] taken;

    private HeadingMatch(IReadOnlyList<(int Column, Heading Heading)> headings, WordIndex index)
    {
        this.headings = headings;
        senses = new List<HeadingSense>[headings.Count];
        taken = new bool[headings.Count];
        for (var at = 0; at < senses.Length; at++)
        {
            senses[at] = headings[at].Heading.Senses(index);
        }
    }

    /// <summary>The fields found, each with its column.</summary>
    public IReadOnlyDictionary<string, FieldColumn> Fields => byField;

    /// <summary>The fields that cannot be settled.</summary>
    public List<FieldTie> Ties { get; } = [];

    /// <summary>Settles which column is which.</summary>
    /// <param name="headings">The headings by column, in column order.</param>
    /// <param name="index">The fields to look for; earlier ones choose first.</param>
    /// <param name="own">More words of the shop's own, which come before all others.</param>
    public static HeadingMatch Of(
        IReadOnlyList<(int Column, Heading Heading)> headings, WordIndex index, IReadOnlyDictionary<string, IReadOnlyList<string>> own)
    {
        var match = new HeadingMatch(headings, index);
        if (own.Count > 0)
        {
            match.SettleOwn(index, own);
        }

        match.KeepLanguage();
        match.PartPersons(index);
        for (var at = 0; at < index.Fields.Count; at++)
        {
            match.Settle(index.Fields[at].Field, at);
        }

        return match;
    }

    /// <summary>Gives columns whose heading names no unit the unit that a row below names.</summary>
    /// <param name="units">The units by column.</param>
    /// <param name="index">What the fields measure; a unit of something else is not taken.</param>
    public void TakeUnits(IReadOnlyDictionary<int, CellUnit> units, WordIndex index)
    {
        foreach (var field in index.Fields)
        {
            if (byField.TryGetValue(field.Field, out var column)
                && column.Unit is null && units.TryGetValue(column.Column, out var unit) && field.Dimension == unit.Dimension)
            {
                byField[field.Field] = column with { Unit = unit };
            }
        }
    }

    // The heading as a whole is surer than its words: that is how a shop names one of two columns that differ in their unit alone.
    private void SettleOwn(WordIndex index, IReadOnlyDictionary<string, IReadOnlyList<string>> own)
    {
        for (var fieldAt = 0; fieldAt < index.Fields.Count; fieldAt++)
        {
            if (!own.TryGetValue(index.Fields[fieldAt].Field, out var words))
            {
                continue;
            }

            var rank = 0;
            foreach (var word in words)
            {
                rank += 2;
                var known = new KnownWord(fieldAt, new HeadingWord(word) { Meaning = WeightMeaning.Pattern }, rank);
                for (var at = 0; at < headings.Count; at++)
                {
                    AddOwn(at, known, index.Fields[fieldAt].Dimension);
                }
            }

            Settle(index.Fields[fieldAt].Field, fieldAt, rank);
        }
    }

    private void AddOwn(int at, KnownWord known, Dimension dimension)
    {
        var heading = headings[at].Heading;
        var asWhole = WordKey.Of(heading.Text) == WordKey.Of(known.Word.Text);
        var own = Heading.Parse(known.Word.Text);
        if ((heading.SaysAs(own, out var unit) || asWhole) && (unit is null || unit.Dimension == dimension))
        {
            senses[at].Add(new HeadingSense(known, asWhole ? known.Rank - 1 : known.Rank, unit));
        }
    }

    // French "nombre" counts, Spanish "nombre" names: the language most headings are in decides.
    private void KeepLanguage()
    {
        var counts = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var column in senses)
        {
            var seen = new HashSet<string>(StringComparer.Ordinal);
            foreach (var sense in column)
            {
                if (sense.Known.Word.Language is { } language && seen.Add(language))
                {
                    counts[language] = counts.GetValueOrDefault(language) + 1;
                }
            }
        }

        var most = 0;
        foreach (var count in counts.Values)
        {
            most = Math.Max(most, count);
        }

        bool IsOfMost(HeadingSense sense) => sense.Known.Word.Language is not { } language || counts[language] == most;
        foreach (var column in senses)
        {
            if (column.Exists(IsOfMost))
            {
                column.RemoveAll(s => !IsOfMost(s));
            }
        }
    }

    // "Name, What, Metal" is a class: who beside what. Where another column is the customer's, the name is the piece's.
    private void PartPersons(WordIndex index)
    {
        var customer = -1;
        for (var at = 0; at < index.Fields.Count; at++)
        {
            customer = index.Fields[at].Field == PieceField.Customer ? at : customer;
        }

        if (!Array.Exists(senses, c => c.Exists(s => s.Known.Word.IsWhat)) || Array.Exists(senses, c => c.Exists(s => s.Known.FieldAt == customer)))
        {
            return;
        }

        foreach (var column in senses)
        {
            for (var at = 0; at < column.Count; at++)
            {
                column[at] = column[at].Known.Word.IsPerson ? column[at] with { Known = column[at].Known with { FieldAt = customer } } : column[at];
            }
        }
    }

    private void Settle(string field, int fieldAt, int maxRank = int.MaxValue)
    {
        if (byField.ContainsKey(field) || Ties.Exists(t => t.Field == field))
        {
            return;
        }

        var (first, second) = (-1, -1);
        HeadingSense? best = null;
        for (var at = 0; at < headings.Count; at++)
        {
            if (taken[at] || Best(at, fieldAt) is not { } sense || sense.Rank > maxRank)
            {
                continue;
            }

            if (best is null || sense.Rank < best.Rank || (sense.Rank == best.Rank && IsLetter(at, sense) && !IsLetter(first, best)))
            {
                (first, second, best) = (at, -1, sense);
            }
            else if (sense.Rank == best.Rank && second < 0 && IsLetter(at, sense) == IsLetter(first, best))
            {
                second = at;
            }
        }

        if (second >= 0)
        {
            Ties.Add(new FieldTie(field, headings[first].Column, headings[second].Column));
            taken[first] = taken[second] = true;
        }
        else if (best is not null)
        {
            byField[field] = new FieldColumn(field, headings[first].Column, headings[first].Heading, best.Known.Word, best.Unit);
            taken[first] = true;
        }
    }

    private HeadingSense? Best(int at, int fieldAt)
    {
        HeadingSense? best = null;
        foreach (var sense in senses[at])
        {
            if (sense.Known.FieldAt == fieldAt && (best is null || sense.Rank < best.Rank))
            {
                best = sense;
            }
        }

        return best;
    }

    // L is the length and l the width: of two letters the one written as the language writes it is meant.
    private bool IsLetter(int at, HeadingSense sense) =>
        sense.Known.Word.Text.Length == 1 && headings[at].Heading.Text.StartsWith(sense.Known.Word.Text, StringComparison.Ordinal);
}
