using CastBook.Casting.Burnout;
using CastBook.Casting.Metals;
using CastBook.Planning.Findings;
using CastBook.Planning.Flasks;
using CastBook.Planning.Pouring;
using CastBook.Planning.Shops;
using UnitsNet;

namespace CastBook.Planning.Explaining;

/// <summary>Where a flask's temperatures and its wait before the quench come from.</summary>
internal static class PourAccounts
{
    /// <summary>The metal temperature; nothing where it is not known.</summary>
    /// <param name="plan">The flask as answered.</param>
    /// <param name="work">The flask as settled.</param>
    /// <param name="unit">The scale of temperatures.</param>
    public static Account? Metal(FlaskPlan plan, FlaskWork work, WrittenTemperature unit) => plan.MetalTemperature is { } metal
        ? OfAlloy(
            "Metal temperature", "the alloy's own", unit.Exactly(metal), unit.Name, "metal temperature", unit.Say(metal), work, ShopField.MetalTemperature,
            work.Alloy.Row?.Alloy.MetalTemperature is not null, work.Alloy.Alloy.Sources.MetalTemperature, "this alloy as its maker made it; a data sheet that says otherwise comes first") with
        { Rounded = WholeDegree(unit) }
        : null;

    /// <summary>The flask temperature; nothing where it is not known.</summary>
    /// <param name="plan">The flask as answered.</param>
    /// <param name="work">The flask as settled.</param>
    /// <param name="unit">The scale of temperatures.</param>
    public static Account? Flask(FlaskPlan plan, FlaskWork work, WrittenTemperature unit)
    {
        if (plan.FlaskTemperature is not { } flask)
        {
            return null;
        }

        var (own, band) = (work.Alloy.Row?.Alloy, PourAnswers.BandOf(work.Bands.Coldest, work.Bands.Hottest));
        var (typed, field, word) = band switch
        {
            Casting.Pouring.SectionBand.Fine => (own?.FlaskTemperatureFine, ShopField.FlaskTemperatureFine, "fine"),
            Casting.Pouring.SectionBand.Heavy => (own?.FlaskTemperatureHeavy, ShopField.FlaskTemperatureHeavy, "heavy"),
            _ => (own?.FlaskTemperatureOrdinary, ShopField.FlaskTemperatureOrdinary, "ordinary"),
        };
        return OfAlloy(
            "Flask temperature", $"the alloy's own for {word} sections", unit.Exactly(flask), unit.Name, "flask temp " + word, unit.Say(flask), work, field,
            typed is not null, work.Alloy.Alloy.Sources.FlaskTemperature, $"{word} sections, as the finest and heaviest sections of its pieces say") with
        { Rounded = WholeDegree(unit) };
    }

    /// <summary>The wait before the quench; nothing where it is not known.</summary>
    /// <param name="plan">The flask as answered.</param>
    /// <param name="work">The flask as settled.</param>
    public static Account? Quench(FlaskPlan plan, FlaskWork work)
    {
        if (plan.NoQuench)
        {
            return new("Quench after", "not at all: stones are in it", "", null, "");
        }

        if (plan.QuenchAfter is not { } wait)
        {
            return null;
        }

        var (own, sources) = (work.Alloy.Row?.Alloy.QuenchAfter, work.Alloy.Alloy.Sources);
        (Duration? typed, NumberSource? source, string word) = FlaskClasses.Of(work.Size.Size.InsideDiameter!.Value, work.Size.Size.Height!.Value) switch
        {
            FlaskClass.Small => (own?.Small, sources.QuenchSmall, "small"),
            FlaskClass.Medium => (own?.Medium, sources.QuenchMedium, "medium"),
            _ => (own?.Large, sources.QuenchLarge, "large"),
        };
        return OfAlloy(
            "Quench after", $"the alloy's own in {word} flasks", wait.Minutes, "min", "quench after", Say.Minutes(wait), work, ShopField.QuenchAfter,
            typed is not null, source, $"{word} flasks, and only once the button shows no red in shade, whatever the clock says");
    }

    // What is typed or printed in one scale has digits in the other.
    private static string WholeDegree(WrittenTemperature unit) => unit == WrittenTemperature.Celsius ? "" : "to a whole degree";

    private static Account OfAlloy(
        string name, string words, double result, string unit, string input, string value, FlaskWork work, string field, bool typed, NumberSource? source, string validFor) =>
        new(name, words, "", result, unit)
        {
            Inputs = [AlloyInputs.Of($"{work.Alloy.Name} {input}", value, work.Alloy, field, typed, source)],
            ValidFor = validFor,
        };
}
