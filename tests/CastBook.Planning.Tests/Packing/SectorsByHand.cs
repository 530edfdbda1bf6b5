using CastBook.Planning.Packing;

namespace CastBook.Planning.Tests.Packing;

/// <summary>Tries every way of hanging a few pieces in the sectors of given flasks, one piece after the other: shares nothing with the search.</summary>
internal static class SectorsByHand
{
    /// <summary>Whether all pieces fit.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="flasks">Size and setting of each flask.</param>
    public static bool Fit(PackProblem problem, IReadOnlyList<(int Size, int Setting)> flasks)
    {
        int[] pieces = [.. problem.Items.SelectMany((item, i) => Enumerable.Repeat(i, item.Quantity))];
        var sectors = flasks.Select(_ => new List<List<int>>()).ToArray();
        var metal = flasks.Select(f => problem.Sizes[f.Size].Metal).ToArray();
        return Hang(0);

        bool Hang(int at)
        {
            if (at == pieces.Length)
            {
                return true;
            }

            var item = problem.Items[pieces[at]];
            for (var flask = 0; flask < flasks.Count; flask++)
            {
                var (size, setting) = flasks[flask];
                if (!item.Shapes[size].Fits || item.Lowest > setting || item.Highest < setting || metal[flask] < item.Metal)
                {
                    continue;
                }

                metal[flask] -= item.Metal;
                for (var sector = 0; sector <= sectors[flask].Count; sector++)
                {
                    if (sector == sectors[flask].Count)
                    {
                        sectors[flask].Add([]);
                    }

                    sectors[flask][sector].Add(pieces[at]);
                    if (Stands(sectors[flask][sector], size) && Width(sectors[flask], size) <= PackShape.Turn && Hang(at + 1))
                    {
                        return true;
                    }

                    sectors[flask][sector].RemoveAt(sectors[flask][sector].Count - 1);
                    if (sectors[flask][sector].Count == 0)
                    {
                        sectors[flask].RemoveAt(sector);
                        break;
                    }
                }

                metal[flask] += item.Metal;
            }

            return false;
        }

        int Width(List<List<int>> tree, int size) => tree.Sum(s => s.Max(p => problem.Shapes[size][p].Theta));

        // With the longest tail nearest the button; any other order takes no less.
        bool Stands(List<int> sector, int size)
        {
            var height = 0;
            foreach (var shape in sector.Select(p => problem.Shapes[size][p]).OrderByDescending(s => s.Tail))
            {
                height += shape.Pitch;
                if (height + shape.Tail > problem.Sizes[size].Rod)
                {
                    return false;
                }
            }

            return true;
        }
    }
}
