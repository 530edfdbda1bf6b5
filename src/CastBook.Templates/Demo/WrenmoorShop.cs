using CastBook.Planning.Shops;
using CastBook.Templates.Sheets;
using CastBook.Templates.Writing;

namespace CastBook.Templates.Demo;

/// <summary>
/// What the Wrenmoor Foundry owns and has decided. The shop is invented and so are its answers: plausible ones, to show a
/// full plan with. They are nobody's data sheet and no example to cast by.
/// </summary>
internal static class WrenmoorShop
{
    public const string Silver = "sterling silver";
    public const string Bronze = "tin bronze";
    public const string Gold = "14k yellow";
    public const string Resin = "castable resin";
    public const string Wax = "injection wax";
    public const string Carving = "blue carving wax";

    private const string Perforated = "vacuum perforated";
    private const string Powder = "gypsum investment";

    private static readonly object?[][] Flasks =
    [
        // Size, inside diameter, height, owned, method, holds, powder, water, sprue diameter, base height, cup, above tree, to wall.
        ["65 × 65", 65.0, 65.0, 4, Perforated, null, null, null, 8.0, 18.0, 6.0, null, null, null],
        ["75 × 100", 75.0, 100.0, 4, Perforated, null, null, null, 8.0, 20.0, 9.0, null, null, null],
        ["90 × 125", 90.0, 125.0, 5, Perforated, null, null, null, 10.0, 20.0, 14.0, null, null, null],
        ["100 × 150", 100.0, 150.0, 2, Perforated, null, null, null, 12.0, 22.0, 18.0, null, null, null],
    ];

    private static readonly object?[][] Crucibles =
    [
        ["silver crucible", 60.0, null, null, Silver, "graphite", 1],
        ["bronze crucible", 60.0, null, null, Bronze, "clay-graphite", 1],
        ["gold crucible", 30.0, null, null, Gold, "graphite", 1],
    ];

    private static readonly object?[][] Kilns =
    [
        ["front loader", "square", 320, 320, null, 3.6, 100, 5],
    ];

    private static readonly object?[][] Alloys =
    [
        // Alloy, composition, density, solidus, liquidus, metal, flask fine, ordinary, heavy, quench, loss, fresh, re-melt, price.
        [Silver, "Ag 925 Cu 75", 10.36, 802, 893, 970, 590, 538, 455, "8/15/20", null, 900.0, 420.0, 1.05],
        [Bronze, "Cu 877 Sn 83 Zn 40", 8.80, 854, 1000, 1090, 600, 540, 450, "15/20/25", 2.0, 2400.0, 1100.0, 0.03],
        [Gold, "Au 585 Ag 300 Cu 115", 13.94, 842, 895, 988, 595, 566, 480, "10/15/17", 0.5, 30.0, 8.0, 62.40],
    ];

    private static readonly object?[][] Materials =
    [
        [Resin, "resin", 1.15, 9.2, 20.0, 25, 3, null, 5, null, null],
        [Wax, "wax", 0.95, null, null, null, null, null, null, null, null],
        [Carving, "wax", null, null, null, null, null, null, null, null, null],
    ];

    private static readonly object?[][] Investments =
    [
        [Powder, "gypsum", 39.0, 2.60, 9.5, 2.0, 732, "both", 200, null, 22_000],
    ];

    private static readonly object?[][] Schedules =
    [
        // Schedule, for, up to diameter, up to height, load at, stage, target, rate, hold.
        .. Stages("resin, small flasks", "resin", 75, 100, (150, 120, 1.5), (370, 150, 1.5), (732, 200, 2.5), (540, 200, 1.0)),
        .. Stages("resin, large flasks", "resin", 105, 205, (150, 130, 1.5), (370, 130, 2.0), (732, 180, 3.0), (540, 180, 1.5)),
        .. Stages("wax, all flasks", "wax", 105, 205, (150, 130, 1.0), (370, 180, 1.0), (732, 180, 2.5), (540, 180, 1.0)),
    ];

    private static readonly Dictionary<string, object> Answers = new()
    {
        [SettingName.WeightsAreOf] = "pattern",
        [SettingName.WeightsInclude] = "piece alone",
        [SettingName.SupportsShare] = 0,
        [SettingName.LearnFromCastings] = "no",
        [SettingName.PatternMaterial] = Resin,
        [SettingName.PatternDensity] = 1.15,
        [SettingName.SprueWaxDensity] = 0.95,
        [SettingName.CastingMethod] = Perforated,
        [SettingName.CrucibleHolds] = 60,
        [SettingName.Investment] = Powder,
        [SettingName.OrderOfWishes] = "flasks; investment; metal",
        [SettingName.WhenLittleChanged] = "keep",
        [SettingName.ButtonShare] = 20,
        [SettingName.ButtonAtLeast] = 1.5,
        [SettingName.MeltLoss] = 1,
        [SettingName.FreshAtLeast] = 50,
        [SettingName.MetalBoughtIn] = "g",
        [SettingName.MetalIn] = "g",
        [SettingName.PowderIn] = "g",
        [SettingName.WaterIn] = "ml",
        [SettingName.TemperaturesIn] = "°C",
        [SettingName.LengthsIn] = "mm",
        [SettingName.ChargeStep] = 1,
        [SettingName.PowderStep] = 5,
        [SettingName.MixingBowl] = 5000,
        [SettingName.BowlFill] = 50,
        [SettingName.MixingTakes] = 4,
        [SettingName.BowlVacuum] = 1.5,
        [SettingName.FlaskFilling] = 0.5,
        [SettingName.FlaskVacuum] = 1.5,
        [SettingName.GlossOffMargin] = 1.5,
        [SettingName.SteamDewax] = 0,
        [SettingName.KeptDamp] = "no",
        [SettingName.StartAt] = "2037-12-03 18:00",
        [SettingName.WeighingTakes] = 5,
        [SettingName.CleanUpTakes] = 5,
        [SettingName.BaseOffTakes] = 3,
        [SettingName.LoadingTakes] = 10,
        [SettingName.PouringTakes] = 10,
        [SettingName.QuenchingTakes] = 3,
        [SettingName.AtWorkFrom] = "07:00",
        [SettingName.AtWorkUntil] = "23:00",
        [SettingName.CoreTolerance] = 20,
        [SettingName.GapInKiln] = 20,
        [SettingName.GapBetweenPieces] = 3,
        [SettingName.GateLength] = 5,
        [SettingName.GateDiameter] = 2.5,
        [SettingName.GateAngle] = 50,
    };

    /// <summary>The lines of one of the shop's sheets.</summary>
    /// <param name="spec">The sheet; any but the list of pieces.</param>
    /// <exception cref="ArgumentException">The demo has no lines for the sheet.</exception>
    public static IReadOnlyList<IReadOnlyList<object?>> Rows(SheetSpec spec) => spec.Name switch
    {
        FlasksSheet.Name => Flasks,
        CruciblesSheet.Name => Crucibles,
        KilnsSheet.Name => Kilns,
        AlloysSheet.Name => Alloys,
        MaterialsSheet.Name => Materials,
        InvestmentsSheet.Name => Investments,
        SchedulesSheet.Name => Schedules,
        SettingsSheet.Name => RowOf.Settings(Answers),
        _ => throw new ArgumentException($"The demo has no lines for the sheet {spec.Name}.", nameof(spec)),
    };

    private static IEnumerable<object?[]> Stages(
        string name, string use, int upToDiameterMm, int upToHeightMm, params (int TargetC, int RateCPerHour, double HoldHours)[] stages) =>
        stages.Select((s, i) => new object?[] { name, use, upToDiameterMm, upToHeightMm, 20, i + 1, s.TargetC, s.RateCPerHour, s.HoldHours });
}
