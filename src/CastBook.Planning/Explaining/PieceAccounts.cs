using CastBook.Planning.Findings;
using CastBook.Planning.Flasks;
using CastBook.Planning.Metals;
using CastBook.Planning.Shops;
using CastBook.Planning.Words;
using UnitsNet;

namespace CastBook.Planning.Explaining;

/// <summary>How the answers of a row came to be.</summary>
/// <param name="night">The night.</param>
/// <param name="plan">Its plan.</param>
/// <param name="flasks">The accounts of its flasks.</param>
internal sealed class PieceAccounts(Night night, NightPlan plan, FlaskAccounts flasks)
{
    /// <summary>Metal of one piece; nothing where it is not known.</summary>
    /// <param name="metal">The row's metal.</param>
    public Account? MetalEach(PieceMetal metal)
    {
        var piece = metal.Piece;
        if (metal.Each is not { } each)
        {
            return null;
        }

        if (piece.MetalEach is not null)
        {
            return new(PieceAccountWords.MetalEach, PieceAccountWords.AsAPersonTyped, "", each.Grams, "g")
            {
                Inputs = metal.WorkedOut is { } worked ? [AccountInput.Reckoned(PieceAccountWords.WeightOrVolumeComesTo, worked, PieceAccountWords.WorkedOut)] : [],
            };
        }

        return piece.PatternVolume is { } volume ? OfVolume(metal, volume, each)
            : piece.Weight is not { } weight ? null
            : MeaningOf(piece) == WeightMeaning.FinishedMetal
                ? new(PieceAccountWords.MetalEach, PieceAccountWords.FinishedAsTyped, "", each.Grams, "g") { Inputs = [Weight(piece, weight), OfMeaning(piece)] }
                : OfWeight(metal, weight, each);
    }

    private static Account OfVolume(PieceMetal metal, Volume volume, Mass each) => new(
        PieceAccountWords.MetalEach, PieceAccountWords.ByVolume(metal.Learnt is not null), $"{Figures.Millilitres(volume)} × {Alloy(metal)}{LearntNumber(metal)}", each.Grams, "g")
    {
        Inputs =
        [
            AccountInput.By(PieceAccountWords.PatternVolume, Figures.Millilitres(volume), Subject.Piece(metal.Piece.Id, PieceField.PatternVolume)), AlloyDensity(metal),
            .. Learnt(metal),
        ],
        ValidFor = PieceAccountWords.EqualVolumes,
    };

    private Account OfWeight(PieceMetal metal, Mass weight, Mass each)
    {
        var supports = night.Shop.Settings.SupportsShare is { DecimalFractions: > 0 } share ? share : (Ratio?)null;
        var numbers = supports is { } cut ? $" × (1 − {Figures.Plain(cut.DecimalFractions)})" : "";
        return new(
            PieceAccountWords.MetalEach, PieceAccountWords.ByWeight(supports is not null, metal.Learnt is not null),
            $"{Figures.Grams(weight)}{numbers} ÷ {Figures.Dense(metal.Material.Density!.Value)} × {Alloy(metal)}{LearntNumber(metal)}", each.Grams, "g")
        {
            Inputs =
            [
                Weight(metal.Piece, weight),
                OfMeaning(metal.Piece),
                .. supports is { } said
                    ? [AccountInput.By(PieceAccountWords.SupportsShare, Say.Percent(said), Subject.Setting(SettingName.SupportsShare))] : Array.Empty<AccountInput>(),
                PatternDensity(metal),
                AlloyDensity(metal),
                .. Learnt(metal),
            ],
            ValidFor = PieceAccountWords.EqualVolumes,
        };
    }

    /// <summary>Metal of all pieces of the row; nothing where it is not known.</summary>
    /// <param name="metal">The row's metal.</param>
    public static Account? Metal(PieceMetal metal) => metal is { Each: { } each, Piece.Quantity: { } quantity }
        ? new(PieceAccountWords.Metal, PieceAccountWords.EachTimesQuantity, $"{Figures.Grams(each)} × {Figures.Plain(quantity)}", (each * quantity).Grams, "g")
        {
            Inputs =
            [
                AccountInput.Reckoned(PieceAccountWords.MetalOfOne, each, AccountWords.BesideIt),
                AccountInput.By(PieceAccountWords.Quantity, Figures.Plain(quantity), Subject.Piece(metal.Piece.Id, PieceField.Quantity)),
            ],
            ValidFor = PieceAccountWords.PiecesAlone,
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

        var inputs = new List<AccountInput> { AccountInput.By(PieceAccountWords.Alloy, piece.Alloy ?? "", Subject.Piece(piece.Id, PieceField.Alloy)) };
        if (piece.KeepInFlask is { } wish)
        {
            inputs.Add(AccountInput.By(PieceAccountWords.KeepInFlask, wish, Subject.Piece(piece.Id, PieceField.KeepInFlask)));
        }

        if (piece.Box is { } box)
        {
            var size = night.Shop.Settings.Units.Length;
            var thickness = box.Thickness is { } third ? $" × {size.Say(third)}" : "";
            inputs.Add(AccountInput.By(
                PieceAccountWords.Size, $"{size.Say(box.Length)} × {size.Say(box.Width)}{thickness}", Subject.Piece(piece.Id, PieceField.Length)));
        }

        inputs.AddRange(shares.Select(s => flasks.Flask(s.Flask)).OfType<FlaskPlan>()
            .Select(f => AccountInput.By(AccountWords.Flask(f.Letter), f.Size.Name, new Subject(SubjectKind.FlaskSize, f.Size.Name))));
        inputs.Add(night.Shop.Settings.OrderOfWishes is { } order
            ? AccountInput.By(SettingName.OrderOfWishes, PieceAccountWords.InOrder(order), Subject.Setting(SettingName.OrderOfWishes))
            : AccountInput.Reckoned(SettingName.OrderOfWishes, PieceAccountWords.InOrder(FlaskCost.Usual), PieceAccountWords.AsUsual));
        inputs.AddRange(plan.Change is { IsForced: false } change ? BothAnswers(change) : []);
        return new(PieceAccountWords.Flask, PieceAccountWords.FlaskRule, "", null, "")
        {
            Inputs = inputs,
            ValidFor = PieceAccountWords.WhatFits,
        };
    }

    /// <summary>Powder and water of the row's flask; nothing where it is in none, or in one whose powder is not known.</summary>
    /// <param name="piece">The row.</param>
    public Account? Mix(Piece piece)
    {
        var shares = plan.Pieces[piece.Id].Flasks;
        if (shares.Count > 1)
        {
            return new(AccountWords.Mix, PieceAccountWords.SeveralFlasks, "", null, "");
        }

        return shares.Count == 1 && flasks.Flask(shares[0].Flask) is not null
            && flasks.Powder(shares[0].Flask) is { } powder && flasks.Water(shares[0].Flask) is { } water
            ? powder with { Name = AccountWords.Mix, Words = PieceAccountWords.MixOf(shares[0].Flask, powder.Words, water.Words) }
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
        return flasks.Burnout(letter) is { } account ? account with { Words = PieceAccountWords.BurnoutOf(letter, account.Words) } : null;
    }

    // What stood in the book, and what planning afresh makes of it.
    private IEnumerable<AccountInput> BothAnswers(PlanChange change)
    {
        var choice = night.Shop.Settings.WhenLittleChanged;
        yield return AccountInput.By(SettingName.WhenLittleChanged, PieceAccountWords.Choice(choice), Subject.Setting(SettingName.WhenLittleChanged));
        yield return AccountInput.Reckoned(PieceAccountWords.With(Stability.Keep), PieceAccountWords.NothingMoves, PieceAccountWords.EveryPieceStays);
        yield return AccountInput.Reckoned(PieceAccountWords.With(change.IsKept || choice == Stability.Keep ? Stability.Best : choice), change.Words(night.Shop.Settings.Units.Water), PieceAccountWords.PlannedAfresh);
    }

    private WeightMeaning MeaningOf(Piece piece) => piece.WeightIsOf != WeightMeaning.Unknown ? piece.WeightIsOf
        : night.WeightsAreOf != WeightMeaning.Unknown ? night.WeightsAreOf
        : night.Shop.Settings.WeightsAreOf;

    private AccountInput OfMeaning(Piece piece)
    {
        var meaning = MeaningOf(piece);
        var said = meaning == WeightMeaning.FinishedMetal ? PieceAccountWords.FinishedMetal : PieceAccountWords.Pattern;
        return night.Shop.Settings.WeightsAreOf == meaning
            ? AccountInput.By(PieceAccountWords.WeightsAreOf, said, Subject.Setting(SettingName.WeightsAreOf))
            : AccountInput.Reckoned(PieceAccountWords.WeightsAreOf, said, PieceAccountWords.HeadingOfWeights);
    }

    private static AccountInput Weight(Piece piece, Mass weight) =>
        AccountInput.By(PieceAccountWords.Weight, weight, Subject.Piece(piece.Id, PieceField.PatternMass));

    private static AccountInput PatternDensity(PieceMetal metal)
    {
        var (material, name, value) = (metal.Material, AccountWords.DensityOf(metal.Material.Name), Figures.Dense(metal.Material.Density!.Value));
        return material.Row switch
        {
            { Density: not null } row => AccountInput.By(name, value, new Subject(SubjectKind.Material, row.Name, ShopField.Density)),
            { CubeDensity: not null } row => new(name, value, new Subject(SubjectKind.Material, row.Name, ShopField.CubeMass), PieceAccountWords.FromCube),
            _ => AccountInput.By(PieceAccountWords.PatternDensity, value, Subject.Setting(SettingName.PatternDensity)),
        };
    }

    private static string LearntNumber(PieceMetal metal) => metal.Learnt is { } learnt ? $" × {Figures.Factor(learnt.Factor)}" : "";

    private static IEnumerable<AccountInput> Learnt(PieceMetal metal) => metal.Learnt is not { } learnt ? []
        : [AccountInput.Reckoned(PieceAccountWords.LearntFromCastings, Figures.Factor(learnt.Factor), PieceAccountWords.LinesTyped(learnt.Castings))];

    private static string Alloy(PieceMetal metal) => Figures.Dense(metal.Alloy.Known!.Density!.Value);

    private static AccountInput AlloyDensity(PieceMetal metal) => AlloyInputs.Density(metal.Alloy.Known!);
}
