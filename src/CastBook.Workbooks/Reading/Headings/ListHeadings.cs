using CastBook.Planning.Findings;
using CastBook.Workbooks.Reading.Grid;

namespace CastBook.Workbooks.Reading.Headings;

/// <summary>The headings of a list, in one row or two, and what they come to.</summary>
/// <param name="Top">The first row of them.</param>
/// <param name="Row">The row where more headings belong.</param>
/// <param name="Bottom">The last row of them; below <paramref name="Row"/> only where it holds units.</param>
/// <param name="Texts">The headings, without those of other tables and our own.</param>
/// <param name="Match">Which column is which.</param>
/// <param name="Unclear">Headings that may mean two things.</param>
internal sealed record ListHeadings(
    int Top, int Row, int Bottom, IReadOnlyList<(int Column, Heading Heading)> Texts, HeadingMatch Match, IReadOnlyList<UnclearHeading> Unclear)
{
    /// <summary>How well they are the headings of a list: a field that is settled counts for two that are not.</summary>
    public int Worth => (2 * Match.Fields.Count) + Match.Ties.Count + Unclear.Count;

    /// <summary>Whether they are one row.</summary>
    public bool IsOneRow => Top == Bottom;

    /// <summary>The columns they stand over.</summary>
    public HashSet<int> Columns => [.. Texts.Select(t => t.Column), .. Unclear.Select(u => u.Column)];

    /// <summary>The first column of those.</summary>
    public int FirstColumn => Texts.Min(t => t.Column);

    /// <summary>Whether they speak of a field, settled or not.</summary>
    public bool Has(string field) => Match.Fields.ContainsKey(field) || Match.Ties.Exists(t => t.Field == field);

    /// <summary>Reads one row of headings, or two.</summary>
    /// <param name="grid">The sheet.</param>
    /// <param name="top">The first row.</param>
    /// <param name="bottom">The last row; the same or the next.</param>
    /// <param name="own">Columns of ours.</param>
    /// <param name="words">The shop's own words.</param>
    /// <param name="within">The columns they may stand in; missing for all.</param>
    public static ListHeadings Read(
        SheetGrid grid, int top, int bottom, HashSet<int> own, IReadOnlyDictionary<string, IReadOnlyList<string>> words, CellRange? within = null)
    {
        var index = HeadingWords.PieceIndex;
        var pair = top == bottom ? null : HeadingPair.Read(grid, top, bottom, index);
        var texts = pair?.Headings ?? HeadingRow.Read(grid, bottom);
        texts.RemoveAll(h => own.Contains(h.Column) || (within is { } range && (h.Column < range.FirstColumn || h.Column > range.LastColumn)));
        var match = HeadingMatch.Of(texts, index, words);
        if (SideTables.Without(grid, top, texts, match, own, index) is { } ofList)
        {
            (texts, match) = (ofList, HeadingMatch.Of(ofList, index, words));
        }

        var isUnits = pair is not null && UnitRow.Read(grid, bottom, texts.ConvertAll(h => h.Column)) is not null;
        return new ListHeadings(top, isUnits ? top : bottom, bottom, texts, match, pair?.Unclear ?? []);
    }

    /// <summary>Reads the same headings once more in a whole sheet, where merged cells are known, with the groups above them.</summary>
    /// <param name="grid">The sheet.</param>
    /// <param name="own">Columns of ours.</param>
    /// <param name="words">The shop's own words.</param>
    /// <param name="within">The columns they may stand in; missing for all.</param>
    public ListHeadings Again(SheetGrid grid, HashSet<int> own, IReadOnlyDictionary<string, IReadOnlyList<string>> words, CellRange? within)
    {
        var again = Read(grid, Top, Bottom, own, words, within);
        if (Top == Bottom && HeadingPair.StandsBelowGroups(grid, again))
        {
            // A title that names a unit is no group: it would turn the column of the names into something else.
            var below = Read(grid, Top - 1, Bottom, own, words, within);
            return below.ColumnOf(PieceField.Piece) == again.ColumnOf(PieceField.Piece) ? below : again;
        }

        return again;
    }

    private int? ColumnOf(string field) => Match.Fields.TryGetValue(field, out var column) ? column.Column : null;
}
