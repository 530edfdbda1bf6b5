using CastBook.Casting.Burnout;
using CastBook.Casting.Metals;
using CastBook.Casting.Pouring;
using CastBook.Planning.Findings;
using CastBook.Planning.Flasks;
using CastBook.Planning.Metals;
using CastBook.Planning.Shops;
using CastBook.Planning.Words;
using UnitsNet;

namespace CastBook.Planning.Pouring;

/// <summary>Metal and flask temperature and the wait before the quench: the alloy's own numbers, or a question.</summary>
internal sealed class PourAnswers(Assumptions assumed, bool mayBeGypsum)
{
    // Below this nickel is an impurity and not what makes the gold white, in parts per thousand.
    private const double LeastNickel = 20;

    /// <summary>Asks for the temperatures that a piece will need, before its flask is known.</summary>
    /// <param name="alloy">The alloy.</param>
    /// <param name="coldest">The coldest band that the piece allows.</param>
    /// <param name="hottest">The hottest band that the piece allows.</param>
    public void Ask(KnownAlloy alloy, SectionBand coldest, SectionBand hottest)
    {
        if (alloy.Alloy.MetalTemperature is null)
        {
            AskMetal(alloy);
        }

        Flask(alloy, coldest, hottest);
    }

    /// <summary>The metal temperature of an alloy; nothing where it is not known, which has a finding.</summary>
    /// <param name="alloy">The alloy.</param>
    /// <param name="method">How the flask is cast.</param>
    public Temperature? Metal(KnownAlloy alloy, CastingMethod method)
    {
        if (alloy.Alloy.MetalTemperature is not { } metal)
        {
            AskMetal(alloy);
            return null;
        }

        var (least, most) = PourRange.Metal(alloy.Alloy.Liquidus);
        if (metal <= least || metal > most)
        {
            var why = alloy.Alloy.Liquidus is null ? PourFindingWords.PouredBetween(assumed.Units.Temperature.Say(least), assumed.Units.Temperature.Say(most))
                : metal > most ? PourFindingWords.MoreThanNeeded(assumed.Units.Temperature.Say(least), assumed.Units.Temperature.Say(most))
                : PourFindingWords.NotAllLiquid(assumed.Units.Temperature.Say(least));
            Once("metal-temperature", alloy, ShopField.MetalTemperature, s => Catalogue.MetalTemperatureImpossible.At(s, alloy.Name, assumed.Units.Temperature.Say(metal), why));
            return null;
        }

        Superheat.Compare(alloy, metal, method, assumed);
        if (mayBeGypsum && metal > KilnLimits.GypsumMetalCheckAbove)
        {
            Once("metal-hot", alloy, ShopField.MetalTemperature, s => Catalogue.MetalHotForGypsum.At(s, alloy.Name, assumed.Units.Temperature.Say(metal)));
        }

        return metal;
    }

    /// <summary>The flask temperature for pieces of a range of bands: the ordinary one where all allow it.</summary>
    /// <param name="alloy">The alloy.</param>
    /// <param name="coldest">The coldest band that all of its pieces allow.</param>
    /// <param name="hottest">The hottest band that all of its pieces allow.</param>
    public Temperature? Flask(KnownAlloy alloy, SectionBand coldest, SectionBand hottest)
    {
        var (value, field, work, column) = BandOf(coldest, hottest) switch
        {
            SectionBand.Fine => (alloy.Alloy.FlaskTemperatureFine, ShopField.FlaskTemperatureFine, PourFindingWords.FineWork, "fine"),
            SectionBand.Heavy => (alloy.Alloy.FlaskTemperatureHeavy, ShopField.FlaskTemperatureHeavy, PourFindingWords.HeavyWork, "heavy"),
            _ => (alloy.Alloy.FlaskTemperatureOrdinary, ShopField.FlaskTemperatureOrdinary, PourFindingWords.OrdinaryWork, "ordinary"),
        };
        if (value is not { } mould)
        {
            Once(field, alloy, field, s => Catalogue.FlaskTemperatureMissing.At(s, alloy.Name, work, column));
            return null;
        }

        var limit = PourRange.HottestMould(alloy.Alloy.Solidus, mayBeGypsum);
        if (mould < limit)
        {
            return mould;
        }

        var why = alloy.Alloy.Solidus is { } solid && solid <= limit ? PourFindingWords.NotSolidAbove(assumed.Units.Temperature.Say(limit))
            : PourFindingWords.InvestmentBears(assumed.Units.Temperature.Say(limit));
        Once(field, alloy, field, s => Catalogue.FlaskTemperatureImpossible.At(s, alloy.Name, assumed.Units.Temperature.Say(mould), why, column));
        return null;
    }

    /// <summary>The band a flask is held for: the ordinary one where all of its pieces allow it.</summary>
    /// <param name="coldest">The coldest band that all of its pieces allow.</param>
    /// <param name="hottest">The hottest band that all of its pieces allow.</param>
    public static SectionBand BandOf(SectionBand coldest, SectionBand hottest) => coldest == SectionBand.Fine ? SectionBand.Fine
        : hottest == SectionBand.Heavy ? SectionBand.Heavy
        : SectionBand.Ordinary;

    /// <summary>The wait before the quench in a flask size; nothing where it is not known, which has a finding.</summary>
    /// <param name="alloy">The alloy.</param>
    /// <param name="size">The flask size.</param>
    public Duration? Quench(KnownAlloy alloy, UsableSize size)
    {
        Caution(alloy);
        QuenchWaits waits = alloy.Alloy.QuenchAfter;
        var value = FlaskClasses.Of(size.Size.InsideDiameter!.Value, size.Size.Height!.Value) switch
        {
            FlaskClass.Small => waits.Small,
            FlaskClass.Medium => waits.Medium,
            FlaskClass.Large => waits.Large,
            _ => null,
        };
        if (value is null)
        {
            Once("quench-wait", alloy, ShopField.QuenchAfter, s => Catalogue.QuenchMissing.At(s, alloy.Name));
        }

        return value;
    }

    // Two families for which "as the minutes say" is not enough.
    private void Caution(KnownAlloy alloy)
    {
        var gold = alloy.Alloy.Composition?.PerMille("Au") ?? 0;
        if (alloy.IsRedGold)
        {
            Once("red-gold", alloy, ShopField.QuenchAfter, s => Catalogue.RedGoldNotSlow.At(s, alloy.Name));
        }
        else if (gold > 0 && alloy.Alloy.Composition!.PerMille("Ni") >= LeastNickel)
        {
            Once("nickel-gold", alloy, ShopField.QuenchAfter, s => Catalogue.NickelGoldNotHurried.At(s, alloy.Name));
        }
    }

    private void AskMetal(KnownAlloy alloy) =>
        Once("metal-temperature", alloy, ShopField.MetalTemperature, s => Catalogue.MetalTemperatureMissing.At(s, alloy.Name));

    // Of what stands there and cannot be read, who read it has said so.
    private void Once(string what, KnownAlloy alloy, string field, Func<Subject, Finding> finding)
    {
        if (alloy.Row?.CannotRead(field) != true)
        {
            assumed.Once($"pour-{what} {alloy.Name}", () => finding(new Subject(SubjectKind.Alloy, alloy.Name, field)));
        }
    }
}
