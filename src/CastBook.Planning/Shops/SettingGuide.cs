using System.Globalization;
using CastBook.Casting.Metals;
using CastBook.Planning.Findings;
using CastBook.Planning.Words;
using UnitsNet;

namespace CastBook.Planning.Shops;

/// <summary>A setting as a shop meets it: its name, its unit, what it is for, and the words it may be answered with.</summary>
/// <param name="Name">The name, a constant of <see cref="SettingName"/>.</param>
/// <param name="Unit">Its unit; empty for words.</param>
/// <param name="WhatFor">What it is for, and what an empty cell means.</param>
/// <param name="Choices">The words it may be answered with; empty where any value may stand.</param>
public sealed record SettingGuide(string Name, string Unit, string WhatFor, params IReadOnlyList<string> Choices)
{
    /// <summary>The usual values that <see cref="WhatFor"/> names, in <see cref="Unit"/>; a temperature is a difference.</summary>
    public IReadOnlyList<double> Named { get; private init; } = [];

    /// <summary>Every setting, in the order in which a shop should answer.</summary>
    public static IReadOnlyList<SettingGuide> All { get; } =
    [
        new(SettingName.WeightsAreOf, "", SettingWords.WeightsAreOf, "pattern", "finished metal"),
        new(SettingName.WeightsInclude, "", SettingWords.WeightsInclude, "piece alone", "gates too"),
        new(SettingName.SupportsShare, "%", SettingWords.SupportsShare),
        new(SettingName.LearnFromCastings, "", SettingWords.LearnFromCastings, "yes", "no"),
        new(SettingName.QuantityWhereNone, "", SettingWords.QuantityWhereNone),
        new(SettingName.AlloyWhereNone, "", SettingWords.AlloyWhereNone),
        new(SettingName.PatternMaterial, "", SettingWords.PatternMaterial),
        new(SettingName.PatternDensity, "g/cm³", SettingWords.PatternDensity),
        new(SettingName.SprueWaxDensity, "g/cm³", SettingWords.SprueWaxDensity),
        new(SettingName.CastingMethod, "", SettingWords.CastingMethod, "vacuum perforated", "vacuum solid", "spin", "gravity"),
        new(SettingName.CrucibleHolds, "ml", SettingWords.CrucibleHolds),
        new(SettingName.Investment, "", SettingWords.Investment),
        new(SettingName.Night, "", SettingWords.Night),
        new(SettingName.SheetsToFill, "", SettingWords.SheetsToFill),
        new(SettingName.OrderOfWishes, "", SettingWords.OrderOfWishes),
        new(SettingName.WhenLittleChanged, "", SettingWords.WhenLittleChanged, "keep", "worthwhile", "best"),
        new(SettingName.ButtonShare, "%", SettingWords.ButtonShare),
        new(SettingName.ButtonAtLeast, "ml", SettingWords.ButtonAtLeast),
        new(SettingName.MeltLoss, "%", SettingWords.MeltLoss),
        new(SettingName.FreshAtLeast, "%", SettingWords.FreshAtLeast),
        new(SettingName.MetalBoughtIn, "", SettingWords.MetalBoughtIn, "g", "kg", "troy oz", "dwt"),
        new(SettingName.MetalIn, "", SettingWords.MetalIn, "g", "dwt", "troy oz"),
        new(SettingName.PowderIn, "", SettingWords.PowderIn, "g", "kg", "lb", "oz"),
        new(SettingName.WaterIn, "", SettingWords.WaterIn, "ml", "US fl oz"),
        new(SettingName.TemperaturesIn, "", SettingWords.TemperaturesIn, "°C", "°F"),
        new(SettingName.LengthsIn, "", SettingWords.LengthsIn, "mm", "in"),
        new(SettingName.ChargeStep, "g", SettingWords.ChargeStep),
        new(SettingName.PowderStep, "g", SettingWords.PowderStep),
        new(SettingName.MixingBowl, "ml", SettingWords.MixingBowl),
        new(SettingName.BowlFill, "%", SettingWords.BowlFill),
        new(SettingName.MixingTakes, "min", SettingWords.MixingTakes),
        new(SettingName.BowlVacuum, "min", SettingWords.BowlVacuum),
        new(SettingName.FlaskFilling, "min", SettingWords.FlaskFilling),
        new(SettingName.FlaskVacuum, "min", SettingWords.FlaskVacuum),
        new(SettingName.GlossOffMargin, "min", SettingWords.GlossOffMargin),
        new(SettingName.SteamDewax, "min", SettingWords.SteamDewax),
        new(SettingName.KeptDamp, "", SettingWords.KeptDamp, "yes", "no"),
        new(SettingName.StartAt, "", SettingWords.StartAt),
        new(SettingName.PourAt, "", SettingWords.PourAt),
        new(SettingName.WeighingTakes, "min", SettingWords.WeighingTakes),
        new(SettingName.CleanUpTakes, "min", SettingWords.CleanUpTakes),
        new(SettingName.BaseOffTakes, "min", SettingWords.BaseOffTakes),
        new(SettingName.LoadingTakes, "min", SettingWords.LoadingTakes),
        new(SettingName.PouringTakes, "min", SettingWords.PouringTakes),
        new(SettingName.QuenchingTakes, "min", SettingWords.QuenchingTakes),
        new(SettingName.AtWorkFrom, "", SettingWords.AtWorkFrom),
        new(SettingName.AtWorkUntil, "", SettingWords.AtWorkUntil),
        new(SettingName.HoursOfWork, "", SettingWords.HoursOfWork),
        new(SettingName.ClosedOn, "", SettingWords.ClosedOn),
        new(SettingName.TwoPeopleFor, "", SettingWords.TwoPeopleFor),
        new(SettingName.SecondFrom, "", SettingWords.SecondFrom),
        new(SettingName.SecondUntil, "", SettingWords.SecondUntil),
        new(SettingName.StayWith, "", SettingWords.StayWith),
        new(SettingName.KilnLoads, "", SettingWords.KilnLoads),
        new(SettingName.CoreTolerance, "°C", SettingWords.CoreTolerance) { Named = [20, 25] },
        new(SettingName.GapInKiln, "mm", SettingWords.GapInKiln) { Named = [20] },
        new(SettingName.GapBetweenPieces, "mm", SettingWords.GapBetweenPieces) { Named = [3] },
        new(SettingName.GateLength, "mm", SettingWords.GateLength) { Named = [7] },
        new(SettingName.GateDiameter, "mm", SettingWords.GateDiameter) { Named = [3] },
        new(SettingName.GateAngle, "°", SettingWords.GateAngle),
    ];

    /// <summary>The guide of a setting; a question about an alloy's name has one too.</summary>
    /// <param name="name">The setting's name.</param>
    public static SettingGuide Of(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return All.FirstOrDefault(g => g.Name.Equals(name, StringComparison.OrdinalIgnoreCase)) ?? new SettingGuide(name, "", Meant(name));
    }

    /// <summary>The setting as a shop meets it that works in other units: its unit, and usual values told in it.</summary>
    /// <param name="units">The shop's units.</param>
    public SettingGuide In(ShopUnits units)
    {
        ArgumentNullException.ThrowIfNull(units);
        return (Name, Unit) switch
        {
            (_, "mm") => In(units.Length.Name, mm => (Length.FromMillimeters(mm) / units.Length.One).ToString("0.##", CultureInfo.InvariantCulture)),
            (_, "°C") => In(units.Temperature.Name, units.Temperature.Degrees),
            (SettingName.ChargeStep, _) => this with { Unit = units.Metal.Name },
            (SettingName.PowderStep, _) => this with { Unit = units.Powder.Name },
            _ => this,
        };
    }

    private SettingGuide In(string unit, Func<double, string> number) => this with
    {
        Unit = unit,
        WhatFor = Named.Aggregate(WhatFor, (text, usual) => text
            .Replace($" {Say.Plain(usual)} ", $" {number(usual)} ", StringComparison.Ordinal).Replace($" {Say.Plain(usual)}.", $" {number(usual)}.", StringComparison.Ordinal)),
    };

    private static string Meant(string question)
    {
        var alloys = question.Split('"') is [_, var name, _] && question == SettingName.AlloyMeaning(name) ? BuiltInAlloys.Named(name) : [];
        return alloys.Count > 1 ? SettingWords.AlloyMeant(alloys.Select(a => a.Name + Told(a))) : SettingWords.AlloyMeantByName;
    }

    // What tells alloys of one name apart, as far as it is known.
    private static string Told(Alloy alloy) => (alloy.Density, alloy.MetalTemperature) switch
    {
        ({ } density, { } metal) => SettingWords.DensityAndPour(Say.Dense(density), Say.Celsius(metal)),
        ({ } density, null) => $" ({Say.Dense(density)})",
        (null, { } metal) => SettingWords.Pour(Say.Celsius(metal)),
        _ => "",
    };
}
