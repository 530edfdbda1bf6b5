using CastBook.Planning.Clock;
using CastBook.Planning.Findings;
using CastBook.Planning.Flasks;
using CastBook.Planning.Metals;
using CastBook.Planning.Patterns;
using CastBook.Planning.Rows;
using CastBook.Planning.Shops;

namespace CastBook.Planning;

/// <summary>Plans a casting night: which pieces share a flask, and what each flask takes.</summary>
/// <remarks>The same night gives the same plan, on any machine: no clock, no culture, no chance.</remarks>
public static class NightPlanner
{
    /// <summary>Plans a night.</summary>
    /// <param name="night">The rows, the shop, and the trees in hand. <see cref="Piece.Id"/> must be the row's index.</param>
    /// <returns>The plan; what could not be planned has a finding that says why.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="night"/> is null.</exception>
    /// <exception cref="ArgumentException">A piece's id is not its index.</exception>
    public static NightPlan Plan(Night night) => Plan(night, PlanSearch.Unwatched);

    /// <summary>Plans a night; the search for flasks may be watched and ended early.</summary>
    /// <param name="night">The rows, the shop, and the trees in hand. <see cref="Piece.Id"/> must be the row's index.</param>
    /// <param name="search">Watches the search and may end it early.</param>
    /// <returns>The plan; what could not be planned has a finding that says why.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">A piece's id is not its index.</exception>
    public static NightPlan Plan(Night night, PlanSearch search)
    {
        ArgumentNullException.ThrowIfNull(search);
        return Run(night, search).Plan;
    }

    /// <summary>Plans a night and gives with the plan what it was made of.</summary>
    /// <param name="night">The night.</param>
    /// <param name="search">Watches the search and may end it early.</param>
    internal static PlannedNight Run(Night night, PlanSearch search)
    {
        ArgumentNullException.ThrowIfNull(night);
        for (var i = 0; i < night.Pieces.Count; i++)
        {
            if (night.Pieces[i].Id != i)
            {
                throw new ArgumentException($"Bug in CastBook: piece {i} has the id {night.Pieces[i].Id}; ids are the places in the list.", nameof(night));
            }
        }

        return night.MetalInHandOnly ? MetalInHand.Plan(night, part => Once(part, search)) : Once(night, search);
    }

    private static PlannedNight Once(Night night, PlanSearch search)
    {
        var findings = new FindingList(night.Shop.Settings.Units);
        ExampleRows.Find(night, findings);
        var rows = RowChoice.Of(night, findings);
        var alloys = new AlloyBook(night.Shop, findings);
        var materials = new MaterialBook(night.Shop);
        RemarkChecks.Find(night, rows.IsAsked, materials, findings);
        var metals = new MetalOfPieces(night, alloys, materials, findings, CastingLessons.Of(night, findings)).Compute(rows.IsAsked);
        var flasks = new FlaskPlanning(night, rows, metals, alloys, findings).Plan(search);
        var asked = MetalOfPieces.Asked(rows.NightIsOpen ? [] : metals);
        var metal = MetalSums.Of(night, asked, flasks.Flasks, findings);
        var clock = ClockPlanning.Plan(night, flasks, findings);
        flasks = flasks.InLoads(clock?.Loads ?? []);
        var plan = new NightPlan
        {
            Pieces = Answers(night, rows, metals, flasks),
            Flasks = flasks.Flasks,
            TreesWithoutNumbers = BuiltTrees.Without(night, flasks.Flasks),
            Mixes = flasks.Mixes,
            SetAtLeast = flasks.SetAtLeast,
            Clock = clock,
            Metal = metal,
            Bound = flasks.Bound,
            Change = flasks.Change,
            Findings = FindingGroups.Fold(findings.All),
        };
        return new PlannedNight(plan, metals, flasks.Work);
    }

    private static PiecePlans Answers(Night night, RowChoice rows, IReadOnlyList<PieceMetal?> metals, PlannedFlasks flasks)
    {
        var answers = new PiecePlans(night.Pieces.Count);
        foreach (var piece in night.Pieces)
        {
            answers.Set(PieceAnswers.Of(piece, rows.Standing[piece.Id], rows.IsToCome(piece, night.Trees), metals[piece.Id], flasks));
        }

        return answers;
    }
}

/// <summary>A plan and what it was made of.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="Metals">The metal of each row; nothing for rows that are not asked for.</param>
/// <param name="Work">The flasks as settled, before their sums.</param>
internal sealed record PlannedNight(NightPlan Plan, IReadOnlyList<PieceMetal?> Metals, IReadOnlyList<FlaskWork> Work);
