using System.Globalization;
using CastBook.Casting.Metals;
using CastBook.Planning.Findings;
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
        new(SettingName.WeightsAreOf, "", "What the weight column weighs: the pattern, or the finished metal of an earlier casting.", "pattern", "finished metal"),
        new(SettingName.WeightsInclude, "", "Whether pieces are weighed with their gates on. Empty: the piece alone; gates are added.", "piece alone", "gates too"),
        new(SettingName.SupportsShare, "%", "How much of a pattern's weight is supports that are cut off before the tree. Empty: none."),
        new(SettingName.LearnFromCastings, "", "Whether metal is corrected by castings you weighed: type what one casting weighs, gates off, over Metal each; three lines or more of an alloy and a material count. Empty: no.", "yes", "no"),
        new(SettingName.QuantityWhereNone, "", "How many to cast of each line of a list that has no column for the quantity: 1 where every line is one piece. Empty: it is asked."),
        new(SettingName.PatternMaterial, "", "Material of lines that name none: wax, resin, or a name of the Materials sheet."),
        new(SettingName.PatternDensity, "g/cm³", "Density of that material: weigh a solid cube, divide by its measured volume."),
        new(SettingName.SprueWaxDensity, "g/cm³", "Density of the wax that trunks and gates are built of. Empty: 0.95, and the plan says so."),
        new(SettingName.CastingMethod, "", "How you cast. It decides clearances and limits.", "vacuum perforated", "vacuum solid", "spin"),
        new(SettingName.CrucibleHolds, "ml", "Volume of your crucible to the brim, where there is no Crucibles sheet. Water to the brim, weighed, tells it: 1 g is 1 ml. Dry it well afterwards."),
        new(SettingName.Investment, "", "The powder in use, where the Investments sheet has several."),
        new(SettingName.Night, "", "Which night to plan, where the Night column names several. Empty: the next by date."),
        new(SettingName.SheetsToFill, "", "Which sheets of pieces to fill, where there are several: their names with semicolons between them, or all. Empty: the one that fits best."),
        new(SettingName.OrderOfWishes, "", "What a plan saves first, next and last; pieces that are due are placed before any of it. Empty: flasks; investment; metal, which is the metal of trunks and buttons."),
        new(SettingName.WhenLittleChanged, "", "What filling again does with flasks planned before. Empty: keep; pieces stay in their flask as long as all fit.", "keep", "best"),
        new(SettingName.ButtonShare, "%", "The least button, as a share of pieces and tree. Empty: 20."),
        new(SettingName.ButtonAtLeast, "ml", "The least button by volume. Empty: 1.5."),
        new(SettingName.MeltLoss, "%", "Metal lost in melting. Empty: 1."),
        new(SettingName.FreshAtLeast, "%", "The least share of fresh metal in a melt; the rest may be clean re-melt. Empty: 50."),
        new(SettingName.MetalBoughtIn, "", "The unit in which you buy metal. Empty: as metal is written.", "g", "kg", "troy oz", "dwt"),
        new(SettingName.MetalIn, "", "The unit in which CastBook writes metal. Empty: that of the list's weights where all are in dwt or troy oz, else g.", "g", "dwt", "troy oz"),
        new(SettingName.PowderIn, "", "The unit in which it writes powder; oz and lb are avoirdupois. Empty: that of the shop's own powder, else g.", "g", "kg", "lb", "oz"),
        new(SettingName.WaterIn, "", "The unit in which it writes water. Empty: ml, which a scale shows as g.", "ml", "US fl oz"),
        new(SettingName.TemperaturesIn, "", "The unit in which it writes temperatures; the Kiln sheet has both. Empty: that of the book's own temperatures or of sizes in inches, else °C.", "°C", "°F"),
        new(SettingName.LengthsIn, "", "The unit in which it writes lengths. Empty: that of the list's sizes, else mm.", "mm", "in"),
        new(SettingName.ChargeStep, "g", "Charges are rounded up to this step of your scale. Empty: 1 g, 1 dwt or 0.05 troy oz, as metal is written."),
        new(SettingName.PowderStep, "g", "Powder is rounded up to this step of your scale. Empty: 5 g, 0.01 lb or 0.2 oz, as powder is written."),
        new(SettingName.MixingBowl, "ml", "Volume of the bowl that investment is mixed in, to the brim. Empty: no mixes are planned."),
        new(SettingName.BowlFill, "%", "How full the bowl may be; slurry rises under vacuum. Empty: 50."),
        new(SettingName.MixingTakes, "min", "Mixing powder into water. Empty: 4."),
        new(SettingName.BowlVacuum, "min", "The bowl under vacuum. Empty: 1.5."),
        new(SettingName.FlaskFilling, "min", "Pouring the slurry into one flask. Empty: 0.5."),
        new(SettingName.FlaskVacuum, "min", "The filled flasks of a mix under vacuum, together. Empty: 1.5."),
        new(SettingName.GlossOffMargin, "min", "How long before gloss-off the flasks must rest. Empty: 1.5."),
        new(SettingName.SteamDewax, "min", "Steam before the kiln, for moulds of wax only; an hour at most. Empty: none."),
        new(SettingName.KeptDamp, "", "Whether moulds that wait for the kiln are bagged damp once they have set; they keep a week then. Empty: no, and they keep a day.", "yes", "no"),
        new(SettingName.StartAt, "", "When you begin to weigh powder, such as 2026-11-25 20:00. Empty: the clock counts from the first step."),
        new(SettingName.PourAt, "", "When the first flask is to be poured, with its day; it wins over \"Start at\". Empty: as early as the start allows."),
        new(SettingName.WeighingTakes, "min", "Weighing out powder and water of a mix. Empty: 5."),
        new(SettingName.CleanUpTakes, "min", "Cleaning bowl and tools after a mix. Empty: 5."),
        new(SettingName.BaseOffTakes, "min", "Taking the base off a flask, cleaning its rim and scratching its letter in. Empty: 3."),
        new(SettingName.LoadingTakes, "min", "Loading the kiln. Empty: 10."),
        new(SettingName.PouringTakes, "min", "Melting and pouring one flask. Empty: 10."),
        new(SettingName.QuenchingTakes, "min", "Quenching one flask. Empty: 3."),
        new(SettingName.AtWorkFrom, "", "From which hour somebody is there, such as 07:00. Empty: at any hour."),
        new(SettingName.AtWorkUntil, "", "Until which hour somebody is there, such as 23:00. Empty: at any hour."),
        new(SettingName.HoursOfWork, "", "The same with a break, or where days differ: 08:00-12:00, 13:30-19:00; Friday 08:00-14:00. It wins over both. Empty: those two."),
        new(SettingName.ClosedOn, "", "Days on which nobody is there, with commas: Saturday, Sunday, 2026-12-24 to 2027-01-02. Empty: none."),
        new(SettingName.TwoPeopleFor, "", "Steps that take two people, with commas: mix, base off, load, pour, quench. Empty: none."),
        new(SettingName.SecondFrom, "", "From which hour the second person is there, such as 08:00. Empty: whenever the first is."),
        new(SettingName.SecondUntil, "", "Until which hour the second person is there, such as 17:00. Empty: whenever the first is."),
        new(SettingName.StayWith, "", "What runs by itself and is still not left alone, with commas: steam, burnout. Empty: nothing."),
        new(SettingName.KilnLoads, "", "Which flasks stand in the kiln together, load by load, such as A B; C D. Empty: as many as fit, the most demanding first."),
        new(SettingName.CoreTolerance, "°C", "How near the middle of a mould must be to the kiln when a hold ends. Empty: 20 before a pour, 25 at the top.") { Named = [20, 25] },
        new(SettingName.GapInKiln, "mm", "The least gap between flasks in the kiln, and to its wall. Empty: 20.") { Named = [20] },
        new(SettingName.GapBetweenPieces, "mm", "The least gap between two pieces on a tree. Empty: 3.") { Named = [3] },
        new(SettingName.GateLength, "mm", "Length of a gate where the piece names none. Empty: at most 7.") { Named = [7] },
        new(SettingName.GateDiameter, "mm", "Diameter of a gate where the piece names none. Empty: 3.") { Named = [3] },
        new(SettingName.GateAngle, "°", "Angle between trunk and pieces. Empty: 50."),
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
        return alloys.Count > 1
            ? $"Which alloy the rows mean: {string.Join("; ", alloys.Select(a => a.Name + Told(a)))}; or a name of the Alloys sheet."
            : "Which alloy the rows mean, by a name of the Alloys sheet or of the Checks sheet.";
    }

    // What tells alloys of one name apart, as far as it is known.
    private static string Told(Alloy alloy) => (alloy.Density, alloy.MetalTemperature) switch
    {
        ({ } density, { } metal) => $" ({Say.Dense(density)}, poured at {Say.Celsius(metal)})",
        ({ } density, null) => $" ({Say.Dense(density)})",
        (null, { } metal) => $" (poured at {Say.Celsius(metal)})",
        _ => "",
    };
}
