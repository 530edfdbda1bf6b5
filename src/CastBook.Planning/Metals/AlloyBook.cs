using CastBook.Casting.Metals;
using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using UnitsNet;

namespace CastBook.Planning.Metals;

/// <summary>Finds the alloy a name means: the shop's rows first, then its answers, then the built-in alloys.</summary>
internal sealed class AlloyBook(Shop shop, FindingList findings)
{
    private readonly AlloyMeanings meanings = new(shop);
    private readonly OpenNames names = new(new(shop));
    private readonly Dictionary<string, (AlloyAnswer Answer, OpenName? Name)> answers = new(StringComparer.Ordinal);
    private readonly Dictionary<string, KnownAlloy> known = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>What a name in the list means.</summary>
    /// <param name="written">The name as written.</param>
    /// <param name="pieceId">The row that writes it.</param>
    public AlloyAnswer Resolve(string written, int pieceId)
    {
        if (!answers.TryGetValue(written, out var answer))
        {
            answers[written] = answer = Settle(written.Trim());
        }

        answer.Name?.Rows.Add(pieceId);
        if (answer.Answer.Known is { } alloy)
        {
            Faults(alloy, pieceId);
        }

        return answer.Answer;
    }

    /// <summary>Asks for the names that stayed open, each once for all its rows.</summary>
    public void Ask() => names.Ask(findings);

    /// <summary>The density of a metal named beside a crucible, or nothing; makes no finding.</summary>
    /// <param name="metal">The metal as written; plain <c>gold</c> and <c>silver</c> mean the fine metals here, as makers mean them.</param>
    public Density? DensityOf(string metal)
    {
        if (meanings.Of(metal) is { IsOnlySuch: false, Row.Alloy.Density: { } own })
        {
            return own;
        }

        // A maker's rating for a bare metal means the fine one, although a caster's "silver" does not.
        var fine = BuiltInAlloys.Named("fine " + metal.Trim());
        if (fine.Count == 1)
        {
            return fine[0].Density;
        }

        var named = BuiltInAlloys.Named(metal);
        return named.Count == 1 ? named[0].Density : null;
    }

    /// <summary>Whether a name on a crucible's list means the alloy.</summary>
    /// <param name="written">The name as written.</param>
    /// <param name="alloy">The alloy.</param>
    public bool Means(string written, KnownAlloy alloy)
    {
        var builtIn = alloy.Row is { } row ? meanings.BuiltInFor(row) : alloy.Alloy;
        return AlloyWords.Key(written) == AlloyWords.Key(alloy.Name)
            || (builtIn is not null && BuiltInAlloys.Named(written).Any(a => a.Name == builtIn.Name));
    }

    private (AlloyAnswer Answer, OpenName? Name) Settle(string written)
    {
        var meaning = meanings.Of(written);
        var answer = meaning.Row is { } row ? OfRow(row)
            : meaning.BuiltIn is { } builtIn ? Keep(builtIn.Name, meanings.Answer(written) ?? written, builtIn, null)
            : meaning.Choices.Count > 0 ? Undecided(meaning.Choices)
            : AlloyAnswer.Nothing;
        if (answer.IsQuestion && meaning.Row is { } bare)
        {
            meaning = new(null, null, BuiltInAlloys.Named(bare.Alloy.Name));
        }

        var isOpen = answer.Known is null || meaning.IsOnlySuch;
        return (answer, isOpen ? names.Of(AlloyWords.Key(written), written, meaning) : null);
    }

    private AlloyAnswer OfRow(ShopAlloy row)
    {
        var builtIn = meanings.BuiltInFor(row);
        var choices = BuiltInAlloys.Named(row.Alloy.Name);
        if (builtIn is null && choices.Count > 1 && row.Alloy.Density is null && row.Alloy.Composition is null)
        {
            return Undecided(choices);
        }

        var alloy = builtIn is null ? row.Alloy : Fill(row, builtIn);
        return Keep(row.Alloy.Name.Trim(), row.Alloy.Name.Trim(), alloy, row);
    }

    private static AlloyAnswer Undecided(IReadOnlyList<Alloy> choices)
    {
        var densities = choices.Where(c => c.Density is not null).Select(c => c.Density!.Value).ToList();
        return densities.Count < choices.Count
            ? AlloyAnswer.Nothing with { IsQuestion = true }
            : new(null, densities.Min(), densities.Max()) { IsQuestion = true };
    }

    private AlloyAnswer Keep(string key, string name, Alloy alloy, ShopAlloy? row)
    {
        if (!known.TryGetValue(key, out var entry))
        {
            var whyNot = AlloyDensities.WhyNot(alloy);
            entry = new KnownAlloy(name, whyNot is null && row?.CannotRead(ShopField.Density) != true ? WithDensity(alloy, name) : alloy with { Density = null }, row, known.Count)
            {
                Refused = Bad(alloy, row).Count > 0,
                Impossible = whyNot is null ? null : (alloy.Density!.Value, whyNot),
            };
            known[key] = entry;
            AlloyCautions.Add(entry, findings);
        }

        return new(entry, entry.Density, entry.Density);
    }

    private Alloy WithDensity(Alloy alloy, string name)
    {
        if (alloy.Density is not null)
        {
            return alloy;
        }

        if (alloy.Composition is not { } composition)
        {
            return alloy;
        }

        var estimate = DensityFromComposition.Compute(composition);
        if (!estimate.Reliable)
        {
            findings.Add(Catalogue.AlloyDensityFromComposition.At(
                About(name, ShopField.Density), name, Say.Dense(estimate.Density), AlloyCautions.Names(estimate.Doubtful), AlloyCautions.HowLow(estimate)));
        }

        return alloy with { Density = estimate.Density, Sources = alloy.Sources with { Density = NumberSource.MixingRule } };
    }

    // Said of each row; the repeats fold into one finding about the alloy and all its rows.
    private void Faults(KnownAlloy alloy, int pieceId)
    {
        var row = Subject.Piece(pieceId, PieceField.Alloy);
        if (alloy.Density is null && !alloy.Refused)
        {
            Subject[] places = [About(alloy.Name, ShopField.Density), row];
            findings.Add(alloy.Impossible is { } given
                ? Catalogue.AlloyDensityImpossible.At(places, alloy.Name, Say.Dense(given.Density), given.Why)
                : Catalogue.AlloyDensityMissing.At(places, alloy.Name));
        }

        if (alloy.Refused)
        {
            var names = Bad(alloy.Alloy, alloy.Row).Select(element => element.Name);
            findings.Add(Catalogue.AlloyRefused.At([About(alloy.Name, ShopField.Composition), row], alloy.Name, Say.Together([.. names])));
        }
    }

    // What cannot be read for a slip in a number is no less poisonous.
    private static IReadOnlyList<Element> Bad(Alloy alloy, ShopAlloy? row) =>
        row is { Poisons: { Count: > 0 } poisons } ? poisons : alloy.Composition?.With(ElementHazard.Poison) ?? [];

    // What the shop's row leaves blank comes from the one built-in alloy of its name; a composition of its own keeps its own density, and
    // one that is another than the built-in, or that nobody can read, keeps its own melting range, temperatures and waits too: a little zinc
    // moves them all.
    private static Alloy Fill(ShopAlloy row, Alloy builtIn)
    {
        var own = row.Alloy;
        var isOther = row.CannotRead(ShopField.Composition) || (own.Composition is { } parts && builtIn.Composition is { } usual && !parts.IsLike(usual));
        return isOther
            ? own with { NeedsHighTemperatureInvestment = own.NeedsHighTemperatureInvestment || builtIn.NeedsHighTemperatureInvestment }
            : Filled(own, Readable(row, builtIn));
    }

    // What stands in the row and cannot be read is not what is usual.
    private static Alloy Readable(ShopAlloy row, Alloy builtIn)
    {
        return builtIn with
        {
            Density = Unless(ShopField.Density, builtIn.Density),
            Solidus = Unless(ShopField.Solidus, builtIn.Solidus),
            Liquidus = Unless(ShopField.Liquidus, builtIn.Liquidus),
            MetalTemperature = Unless(ShopField.MetalTemperature, builtIn.MetalTemperature),
            FlaskTemperatureFine = Unless(ShopField.FlaskTemperatureFine, builtIn.FlaskTemperatureFine),
            FlaskTemperatureOrdinary = Unless(ShopField.FlaskTemperatureOrdinary, builtIn.FlaskTemperatureOrdinary),
            FlaskTemperatureHeavy = Unless(ShopField.FlaskTemperatureHeavy, builtIn.FlaskTemperatureHeavy),
            QuenchAfter = row.CannotRead(ShopField.QuenchAfter) ? QuenchWaits.None : builtIn.QuenchAfter,
        };

        T? Unless<T>(string field, T? usual)
            where T : struct => row.CannotRead(field) ? null : usual;
    }

    private static Alloy Filled(Alloy own, Alloy builtIn) => own with
    {
        Composition = own.Composition ?? builtIn.Composition,
        Density = own.Density ?? (own.Composition is null ? builtIn.Density : null),
        Solidus = own.Solidus ?? builtIn.Solidus,
        Liquidus = own.Liquidus ?? builtIn.Liquidus,
        MetalTemperature = own.MetalTemperature ?? builtIn.MetalTemperature,
        FlaskTemperatureFine = own.FlaskTemperatureFine ?? builtIn.FlaskTemperatureFine,
        FlaskTemperatureOrdinary = own.FlaskTemperatureOrdinary ?? builtIn.FlaskTemperatureOrdinary,
        FlaskTemperatureHeavy = own.FlaskTemperatureHeavy ?? builtIn.FlaskTemperatureHeavy,
        QuenchAfter = new(
            own.QuenchAfter.Small ?? builtIn.QuenchAfter.Small,
            own.QuenchAfter.Medium ?? builtIn.QuenchAfter.Medium,
            own.QuenchAfter.Large ?? builtIn.QuenchAfter.Large),
        Sources = SourcesOf(own, builtIn.Sources),
        NeedsHighTemperatureInvestment = own.NeedsHighTemperatureInvestment || builtIn.NeedsHighTemperatureInvestment,
    };

    private static AlloySources SourcesOf(Alloy own, AlloySources builtIn) => new()
    {
        Composition = own.Composition is null ? builtIn.Composition : null,
        Density = own.Density is null && own.Composition is null ? builtIn.Density : null,
        Melting = own.Solidus is null && own.Liquidus is null ? builtIn.Melting : null,
        MetalTemperature = own.MetalTemperature is null ? builtIn.MetalTemperature : null,
        FlaskTemperature = (own.FlaskTemperatureFine ?? own.FlaskTemperatureOrdinary ?? own.FlaskTemperatureHeavy) is null ? builtIn.FlaskTemperature : null,
        QuenchSmall = own.QuenchAfter.Small is null ? builtIn.QuenchSmall : null,
        QuenchMedium = own.QuenchAfter.Medium is null ? builtIn.QuenchMedium : null,
        QuenchLarge = own.QuenchAfter.Large is null ? builtIn.QuenchLarge : null,
    };

    private static Subject About(string name, string field) => new(SubjectKind.Alloy, name, field);
}
