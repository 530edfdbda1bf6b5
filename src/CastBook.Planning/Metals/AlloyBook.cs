using CastBook.Casting.Metals;
using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using UnitsNet;

namespace CastBook.Planning.Metals;

/// <summary>Finds the alloy a name means: the shop's rows first, then its answers, then the built-in alloys.</summary>
internal sealed class AlloyBook(Shop shop, FindingList findings)
{
    private static readonly string[] Poisonous = ["Be", "Cd", "Pb"];

    private readonly Dictionary<string, (AlloyAnswer Answer, string Written)> answers = new(StringComparer.Ordinal);
    private readonly Dictionary<string, KnownAlloy> known = new(StringComparer.Ordinal);

    /// <summary>The alloys met so far, in order of first appearance.</summary>
    public IReadOnlyList<KnownAlloy> Met => [.. known.Values.OrderBy(a => a.Order)];

    /// <summary>What a name in the list means; a name that stays open has one finding, about all its rows.</summary>
    /// <param name="written">The name as written.</param>
    /// <param name="pieceId">The row that writes it.</param>
    public AlloyAnswer Resolve(string written, int pieceId)
    {
        var key = AlloyNames.Normal(written);
        if (!answers.TryGetValue(key, out var answer))
        {
            answers[key] = answer = (Settle(written.Trim()), written.Trim());
        }

        if (answer.Answer.Known is { } alloy)
        {
            Faults(alloy, pieceId);
        }
        else
        {
            findings.Add(Open(answer.Written, pieceId));
        }

        return answer.Answer;
    }

    /// <summary>The density of a metal named beside a crucible, or nothing; makes no finding.</summary>
    /// <param name="metal">The metal as written; plain <c>gold</c> and <c>silver</c> mean the fine metals here, as makers mean them.</param>
    public Density? DensityOf(string metal)
    {
        var row = Row(metal);
        if (row?.Alloy.Density is { } own)
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
        var builtIn = alloy.Row is { } row ? BuiltInFor(row) : alloy.Alloy;
        return AlloyNames.Normal(written) == AlloyNames.Normal(alloy.Name)
            || (builtIn is not null && BuiltInAlloys.Named(written).Any(a => a.Name == builtIn.Name));
    }

    private AlloyAnswer Settle(string written)
    {
        if (Row(written) is { } row)
        {
            return OfRow(row, written);
        }

        if (shop.Settings.AlloyMeanings.TryGetValue(written, out var meaning) && !string.IsNullOrWhiteSpace(meaning))
        {
            return Row(meaning) is { } meant ? OfRow(meant, meaning) : OfBuiltIn(BuiltInAlloys.Named(meaning), meaning.Trim());
        }

        return OfBuiltIn(BuiltInAlloys.Named(written), written);
    }

    private AlloyAnswer OfBuiltIn(IReadOnlyList<Alloy> choices, string written)
    {
        if (choices.Count > 1)
        {
            // The shop has exactly one of them on its sheet: that is the one it means.
            var owned = shop.Alloys.Where(r => BuiltInFor(r) is { } b && choices.Contains(b)).ToList();
            if (owned.Count == 1)
            {
                return OfRow(owned[0], owned[0].Alloy.Name);
            }

            return Undecided(choices);
        }

        if (choices.Count == 0)
        {
            return AlloyAnswer.Nothing;
        }

        // A shop row under another name of the same alloy carries its stock and its own values.
        var same = shop.Alloys.Where(r => BuiltInFor(r) == choices[0]).ToList();
        return same.Count == 1 ? OfRow(same[0], same[0].Alloy.Name) : Keep(choices[0].Name, written, choices[0], null);
    }

    private AlloyAnswer OfRow(ShopAlloy row, string written)
    {
        var builtIn = BuiltInFor(row);
        var choices = BuiltInAlloys.Named(row.Alloy.Name);
        if (builtIn is null && choices.Count > 1 && row.Alloy.Density is null && row.Alloy.Composition is null)
        {
            return Undecided(choices);
        }

        var alloy = builtIn is null ? row.Alloy : Fill(row.Alloy, builtIn);
        return Keep(row.Alloy.Name, written, alloy, row);
    }

    private static AlloyAnswer Undecided(IReadOnlyList<Alloy> choices)
    {
        var densities = choices.Where(c => c.Density is not null).Select(c => c.Density!.Value).ToList();
        return densities.Count < choices.Count
            ? AlloyAnswer.Nothing with { IsQuestion = true }
            : new(null, densities.Min(), densities.Max()) { IsQuestion = true };
    }

    private AlloyAnswer Keep(string key, string written, Alloy alloy, ShopAlloy? row)
    {
        key = AlloyNames.Normal(key);
        if (!known.TryGetValue(key, out var entry))
        {
            var name = row is null ? written : row.Alloy.Name.Trim();
            entry = new KnownAlloy(name, WithDensity(alloy, name), row, known.Count) { Refused = Bad(alloy).Count > 0 };
            known[key] = entry;
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
            findings.Add(Catalogue.AlloyDensityFromComposition.At(About(name, ShopField.Density), name, Say.Dense(estimate.Density)));
        }

        return alloy with { Density = estimate.Density };
    }

    // Said of each row; the repeats fold into one finding about the alloy and all its rows.
    private void Faults(KnownAlloy alloy, int pieceId)
    {
        var row = Subject.Piece(pieceId, PieceField.Alloy);
        if (alloy.Density is null)
        {
            findings.Add(Catalogue.AlloyDensityMissing.At([About(alloy.Name, ShopField.Density), row], alloy.Name));
        }

        if (alloy.Refused)
        {
            var names = Bad(alloy.Alloy).Select(b => b switch { "Be" => "beryllium", "Cd" => "cadmium", _ => "lead" }).ToList();
            findings.Add(Catalogue.AlloyRefused.At([About(alloy.Name, ShopField.Composition), row], alloy.Name, Say.Together(names)));
        }
    }

    private static List<string> Bad(Alloy alloy) => [.. Poisonous.Where(symbol => alloy.Composition?.PerMille(symbol) > 0)];

    // What the shop's row leaves blank comes from the one built-in alloy of its name; a composition of its own keeps its own density.
    private static Alloy Fill(Alloy own, Alloy builtIn) => own with
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
        NeedsHighTemperatureInvestment = own.NeedsHighTemperatureInvestment || builtIn.NeedsHighTemperatureInvestment,
    };

    private Alloy? BuiltInFor(ShopAlloy row)
    {
        var name = shop.Settings.AlloyMeanings.TryGetValue(row.Alloy.Name.Trim(), out var meaning) && !string.IsNullOrWhiteSpace(meaning)
            ? meaning
            : row.Alloy.Name;
        var named = BuiltInAlloys.Named(name);
        return named.Count == 1 ? named[0] : null;
    }

    private ShopAlloy? Row(string written)
    {
        var key = AlloyNames.Normal(written);
        return key.Length == 0 ? null : shop.Alloys.FirstOrDefault(r => AlloyNames.Normal(r.Alloy.Name) == key);
    }

    private Finding Open(string written, int pieceId)
    {
        var meaning = shop.Settings.AlloyMeanings.TryGetValue(written, out var answer) && !string.IsNullOrWhiteSpace(answer) ? answer.Trim() : written;
        var choices = BuiltInAlloys.Named(meaning);
        var subject = Subject.Piece(pieceId, PieceField.Alloy);
        if (choices.Count > 1)
        {
            return Catalogue.AlloyAmbiguous.At(
                [Subject.Setting(SettingName.AlloyMeaning(written)), subject], written, Say.Choice([.. choices.Select(c => $"\"{c.Name}\"")]));
        }

        var near = AlloyNames.Nearest(meaning, shop.Alloys.Select(r => r.Alloy.Name).Concat(BuiltInAlloys.All.Select(a => a.Name)));
        return Catalogue.AlloyUnknown.At(subject, meaning, Say.Together([.. near.Select(n => $"\"{n}\"")]));
    }

    private static Subject About(string name, string field) => new(SubjectKind.Alloy, name, field);
}
