using CastBook.Planning.Shops;
using CastBook.Workbooks.Reading.Headings;
using CastBook.Workbooks.Reading.Values;
using CastBook.Workbooks.Words;
using UnitsNet;

namespace CastBook.Workbooks.Settings;

/// <summary>A setting: its name, what it measures or may say, and where it goes.</summary>
/// <param name="Name">The name in the Shop sheet.</param>
/// <param name="Dimension">What it measures; <see cref="Dimension.None"/> for words.</param>
/// <param name="Wanted">What it should be, as a sentence names it.</param>
/// <param name="Number">Takes a number in the base unit; gives null where it is none the setting can have; missing for words.</param>
/// <param name="Words">Takes words; gives null where they are none it knows; missing for numbers.</param>
internal sealed record SettingSpec(
    string Name,
    Dimension Dimension,
    string Wanted,
    Func<Planning.Shops.Settings, double, Planning.Shops.Settings?>? Number = null,
    Func<Planning.Shops.Settings, string, Planning.Shops.Settings?>? Words = null)
{
    /// <summary>Whether a date in it keeps its hour.</summary>
    public bool HasHour { get; private init; }

    /// <summary>Whether it is a difference of temperatures, so that a unit shifts no zero.</summary>
    public bool IsStep { get; private init; }

    /// <summary>The word that a misspelt one most likely means; missing where the setting has no such words.</summary>
    public Func<string, string?>? Near { get; private init; }

    public static IReadOnlyList<SettingSpec> All { get; } =
    [
        Said(SettingName.WeightsAreOf, WantedWords.Meanings, (s, w) => ShopWords.Meaning(w) is { } m ? s with { WeightsAreOf = m } : null),
        Said(SettingName.WeightsInclude, WantedWords.Inclusions, (s, w) => ShopWords.IncludesGates(w) is { } gates ? s with { WeightsIncludeGates = gates } : null),
        Measured(SettingName.SupportsShare, Dimension.Percent, WantedWords.SuchAs("%", 15), (s, v) => s with { SupportsShare = Ratio.FromPercent(v) }),
        Said(SettingName.LearnFromCastings, WantedWords.YesNo, (s, w) => ShopWords.YesOrNo(w) is { } said ? s with { LearnFromCastings = said } : null),
        Said(SettingName.QuantityWhereNone, WantedWords.WholeNumber, (s, w) => ShopWords.Count(w) is { } count ? s with { QuantityWhereNone = count } : null),
        Said(SettingName.AlloyWhereNone, WantedWords.Name, (s, w) => s with { AlloyWhereNone = w }),
        Said(SettingName.PatternMaterial, WantedWords.Name, (s, w) => s with { PatternMaterial = w }),
        Measured(SettingName.PatternDensity, Dimension.Density, "g/cm³", (s, v) => s with { PatternDensity = Dense(v) }),
        Measured(SettingName.SprueWaxDensity, Dimension.Density, "g/cm³", (s, v) => s with { SprueWaxDensity = Dense(v) }),
        Said(SettingName.CastingMethod, WantedWords.Methods, (s, w) => ShopWords.Method(w) is { } m ? s with { CastingMethod = m } : null),
        Measured(SettingName.CrucibleHolds, Dimension.Volume, "ml", (s, v) => s with { CrucibleHolds = Volume.FromMilliliters(v) }),
        Said(SettingName.Investment, WantedWords.Name, (s, w) => s with { Investment = w }),
        Said(SettingName.OrderOfWishes, WantedWords.Wishes, (s, w) => ShopWords.Wishes(w) is { } wishes ? s with { OrderOfWishes = wishes } : null) with { Near = ShopWords.NearWish },
        Said(SettingName.WhenLittleChanged, WantedWords.Stabilities, (s, w) => ShopWords.Stability(w) is { } stability ? s with { WhenLittleChanged = stability } : null),
        Measured(SettingName.ButtonShare, Dimension.Percent, WantedWords.SuchAs("%", 20), (s, v) => s with { ButtonShare = Ratio.FromPercent(v) }),
        Measured(SettingName.ButtonAtLeast, Dimension.Volume, "ml", (s, v) => s with { ButtonAtLeast = Volume.FromMilliliters(v) }),
        Measured(SettingName.MeltLoss, Dimension.Percent, "%", (s, v) => s with { MeltLoss = Ratio.FromPercent(v) }),
        Measured(SettingName.FreshAtLeast, Dimension.Percent, WantedWords.Between("%", 0, 100), (s, v) => v > 100 ? null : s with { FreshAtLeast = Ratio.FromPercent(v) }),
        Unit(SettingName.MetalBoughtIn, WrittenMass.OfBuying, u => u.Name, (s, u) => s with { MetalBoughtIn = u }),
        Unit(SettingName.MetalIn, WrittenMass.OfMetal, u => u.Name, (s, u) => s with { MetalIn = u }),
        Unit(SettingName.PowderIn, WrittenMass.OfPowder, u => u.Name, (s, u) => s with { PowderIn = u }),
        Unit(SettingName.WaterIn, WrittenVolume.All, u => u.Name, (s, u) => s with { WaterIn = u }),
        Unit(SettingName.TemperaturesIn, WrittenTemperature.All, u => u.Name, (s, u) => s with { TemperaturesIn = u }),
        Unit(SettingName.LengthsIn, WrittenLength.All, u => u.Name, (s, u) => s with { LengthsIn = u }),
        Measured(SettingName.ChargeStep, Dimension.Mass, "g", (s, v) => s with { ChargeStep = Mass.FromGrams(v) }),
        Measured(SettingName.PowderStep, Dimension.Mass, "g", (s, v) => s with { PowderStep = Mass.FromGrams(v) }),
        Measured(SettingName.MixingBowl, Dimension.Volume, "ml", (s, v) => s with { MixingBowl = Volume.FromMilliliters(v) }),
        Measured(SettingName.BowlFill, Dimension.Percent, WantedWords.SuchAs("%", 50), (s, v) => s with { BowlFill = Ratio.FromPercent(v) }),
        Measured(SettingName.MixingTakes, Dimension.Time, WantedWords.Minutes, (s, v) => s with { MixingTakes = Duration.FromMinutes(v) }),
        Measured(SettingName.BowlVacuum, Dimension.Time, WantedWords.Minutes, (s, v) => s with { BowlVacuum = Duration.FromMinutes(v) }),
        Measured(SettingName.FlaskFilling, Dimension.Time, WantedWords.Minutes, (s, v) => s with { FlaskFilling = Duration.FromMinutes(v) }),
        Measured(SettingName.FlaskVacuum, Dimension.Time, WantedWords.Minutes, (s, v) => s with { FlaskVacuum = Duration.FromMinutes(v) }),
        Measured(SettingName.GlossOffMargin, Dimension.Time, WantedWords.Minutes, (s, v) => s with { GlossOffMargin = Duration.FromMinutes(v) }),
        Measured(SettingName.SteamDewax, Dimension.Time, WantedWords.Minutes, (s, v) => s with { SteamDewax = Duration.FromMinutes(v) }),
        Said(SettingName.KeptDamp, WantedWords.YesNo, (s, w) => ShopWords.YesOrNo(w) is { } said ? s with { KeptDamp = said } : null),
        Measured(SettingName.WeighingTakes, Dimension.Time, WantedWords.Minutes, (s, v) => s with { WeighingTakes = Duration.FromMinutes(v) }),
        Measured(SettingName.CleanUpTakes, Dimension.Time, WantedWords.Minutes, (s, v) => s with { CleanUpTakes = Duration.FromMinutes(v) }),
        Measured(SettingName.BaseOffTakes, Dimension.Time, WantedWords.Minutes, (s, v) => s with { BaseOffTakes = Duration.FromMinutes(v) }),
        Measured(SettingName.LoadingTakes, Dimension.Time, WantedWords.Minutes, (s, v) => s with { LoadingTakes = Duration.FromMinutes(v) }),
        Measured(SettingName.PouringTakes, Dimension.Time, WantedWords.Minutes, (s, v) => s with { PouringTakes = Duration.FromMinutes(v) }),
        Measured(SettingName.QuenchingTakes, Dimension.Time, WantedWords.Minutes, (s, v) => s with { QuenchingTakes = Duration.FromMinutes(v) }),
        Said(SettingName.StartAt, WantedWords.DayAndHour, (s, w) => s with { StartAt = w }) with { HasHour = true },
        Said(SettingName.PourAt, WantedWords.DayAndHour, (s, w) => s with { PourAt = w }) with { HasHour = true },
        Said(SettingName.AtWorkFrom, WantedWords.Hour("07:00"), (s, w) => HourText.Read(w) is { } hour ? s with { AtWorkFrom = hour } : null),
        Said(SettingName.AtWorkUntil, WantedWords.Hour("23:00"), (s, w) => HourText.Read(w) is { } hour ? s with { AtWorkUntil = hour } : null),
        Said(SettingName.HoursOfWork, WantedWords.HoursOfWork, (s, w) => HoursOfWorkText.Read(w) is { } hours ? s with { HoursOfWork = hours } : null),
        Said(SettingName.ClosedOn, WantedWords.ClosedDays, (s, w) => ClosedDaysText.Read(w) is { } days ? s with { ClosedOn = days.Weekdays, Away = days.Away } : null),
        Said(SettingName.TwoPeopleFor, WantedWords.StepsOfHands, (s, w) => ShopWords.Hands(w) is { } steps ? s with { TwoPeopleFor = steps } : null),
        Said(SettingName.SecondFrom, WantedWords.Hour("08:00"), (s, w) => HourText.Read(w) is { } hour ? s with { SecondFrom = hour } : null),
        Said(SettingName.SecondUntil, WantedWords.Hour("17:00"), (s, w) => HourText.Read(w) is { } hour ? s with { SecondUntil = hour } : null),
        Said(SettingName.StayWith, WantedWords.StepsAlone, (s, w) => ShopWords.Alone(w) is { } steps ? s with { StayWith = steps } : null),
        Said(SettingName.KilnLoads, WantedWords.Flasks, (s, w) => s with { KilnLoads = ShopWords.Loads(w) }),
        Measured(SettingName.CoreTolerance, Dimension.Temperature, WantedWords.SuchAs("°C", 20), (s, v) => s with { CoreTolerance = TemperatureDelta.FromDegreesCelsius(v) }) with { IsStep = true },
        Measured(SettingName.GapInKiln, Dimension.Length, "mm", (s, v) => s with { GapInKiln = Length.FromMillimeters(v) }),
        Measured(SettingName.GapBetweenPieces, Dimension.Length, "mm", (s, v) => s with { GapBetweenPieces = Length.FromMillimeters(v) }),
        Measured(SettingName.GateLength, Dimension.Length, "mm", (s, v) => s with { GateLength = Length.FromMillimeters(v) }),
        Measured(SettingName.GateDiameter, Dimension.Length, "mm", (s, v) => s with { GateDiameter = Length.FromMillimeters(v) }),
        Measured(SettingName.GateAngle, Dimension.Angle, WantedWords.Degrees, (s, v) => s with { GateAngle = Angle.FromDegrees(v) }),
        Said(SettingName.SheetsToFill, WantedWords.Sheets, (s, w) => s with { SheetsToFill = w }),
        Said(SettingName.Night, WantedWords.Name, (s, w) => s with { Night = NightName.Of(w) }),
    ];

    /// <summary>Below this a value is a slip: 0.2 for a share of 20 %.</summary>
    public double Least => Name is SettingName.ButtonShare or SettingName.BowlFill or SettingName.SupportsShare or SettingName.CoreTolerance ? 1 : 0;

    /// <summary>Above this a value is a slip: nothing is fuller than full.</summary>
    public double Most => Name switch
    {
        SettingName.BowlFill => 100,
        SettingName.SupportsShare => 90,
        // The trade's rules for a button run to as much again as pieces and tree; no melt that may be poured loses a fifth.
        SettingName.ButtonShare => 100,
        SettingName.MeltLoss => 20,
        SettingName.CoreTolerance => 100,
        _ => double.PositiveInfinity,
    };

    /// <summary>Whether zero is an answer: no share, no loss, no gap, no time.</summary>
    public bool MayBeZero =>
        (Dimension is Dimension.Percent or Dimension.Length or Dimension.Angle or Dimension.Time && Name != SettingName.BowlFill)
        || Name == SettingName.ButtonAtLeast;

    private static SettingSpec Said(string name, string wanted, Func<Planning.Shops.Settings, string, Planning.Shops.Settings?> words) =>
        new(name, Dimension.None, wanted, Words: words);

    private static SettingSpec Unit<T>(
        string name, IReadOnlyList<T> units, Func<T, string> sign, Func<Planning.Shops.Settings, T, Planning.Shops.Settings> take)
        where T : class
    {
        return Said(name, WantedWords.Units([.. units.Select(sign)]), (s, w) => Find(w) is { } unit ? take(s, unit) : null) with
        {
            Near = w => ShopWords.NearUnit(w) is { } near && Find(near) is not null ? near : null,
        };

        T? Find(string words)
        {
            var wanted = ShopWords.Unit(words);
            return units.FirstOrDefault(u => sign(u) == wanted);
        }
    }

    private static SettingSpec Measured(string name, Dimension dimension, string unit, Func<Planning.Shops.Settings, double, Planning.Shops.Settings?> number) =>
        new(name, dimension, WantedWords.Number(unit), Number: number);

    private static Density Dense(double gramsPerCubicCentimetre) => Density.FromGramsPerCubicCentimeter(gramsPerCubicCentimetre);
}
