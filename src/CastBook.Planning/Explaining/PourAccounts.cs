using CastBook.Casting.Burnout;
using CastBook.Casting.Metals;
using CastBook.Planning.Findings;
using CastBook.Planning.Flasks;
using CastBook.Planning.Pouring;
using CastBook.Planning.Shops;
using CastBook.Planning.Words;
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
            PourAccountWords.Metal, PourAccountWords.MetalRule, unit.Exactly(metal), unit.Name, PourAccountWords.MetalInput, unit.Say(metal), work, ShopField.MetalTemperature,
            work.Alloy.Row?.Alloy.MetalTemperature is not null, work.Alloy.Alloy.Sources.MetalTemperature, PourAccountWords.MetalHolds) with
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
            Casting.Pouring.SectionBand.Fine => (own?.FlaskTemperatureFine, ShopField.FlaskTemperatureFine, PourAccountWords.Fine),
            Casting.Pouring.SectionBand.Heavy => (own?.FlaskTemperatureHeavy, ShopField.FlaskTemperatureHeavy, PourAccountWords.Heavy),
            _ => (own?.FlaskTemperatureOrdinary, ShopField.FlaskTemperatureOrdinary, PourAccountWords.Ordinary),
        };
        return OfAlloy(
            PourAccountWords.Flask, PourAccountWords.FlaskRule(word), unit.Exactly(flask), unit.Name, PourAccountWords.FlaskInput(word), unit.Say(flask), work, field,
            typed is not null, work.Alloy.Alloy.Sources.FlaskTemperature, PourAccountWords.FlaskHolds(word)) with
        { Rounded = WholeDegree(unit) };
    }

    /// <summary>The wait before the quench; nothing where it is not known.</summary>
    /// <param name="plan">The flask as answered.</param>
    /// <param name="work">The flask as settled.</param>
    public static Account? Quench(FlaskPlan plan, FlaskWork work)
    {
        if (plan.NoQuench)
        {
            return new(PourAccountWords.Quench, PourAccountWords.NoQuench, "", null, "");
        }

        if (plan.QuenchAfter is not { } wait)
        {
            return null;
        }

        var (own, sources) = (work.Alloy.Row?.Alloy.QuenchAfter, work.Alloy.Alloy.Sources);
        (Duration? typed, NumberSource? source, string word) = FlaskClasses.Of(work.Size.Size.InsideDiameter!.Value, work.Size.Size.Height!.Value) switch
        {
            FlaskClass.Small => (own?.Small, sources.QuenchSmall, PourAccountWords.Small),
            FlaskClass.Medium => (own?.Medium, sources.QuenchMedium, PourAccountWords.Medium),
            _ => (own?.Large, sources.QuenchLarge, PourAccountWords.Large),
        };
        return OfAlloy(
            PourAccountWords.Quench, PourAccountWords.QuenchRule(word), wait.Minutes, "min", PourAccountWords.QuenchInput, Say.Minutes(wait), work, ShopField.QuenchAfter,
            typed is not null, source, PourAccountWords.QuenchHolds(word));
    }

    // What is typed or printed in one scale has digits in the other.
    private static string WholeDegree(WrittenTemperature unit) => unit == WrittenTemperature.Celsius ? "" : AccountWords.ToWholeDegree;

    private static Account OfAlloy(
        string name, string words, double result, string unit, string input, string value, FlaskWork work, string field, bool typed, NumberSource? source, string validFor) =>
        new(name, words, "", result, unit)
        {
            Inputs = [AlloyInputs.Of(PourAccountWords.OfAlloy(work.Alloy.Name, input), value, work.Alloy, field, typed, source)],
            ValidFor = validFor,
        };
}
