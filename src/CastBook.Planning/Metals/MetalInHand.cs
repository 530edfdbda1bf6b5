using CastBook.Planning.Findings;
using CastBook.Planning.Words;
using UnitsNet;

namespace CastBook.Planning.Metals;

/// <summary>
/// The night that the metal in the drawer allows: of an alloy that is short the pieces that are due go first, then those that stand
/// higher in the list, and then what still fits; the rest wait.
/// </summary>
/// <remarks>
/// Each try is a whole plan, because a button and a trunk come with every flask: the longest beginning of that order is found by
/// halving, for all short alloys at once, and rows further down are tried one after the other. Trees under way are not touched.
/// </remarks>
internal sealed class MetalInHand
{
    private readonly Night night;
    private readonly Func<Night, PlannedNight> plan;
    private readonly Dictionary<int, int> waiting = [];
    private readonly List<Line> lines;
    private PlannedNight best;

    private MetalInHand(Night night, Func<Night, PlannedNight> plan, PlannedNight all)
    {
        this.night = night;
        this.plan = plan;
        best = all;
        lines = [.. all.Plan.Metal.Where(m => !Suffices(m)).Select(m => new Line(m.Alloy, Wanting(m.Alloy, all)))];
    }

    /// <summary>Plans what the metal allows.</summary>
    /// <param name="night">The night.</param>
    /// <param name="plan">Plans a night whole.</param>
    public static PlannedNight Plan(Night night, Func<Night, PlannedNight> plan)
    {
        var all = plan(night);
        var search = new MetalInHand(night, plan, all);
        return search.lines.Count == 0 ? all : search.Search();
    }

    private PlannedNight Search()
    {
        // Alloys share flasks, so what fits beside half of another's pieces need not beside all of them: the last try is of all together.
        while (lines.Exists(l => l.Most - l.Least > 1))
        {
            lines.ForEach(l => l.Taken = (l.Least + l.Most) / 2);
            Try();
            lines.ForEach(l => (l.Least, l.Most) = Suffices(l) ? (l.Taken, l.Most) : (l.Least, l.Taken));
        }

        lines.ForEach(l => l.Taken = l.Least);
        Try();
        while (lines.Find(l => l.Taken > 0 && !Suffices(l)) is { } over)
        {
            over.Taken--;
            Try();
        }

        foreach (var line in lines)
        {
            AddWhatStillFits(line);
        }

        return best with { Plan = best.Plan with { Findings = FindingGroups.Fold([.. best.Plan.Findings, .. lines.Where(l => l.Waiting(waiting) > 0).Select(Say)]) } };
    }

    private void AddWhatStillFits(Line line)
    {
        var kept = best;
        foreach (var (row, count) in line.Rows.Where(r => waiting[r.Id] > 0))
        {
            var least = (kept.Metals[row]?.Each ?? Mass.Zero) * waiting[row];
            if (kept.Plan.Metal.First(m => m.Alloy == line.Alloy) is { Fresh: var fresh, Remelt: var remelt, Charges: { } charges }
                && least > (fresh ?? Mass.Zero) + (remelt ?? Mass.Zero) - charges)
            {
                continue;
            }

            var before = waiting[row];
            waiting[row] = 0;
            best = Planned();
            if (lines.TrueForAll(Suffices) && best.Plan.Pieces[row].Flasks.Sum(f => f.Quantity) >= count)
            {
                kept = best;
            }
            else
            {
                waiting[row] = before;
            }
        }

        best = kept;
    }

    private void Try()
    {
        foreach (var line in lines)
        {
            var left = line.Taken;
            foreach (var (row, count) in line.Rows)
            {
                var taken = Math.Min(left, count);
                waiting[row] = count - taken;
                left -= taken;
            }
        }

        best = Planned();
    }

    private PlannedNight Planned() => plan(night with { Waiting = waiting });

    private bool Suffices(Line line) => best.Plan.Metal.All(m => m.Alloy != line.Alloy || Suffices(m));

    // What nobody has said to be in the drawer cannot be short.
    private static bool Suffices(MetalPlan metal) => metal.Portions.All(p => p.Fresh is not null);

    // The rows of an alloy with what of them is not in built trees, in the order in which metal is given.
    private List<(int Id, int Count)> Wanting(string alloy, PlannedNight all)
    {
        var planned = all.Plan.Flasks.Where(f => f.State == FlaskState.Planned).Select(f => f.Letter).ToHashSet(StringComparer.Ordinal);
        var noFlask = all.Plan.Findings.Where(f => f.Kind == Catalogue.NoFlaskLeft).SelectMany(f => f.Subjects).ToHashSet();
        return
        [
            .. all.Plan.Pieces
                .Where(p => all.Metals[p.Id]?.Alloy.Known?.Name == alloy)
                .Where(p => p.Flasks.Any(f => planned.Contains(f.Flask)) || noFlask.Contains(Subject.Piece(p.Id)))
                .OrderBy(p => night.Pieces[p.Id].Due ?? DateOnly.MaxValue).ThenBy(p => p.Id)
                .Select(p => (p.Id, (night.Pieces[p.Id].Quantity ?? 0) - p.Flasks.Where(f => !planned.Contains(f.Flask)).Sum(f => f.Quantity))),
        ];
    }

    private Finding Say(Line line)
    {
        var metal = best.Plan.Metal.First(m => m.Alloy == line.Alloy);
        return Catalogue.WaitsForMetal.At(
            [.. line.Rows.Where(r => waiting[r.Id] > 0).Select(r => Subject.Piece(r.Id))],
            CountWords.PiecesWait(line.Waiting(waiting)),
            line.Alloy,
            night.Shop.Settings.Units.Metal.Say((metal.Fresh ?? Mass.Zero) + (metal.Remelt ?? Mass.Zero)),
            night.Shop.Settings.Units.Metal.Say(metal.Charges ?? Mass.Zero));
    }

    /// <summary>An alloy that is short.</summary>
    private sealed class Line(string alloy, List<(int Id, int Count)> rows)
    {
        public string Alloy { get; } = alloy;

        public IReadOnlyList<(int Id, int Count)> Rows { get; } = rows;

        /// <summary>So many pieces are known to have their metal.</summary>
        public int Least { get; set; }

        /// <summary>So many are known not to have it all.</summary>
        public int Most { get; set; } = rows.Sum(r => r.Count);

        /// <summary>So many are tried.</summary>
        public int Taken { get; set; }

        public int Waiting(Dictionary<int, int> waiting) => Rows.Sum(r => waiting[r.Id]);
    }
}
