using CastBook.Workbooks.Reading.Grid;

namespace CastBook.Workbooks.Reading.Headings;

/// <summary>A heading that may belong to the group on its left or stand alone, and would mean two things.</summary>
/// <param name="Column">Its column.</param>
/// <param name="Group">The group's heading.</param>
/// <param name="Text">Its own.</param>
/// <param name="Field">What it means alone.</param>
internal sealed record UnclearHeading(int Column, string Group, string Text, string Field);

/// <summary>Two rows looked at as one row of headings: groups above, their columns below.</summary>
internal sealed class HeadingPair
{
    private readonly SheetGrid grid;
    private readonly int upper;
    private readonly WordIndex index;

    private HeadingPair(SheetGrid grid, int upper, WordIndex index) => (this.grid, this.upper, this.index) = (grid, upper, index);

    /// <summary>The headings, in column order.</summary>
    public List<(int Column, Heading Heading)> Headings { get; } = [];

    /// <summary>Those that may mean two things; they are not among <see cref="Headings"/>.</summary>
    public List<UnclearHeading> Unclear { get; } = [];

    /// <summary>Whether the row above one row of headings holds groups of them, and not a title of the list.</summary>
    /// <param name="grid">The sheet.</param>
    /// <param name="list">The row of headings.</param>
    public static bool StandsBelowGroups(SheetGrid grid, ListHeadings list)
    {
        var pair = new HeadingPair(grid, list.Top - 1, HeadingWords.PieceIndex);
        var columns = list.Columns;
        var (first, last) = (columns.Min(), columns.Max());
        for (var column = first; column <= last && pair.upper > 0; column++)
        {
            if (HeadingRow.TextAt(grid, pair.upper, column) is { } text
                && (Heading.Parse(text).TellsOfBelow || (column > first && pair.EndOf(column) > column)))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Reads two rows; where merged cells are not known, a group is taken to reach up to the next one.</summary>
    public static HeadingPair Read(SheetGrid grid, int upper, int lower, WordIndex index)
    {
        var pair = new HeadingPair(grid, upper, index);
        var last = Math.Max(grid.LastColumnOf(upper), grid.LastColumnOf(lower));
        var (group, groupEnd) = ((string?)null, 0);
        for (var column = 1; column <= last; column++)
        {
            var below = HeadingRow.TextAt(grid, lower, column);
            if (HeadingRow.TextAt(grid, upper, column) is { } over)
            {
                groupEnd = pair.EndOf(column);
                group = (below is null && groupEnd == column) || pair.IsTitle(over, below, column) ? null : over;
                pair.Add(column, below is null ? Heading.Parse(over) : pair.Within(group, below));
            }
            else if (below is null)
            {
                // Nothing at all in a column ends a group that no merge holds together.
                group = column > groupEnd ? null : group;
            }
            else if (group is null || column <= groupEnd)
            {
                pair.Add(column, pair.Within(group, below));
            }
            else if (!pair.IsMerged(groupEnd) && !pair.StandsAlone(group, below))
            {
                pair.AddBeside(column, group, below);
            }
            else
            {
                group = null;
                pair.Add(column, Heading.Parse(below));
            }
        }

        return pair;
    }

    private void Add(int column, Heading heading) => Headings.Add((column, heading));

    // What is merged over columns inside the list is a group even where nothing knows it; elsewhere such words are a title or a remark.
    private bool IsTitle(string over, string? below, int column)
    {
        var heading = Heading.Parse(over);
        var isKnown = heading.TellsOfBelow || heading.Senses(index).Count > 0 || (below is not null && Whole(over, below).Senses(index).Count > 0);
        return !isKnown && (EndOf(column) == column || Headings.Count == 0);
    }

    private Heading Within(string? group, string below)
    {
        if (group is null)
        {
            return Heading.Parse(below);
        }

        var whole = Whole(group, below);
        return whole.Senses(index).Count > 0 ? whole : Heading.Parse(below).Below(Heading.Parse(group));
    }

    // Right of "Stone" a weight or a size may be the stone's, but an alloy or a day is the piece's, and the group is over.
    private bool StandsAlone(string group, string below)
    {
        var alone = Heading.Parse(below);
        return Best(alone) is { } sense && index.Fields[sense.Known.FieldAt].Dimension == Dimension.None && Best(Whole(group, below)) is null;
    }

    // Right of a group without merge the next columns may be its own or not; a merged group ends where its merge does.
    private void AddBeside(int column, string group, string below)
    {
        var alone = Heading.Parse(below);
        var under = alone.Below(Heading.Parse(group));
        var takesUnit = alone.Senses(index) is [{ Unit: null }, ..] && under.Senses(index) is [{ Unit: not null }, ..];
        var whole = Whole(group, below);
        if (alone.Senses(index) is [var sense, ..] && under.Senses(index).Count == 0)
        {
            Unclear.Add(new UnclearHeading(column, Heading.Parse(group).Text, alone.Text, index.Fields[sense.Known.FieldAt].Field));
        }
        else if (Best(whole) is not { } within)
        {
            Add(column, takesUnit ? under : alone);
        }
        else if (Best(alone) is not { } byItself || byItself.Known.FieldAt == within.Known.FieldAt)
        {
            Add(column, whole);
        }
        else
        {
            Unclear.Add(new UnclearHeading(column, Heading.Parse(group).Text, alone.Text, index.Fields[byItself.Known.FieldAt].Field));
        }
    }

    private HeadingSense? Best(Heading heading)
    {
        HeadingSense? best = null;
        foreach (var sense in heading.Senses(index))
        {
            best = best is null || sense.Rank < best.Rank ? sense : best;
        }

        return best;
    }

    // The unit of the column itself counts before that of its group.
    private static Heading Whole(string group, string below)
    {
        var bracket = group.IndexOfAny(['(', '[']);
        var words = bracket > 0 && Heading.Parse(below).MarkedUnit is not null ? group[..bracket] : group;
        return Heading.Parse($"{words.Trim().TrimEnd('-')} {below}".Replace('\n', ' '));
    }

    private int EndOf(int column)
    {
        foreach (var merge in grid.Merges)
        {
            if (merge.Contains(upper, column) && merge.FirstColumn == column)
            {
                return merge.LastColumn;
            }
        }

        return column;
    }

    private bool IsMerged(int lastColumn)
    {
        foreach (var merge in grid.Merges)
        {
            if (merge.FirstRow <= upper && merge.LastRow >= upper && merge.LastColumn == lastColumn && merge.FirstColumn < lastColumn)
            {
                return true;
            }
        }

        return false;
    }
}
