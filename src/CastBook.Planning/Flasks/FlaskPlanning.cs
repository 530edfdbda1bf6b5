using CastBook.Casting.Pouring;
using CastBook.Planning.Burning;
using CastBook.Planning.Clock;
using CastBook.Planning.Findings;
using CastBook.Planning.Investing;
using CastBook.Planning.Metals;
using CastBook.Planning.Mixes;
using CastBook.Planning.Pouring;
using CastBook.Planning.Rows;
using CastBook.Planning.Shops;

namespace CastBook.Planning.Flasks;

/// <summary>Plans the flasks of a night: asks what must be known first, keeps what is under way, assigns the rest.</summary>
internal sealed class FlaskPlanning
{
    private readonly Night night;
    private readonly RowChoice rows;
    private readonly IReadOnlyList<PieceMetal?> metals;
    private readonly FindingList findings;
    private readonly SizeBook sizes;
    private readonly CrucibleBook crucibles;
    private readonly HangingRules hanging;
    private readonly ChargeRules charges;
    private readonly PowderChoice powder;
    private readonly Assumptions assumed;
    private readonly IEnumerable<PieceMetal> wanted;

    // What the pieces are poured of and how thick they are; of long lists not the pieces.
    private readonly HashSet<(KnownAlloy? Alloy, SectionBand Coldest, SectionBand Hottest)> toPour = [];

    /// <summary>Reads what the shop owns.</summary>
    /// <param name="night">The night.</param>
    /// <param name="rows">Which rows are tonight's.</param>
    /// <param name="metals">The metal of each row.</param>
    /// <param name="alloys">The alloys.</param>
    /// <param name="findings">Takes what is found.</param>
    public FlaskPlanning(Night night, RowChoice rows, IReadOnlyList<PieceMetal?> metals, AlloyBook alloys, FindingList findings)
    {
        this.night = night;
        this.rows = rows;
        this.metals = metals;
        this.findings = findings;
        wanted = MetalOfPieces.Asked(metals).Where(MayBePlanned);
        var ask = wanted.Any();
        assumed = new Assumptions(findings);
        sizes = SizeBook.Of(night.Shop, ask, findings);
        crucibles = new CrucibleBook(night.Shop, alloys, ask, findings);
        hanging = new HangingRules(night.Shop.Settings, findings);
        charges = new ChargeRules(night.Shop.Settings);
        powder = new PowderChoice(night.Shop, assumed, findings);
    }

    /// <summary>Plans the flasks.</summary>
    /// <param name="search">Watches the search and may end it early.</param>
    public PlannedFlasks Plan(PlanSearch search)
    {
        var trees = new BuiltTrees(night, metals, sizes, findings);
        var built = trees.Find();
        var toPlan = Pieces(trees.Shares);
        var assignment = rows.NightIsOpen || sizes.Open || crucibles.Open
            ? FlaskAssignment.None
            : FlaskAssignment.Of(night, toPlan, sizes, Room, Kiln(built), built, trees.Letters, findings, search);
        var work = built.Where(b => b.IsKnown).Select(Work).Concat(assignment.Flasks.Select(f => Work(f.Letter, f.Flask))).ToList();
        var (flasks, mixes) = Mix(Sum(work));
        var underWay = built.Count(b => b.Pieces.Count > 0);
        var least = assignment.LeastFlasks + underWay;
        var proved = assignment.AllPlaced && flasks.Count > 0 && assignment.Flasks.Count + underWay == least;
        var bound = new PlanBound(least, proved)
        {
            ProvedLeastInvestment = assignment.AllPlaced && flasks.Count > 0 && assignment.IsLeastInvestment,
            ProvedFewestLoads = flasks.Count > 0 && assignment.IsFewestLoads is { } fewest ? fewest && assignment.AllPlaced : null,
            InvestmentOver = proved && !assignment.IsLeastInvestment ? assignment.InvestmentOver : null,
        };
        var isToSet = flasks.Exists(f => f.State < FlaskState.InKiln);
        return new PlannedFlasks(flasks, bound, trees.Shares)
        {
            Work = work,
            Change = assignment.Change,
            Mixes = mixes,
            SetAtLeast = isToSet && !powder.IsOpen ? SetTime.Of(powder, assumed, findings) : null,
            IsSetUnread = isToSet && SetTime.IsUnread(powder),
        };
    }

    private (List<FlaskPlan> Flasks, IReadOnlyList<MixPlan> Mixes) Mix(List<FlaskPlan> flasks)
    {
        var mixes = new MixPlanning(night.Shop.Settings, powder, assumed, findings).Plan(flasks);
        var mixed = flasks.ConvertAll(f => mixes.FirstOrDefault(m => m.Flasks.Contains(f.Letter)) is { } mix ? f with { Mix = mix.Number } : f);
        var alone = mixed.Where(f => f.Mix is null && f.State < FlaskState.Invested).Select(f => f.Powder ?? UnitsNet.Mass.Zero);
        powder.CompareStock(mixes.Select(m => m.Powder).Concat(alone).Aggregate(UnitsNet.Mass.Zero, (sum, mass) => sum + mass));
        return (mixed, mixes);
    }

    private KilnNeeds Kiln(IReadOnlyList<BuiltTree> built) => new(night.Shop, powder, built.Where(b => b.IsKnown && b.State < FlaskState.InKiln).Select(Work));

    private FlaskRoom Room { get => field ??= new FlaskRoom(charges, crucibles); }

    // A row that lacks no number of its own but the quantity; open questions about the shop do not count.
    private static bool MayBePlanned(PieceMetal metal) =>
        metal.Piece.Quantity is null or > 0
        && (metal.Alloy.IsQuestion || metal.Alloy.Known is { Refused: false, Density: not null })
        && (metal.VolumeEach is not null || metal.Each is not null || metal.WantsDensity || metal.WantsMeaning);

    private List<TreePiece> Pieces(IReadOnlyDictionary<int, List<FlaskShare>> built)
    {
        var hangable = new TreePieces(sizes, hanging, findings);
        var fit = new PieceFit(sizes, Room, crucibles, night.Shop.Settings, findings);
        var pieces = new List<TreePiece>();
        foreach (var metal in wanted)
        {
            var onTrees = built.TryGetValue(metal.Piece.Id, out var shares) ? shares.Sum(s => s.Quantity) : 0;
            var left = metal.Piece.Quantity - onTrees - night.Waiting.GetValueOrDefault(metal.Piece.Id);

            // Said of built trees too: their moulds may not be poured yet.
            if (!IsCastable(metal.Piece, metal.Alloy.Known) || left <= 0)
            {
                continue;
            }

            var (coldest, hottest) = HungRow.BandsOf(metal.Piece);
            toPour.Add((metal.Alloy.Known, coldest, hottest));
            hangable.Ask(metal.Piece);
            if (left is { } quantity && !sizes.Open && !crucibles.Open && hangable.Of(metal, quantity) is { } piece && fit.Fits(piece))
            {
                pieces.Add(piece);
            }
        }

        return pieces;
    }

    private bool IsCastable(Piece piece, KnownAlloy? alloy)
    {
        // Whether the flask may be quenched, and how hot its burnout may be, hangs on it. Its cell has a finding already.
        if (piece.MayHaveStones && !piece.StonesIn)
        {
            return false;
        }

        if (alloy is not null && piece.StonesIn && alloy.IsRedGold)
        {
            findings.Add(Catalogue.StonesInRedGold.At(Subject.Piece(piece.Id, PieceField.StonesIn), alloy.Name));
            return false;
        }

        if (alloy is null || !alloy.NeedsHighTemperatureInvestment || !powder.MayBeGypsum)
        {
            return true;
        }

        findings.Add(Catalogue.NeedsOtherInvestment.At(
            [new Subject(SubjectKind.Alloy, alloy.Name), Subject.Piece(piece.Id, PieceField.Alloy)], alloy.Name));
        return false;
    }

    private FlaskWork Work(BuiltTree built) => new(
        built.Letter, built.Size!, built.Alloy!, built.State,
        [.. built.Pieces.Select(p => HungRow.Of(p.Metal, p.Count, hanging))])
    {
        Line = built.Line,
    };

    private FlaskWork Work(string letter, FilledFlask flask) => new(
        letter, flask.Size, flask.Alloy, FlaskState.Planned,
        [.. flask.Content.Select(c => HungRow.Of(c.Piece.Metal, c.Count, hanging))])
    {
        Limit = flask.Limit.Value,
        Columns = flask.Content.All(c => c.Piece.Shapes is not null) ? TreeLayout.Of(flask.Sectors, flask.Size) : [],
    };

    private List<FlaskPlan> Sum(List<FlaskWork> work)
    {
        // What the first pour needs is asked before there is a flask to pour, so that one sitting answers all.
        if (work.Count == 0 && (toPour.Count == 0 || rows.NightIsOpen))
        {
            return [];
        }

        if (powder.Question is { } question)
        {
            findings.Add(question);
        }

        if (night.Shop.Kilns.Count == 0)
        {
            findings.Add(Catalogue.KilnNotKnown.At(new Subject(SubjectKind.Kiln, "")));
        }

        var pours = new PourAnswers(assumed, powder.MayBeGypsum);
        if (work.Count == 0)
        {
            foreach (var (alloy, coldest, hottest) in toPour.Where(p => p.Alloy is not null))
            {
                pours.Ask(alloy!, coldest, hottest);
            }

            return [];
        }

        var sums = new FlaskSums(
            charges, crucibles, hanging, new WeighedTrees(night.Shop, assumed, findings), powder,
            new BurnoutChoice(night.Shop, powder, assumed, findings), pours, assumed, findings);
        SteamDewax.Compare(night.Shop.Settings, work, findings);
        return work.ConvertAll(sums.Compute);
    }
}
