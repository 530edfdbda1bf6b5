using CastBook.Planning.Findings;
using CastBook.Planning.Metals;
using CastBook.Planning.Shops;
using UnitsNet;

namespace CastBook.Planning.Explaining;

/// <summary>How the answers of a row came to be.</summary>
/// <param name="night">The night.</param>
/// <param name="plan">Its plan.</param>
/// <param name="flasks">The accounts of its flasks.</param>
internal sealed class PieceAccounts(Night night, NightPlan plan, FlaskAccounts flasks)
{
    private const string EqualVolumes =
        "solid patterns without stones; about 3 % above the finished casting, because metal shrinks as it cools. Tree, button and melt loss are apart";

    /// <summary>Metal of one piece; nothing where it is not known.</summary>
    /// <param name="metal">The row's metal.</param>
    public Account? MetalEach(PieceMetal metal)
    {
        const string name = "Metal each";
        var piece = metal.Piece;
        if (metal.Each is not { } each)
        {
            return null;
        }

        if (piece.MetalEach is not null)
        {
            return new(name, "as a person typed it into the cell", "", each.Grams, "g")
            {
                Inputs = metal.WorkedOut is { } worked ? [AccountInput.Reckoned("weight or volume comes to", worked, "worked out")] : [],
            };
        }

        return piece.PatternVolume is { } volume ? OfVolume(metal, volume, each)
            : piece.Weight is not { } weight ? null
            : MeaningOf(piece) == WeightMeaning.FinishedMetal
                ? new(name, "the weight of the finished metal as typed", "", each.Grams, "g") { Inputs = [Weight(piece, weight), OfMeaning(piece)] }
                : OfWeight(metal, weight, each);
    }

    private static Account OfVolume(PieceMetal metal, Volume volume, Mass each) => new(
        "Metal each", "pattern volume × alloy density" + LearntWords(metal), $"{Figures.Millilitres(volume)} × {Alloy(metal)}{LearntNumber(metal)}", each.Grams, "g")
    {
        Inputs =
        [
            AccountInput.By("pattern volume", Figures.Millilitres(volume), Subject.Piece(metal.Piece.Id, PieceField.PatternVolume)), AlloyDensity(metal),
            .. Learnt(metal),
        ],
        ValidFor = EqualVolumes,
    };

    private Account OfWeight(PieceMetal metal, Mass weight, Mass each)
    {
        var supports = night.Shop.Settings.SupportsShare is { DecimalFractions: > 0 } share ? share : (Ratio?)null;
        var (words, numbers) = supports is { } cut ? (" × (1 − supports share)", $" × (1 − {Figures.Plain(cut.DecimalFractions)})") : ("", "");
        return new(
            "Metal each", $"pattern weight{words} ÷ pattern density × alloy density{LearntWords(metal)}",
            $"{Figures.Grams(weight)}{numbers} ÷ {Figures.Dense(metal.Material.Density!.Value)} × {Alloy(metal)}{LearntNumber(metal)}", each.Grams, "g")
        {
            Inputs =
            [
                Weight(metal.Piece, weight),
                OfMeaning(metal.Piece),
                .. supports is { } said ? [AccountInput.By("supports share", Say.Percent(said), Subject.Setting(SettingName.SupportsShare))] : Array.Empty<AccountInput>(),
                PatternDensity(metal),
                AlloyDensity(metal),
                .. Learnt(metal),
            ],
            ValidFor = EqualVolumes,
        };
    }

    /// <summary>Metal of all pieces of the row; nothing where it is not known.</summary>
    /// <param name="metal">The row's metal.</param>
    public static Account? Metal(PieceMetal metal) => metal is { Each: { } each, Piece.Quantity: { } quantity }
        ? new("Metal", "metal each × quantity", $"{Figures.Grams(each)} × {Figures.Plain(quantity)}", (each * quantity).Grams, "g")
        {
            Inputs =
            [
                AccountInput.Reckoned("metal each", each, "the column beside it"),
                AccountInput.By("quantity", Figures.Plain(quantity), Subject.Piece(metal.Piece.Id, PieceField.Quantity)),
            ],
            ValidFor = "the pieces alone; tree, button and melt loss are in the charge of the flask",
        }
        : null;

    /// <summary>Where the row is cast; nothing where it is in no flask.</summary>
    /// <param name="piece">The row.</param>
    public Account? Flask(Piece piece)
    {
        var shares = plan.Pieces[piece.Id].Flasks;
        if (shares.Count == 0)
        {
            return null;
        }

        var inputs = new List<AccountInput> { AccountInput.By("alloy", piece.Alloy ?? "", Subject.Piece(piece.Id, PieceField.Alloy)) };
        if (piece.KeepInFlask is { } wish)
        {
            inputs.Add(AccountInput.By("keep in flask", wish, Subject.Piece(piece.Id, PieceField.KeepInFlask)));
        }

        if (piece.Box is { } box)
        {
            var size = night.Shop.Settings.Units.Length;
            var thickness = box.Thickness is { } third ? $" × {size.Say(third)}" : "";
            inputs.Add(AccountInput.By(
                "size", $"{size.Say(box.Length)} × {size.Say(box.Width)}{thickness}", Subject.Piece(piece.Id, PieceField.Length)));
        }

        inputs.AddRange(shares.Select(s => flasks.Flask(s.Flask)).OfType<FlaskPlan>()
            .Select(f => AccountInput.By("flask " + f.Letter, f.Size.Name, new Subject(SubjectKind.FlaskSize, f.Size.Name))));
        inputs.AddRange(plan.Change is { IsForced: false } change ? BothAnswers(change) : []);
        return new("Flask", "one alloy and one range of flask temperature to a flask, stones apart; trees under way and wishes first, then the fewest flasks and the least powder that the search found", "", null, "")
        {
            Inputs = inputs,
            ValidFor = "what fits on the tree with the shop's clearances, its crucible and its cup",
        };
    }

    /// <summary>Powder and water of the row's flask; nothing where it is in none, or in one whose powder is not known.</summary>
    /// <param name="piece">The row.</param>
    public Account? Mix(Piece piece)
    {
        var shares = plan.Pieces[piece.Id].Flasks;
        if (shares.Count > 1)
        {
            return new("Mix", "the row is in several flasks: see their powder and water on the Night plan", "", null, "");
        }

        return shares.Count == 1 && flasks.Flask(shares[0].Flask) is not null
            && flasks.Powder(shares[0].Flask) is { } powder && flasks.Water(shares[0].Flask) is { } water
            ? powder with { Name = "Mix", Words = $"powder of flask {shares[0].Flask}: {powder.Words}; water: {water.Words}" }
            : null;
    }

    /// <summary>The longest burnout of the row's flasks; nothing where none is known.</summary>
    /// <param name="piece">The row.</param>
    public Account? Burnout(Piece piece)
    {
        if (plan.Pieces[piece.Id] is not { Burnout: not null, Flasks: { Count: > 0 } shares })
        {
            return null;
        }

        var letter = shares.Select(s => flasks.Flask(s.Flask)).OfType<FlaskPlan>().OrderByDescending(f => f.Burnout?.Hours ?? 0).First().Letter;
        return flasks.Burnout(letter) is { } account ? account with { Words = $"flask {letter}: {account.Words}" } : null;
    }

    // What stood in the book, and what planning afresh makes of it.
    private IEnumerable<AccountInput> BothAnswers(PlanChange change)
    {
        yield return AccountInput.By(SettingName.WhenLittleChanged, change.IsKept ? "keep" : "best", Subject.Setting(SettingName.WhenLittleChanged));
        yield return AccountInput.Reckoned("with \"keep\"", "nothing moves", "every piece stays in the flask it was planned for");
        yield return AccountInput.Reckoned("with \"best\"", change.Words(night.Shop.Settings.Units.Water), "planned afresh, with as few moves as the search found");
    }

    private WeightMeaning MeaningOf(Piece piece) => piece.WeightIsOf != WeightMeaning.Unknown ? piece.WeightIsOf
        : night.WeightsAreOf != WeightMeaning.Unknown ? night.WeightsAreOf
        : night.Shop.Settings.WeightsAreOf;

    private AccountInput OfMeaning(Piece piece)
    {
        var meaning = MeaningOf(piece);
        var said = meaning == WeightMeaning.FinishedMetal ? "finished metal" : "pattern";
        return night.Shop.Settings.WeightsAreOf == meaning
            ? AccountInput.By("weights are of", said, Subject.Setting(SettingName.WeightsAreOf))
            : AccountInput.Reckoned("weights are of", said, "the heading of the weights");
    }

    private static AccountInput Weight(Piece piece, Mass weight) =>
        AccountInput.By("weight", weight, Subject.Piece(piece.Id, PieceField.PatternMass));

    private static AccountInput PatternDensity(PieceMetal metal)
    {
        var (material, name, value) = (metal.Material, $"{metal.Material.Name} density".TrimStart(), Figures.Dense(metal.Material.Density!.Value));
        return material.Row switch
        {
            { Density: not null } row => AccountInput.By(name, value, new Subject(SubjectKind.Material, row.Name, ShopField.Density)),
            { CubeDensity: not null } row => new(name, value, new Subject(SubjectKind.Material, row.Name, ShopField.CubeMass), "from the cube that was weighed"),
            _ => AccountInput.By("pattern density", value, Subject.Setting(SettingName.PatternDensity)),
        };
    }

    private static string LearntWords(PieceMetal metal) => metal.Learnt is null ? "" : " × learnt from castings";

    private static string LearntNumber(PieceMetal metal) => metal.Learnt is { } learnt ? $" × {Figures.Factor(learnt.Factor)}" : "";

    private static IEnumerable<AccountInput> Learnt(PieceMetal metal) => metal.Learnt is not { } learnt ? []
        : [AccountInput.Reckoned("learnt from castings", Figures.Factor(learnt.Factor), $"{Say.Count(learnt.Castings, "line", "lines")} in which Metal each was typed")];

    private static string Alloy(PieceMetal metal) => Figures.Dense(metal.Alloy.Known!.Density!.Value);

    private static AccountInput AlloyDensity(PieceMetal metal) => AlloyInputs.Density(metal.Alloy.Known!);
}
