using CastBook.Workbooks.Reading.Grid;

namespace CastBook.Workbooks.Reading.Headings;

/// <summary>Tells the headings of the list from those of another table beside it.</summary>
internal static class SideTables
{
    /// <summary>The headings without those of tables to the left or right; null where all are the list's.</summary>
    /// <remarks>
    /// Tables stand apart by empty columns. Beyond such a gap is another table where its headings say again what the list says,
    /// where most of them are none of a list, or where the gap is wide and not all of them are.
    /// </remarks>
    /// <param name="grid">The sheet.</param>
    /// <param name="row">The row of the headings.</param>
    /// <param name="headings">All headings of the row.</param>
    /// <param name="match">What they come to.</param>
    /// <param name="own">Columns of ours, which are no gap.</param>
    /// <param name="index">The words of headings.</param>
    public static List<(int Column, Heading Heading)>? Without(
        SheetGrid grid, int row, List<(int Column, Heading Heading)> headings, HeadingMatch match, HashSet<int> own, WordIndex index)
    {
        var blocks = Blocks(grid, row, headings, own);
        if (blocks.Count < 2)
        {
            return null;
        }

        var fields = blocks.ConvertAll(b => CountFields(b, match));
        var main = fields.IndexOf(fields.Max());
        var said = SurelySaid(blocks[main], index);
        var kept = new List<(int Column, Heading Heading)>();
        for (var at = 0; at < blocks.Count; at++)
        {
            if (at == main || IsOfList(blocks[at], fields[at], said, Gap(blocks, at, main), index))
            {
                kept.AddRange(blocks[at]);
            }
        }

        return kept.Count == headings.Count ? null : kept;
    }

    private static bool IsOfList(List<(int Column, Heading Heading)> block, int fields, HashSet<int> said, int gap, WordIndex index) =>
        !SurelySaid(block, index).Overlaps(said) && (gap > 1 ? fields == block.Count : 2 * fields >= block.Count);

    private static List<List<(int Column, Heading Heading)>> Blocks(
        SheetGrid grid, int row, List<(int Column, Heading Heading)> headings, HashSet<int> own)
    {
        var blocks = new List<List<(int Column, Heading Heading)>>();
        var last = 0;
        foreach (var heading in headings)
        {
            var hasGap = false;
            for (var column = last + 1; column < heading.Column; column++)
            {
                hasGap |= !own.Contains(column) && IsEmpty(grid, row, column);
            }

            if (blocks.Count == 0 || hasGap)
            {
                blocks.Add([]);
            }

            blocks[^1].Add(heading);
            last = heading.Column;
        }

        return blocks;
    }

    private static bool IsEmpty(SheetGrid grid, int fromRow, int column)
    {
        foreach (var row in grid.Rows)
        {
            if (row > fromRow + HeadingRow.Last)
            {
                break;
            }

            if (row >= fromRow && !grid.Cell(row, column).IsEmpty)
            {
                return false;
            }
        }

        return true;
    }

    private static int CountFields(List<(int Column, Heading Heading)> block, HeadingMatch match)
    {
        bool IsIn(int column) => block.Exists(h => h.Column == column);
        return match.Fields.Values.Count(f => IsIn(f.Column)) + match.Ties.Count(t => IsIn(t.First) || IsIn(t.Second));
    }

    private static HashSet<int> SurelySaid(List<(int Column, Heading Heading)> block, WordIndex index)
    {
        var said = new HashSet<int>();
        foreach (var (_, heading) in block)
        {
            foreach (var sense in heading.Senses(index))
            {
                if (sense.Rank < 3 * WordIndex.RankStep)
                {
                    said.Add(sense.Known.FieldAt);
                }
            }
        }

        return said;
    }

    private static int Gap(List<List<(int Column, Heading Heading)>> blocks, int at, int main) => at > main
        ? blocks[at][0].Column - blocks[at - 1][^1].Column - 1
        : blocks[at + 1][0].Column - blocks[at][^1].Column - 1;
}
