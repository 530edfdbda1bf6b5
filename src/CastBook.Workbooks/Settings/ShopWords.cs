using System.Globalization;
using CastBook.Casting.Investing;
using CastBook.Casting.Patterns;
using CastBook.Casting.Pouring;
using CastBook.Planning;
using CastBook.Planning.Clock;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Reading.Values;

namespace CastBook.Workbooks.Settings;

/// <summary>The words a shop may type where there is a choice, and what they mean.</summary>
internal static class ShopWords
{
    // A list has at most so many of one piece; above it a number is a slip.
    private const int MostPieces = 10_000;

    public static int? Count(string text) =>
        int.TryParse(text.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var count) && count is > 0 and <= MostPieces ? count : null;

    public static CastingMethod? Method(string text) => AnswerWords.Meant(text) switch
    {
        "PERFORATED" or "PERFORATED VACUUM" => CastingMethod.VacuumPerforated,
        "SOLID" or "SOLID VACUUM" => CastingMethod.VacuumSolid,
        "SPIN" => CastingMethod.Spin,
        "GRAVITY" => CastingMethod.Gravity,
        _ => null,
    };

    /// <summary>The shape of a kiln's floor.</summary>
    public static KilnShape? Shape(string text) => AnswerWords.Meant(text) switch
    {
        "ROUND" => KilnShape.Round,
        "SQUARE" => KilnShape.Square,
        _ => null,
    };

    public static PatternKind? Kind(string text) => AnswerWords.Meant(text) switch
    {
        "WAX" => PatternKind.Wax,
        "RESIN" or "CASTABLE RESIN" => PatternKind.Resin,
        _ => null,
    };

    /// <summary>What a burnout schedule is for.</summary>
    public static ScheduleUse? ScheduleUse(string text) => AnswerWords.Meant(text) switch
    {
        "WAX" => Planning.Shops.ScheduleUse.Wax,
        "RESIN" or "CASTABLE RESIN" => Planning.Shops.ScheduleUse.Resin,
        "STONES" or "STONES WAX" or "RESIN STONES" or "RESIN STONES WAX" or "OR RESIN STONES WAX" => Planning.Shops.ScheduleUse.Stones,
        "RESIN WAX" or "OR RESIN WAX" => Planning.Shops.ScheduleUse.WaxAndResin,
        _ => null,
    };

    public static InvestmentKind? Binder(string text) => AnswerWords.Meant(text) switch
    {
        "GYPSUM" => InvestmentKind.Gypsum,
        "HIGH TEMPERATURE" or "PHOSPHATE" or "HIGH PHOSPHATE TEMPERATURE" or "PLATINUM" => InvestmentKind.HighTemperature,
        _ => null,
    };

    public static WeightMeaning? Meaning(string text) => AnswerWords.Meant(text) switch
    {
        "PATTERN" or "WAX" or "RESIN" or "OR RESIN WAX" or "RESIN WAX" => WeightMeaning.Pattern,
        "FINISHED METAL" or "FINISHED" or "METAL" => WeightMeaning.FinishedMetal,
        _ => null,
    };

    public static bool? IncludesGates(string text) => AnswerWords.Meant(text) switch
    {
        "ALONE" or "ALONE PIECE" or "PIECE" or "GATES WITHOUT" or "GATES PIECE WITHOUT" => false,
        "GATES" or "GATES PIECE" => true,
        _ => null,
    };

    public static Stability? Stability(string text) => Key(text) switch
    {
        "KEEP" or "STAY" or "NOTHINGMOVES" => Planning.Shops.Stability.Keep,
        "WORTHWHILE" or "WHEREWORTHIT" or "FEWMOVES" => Planning.Shops.Stability.Worthwhile,
        "BEST" or "AFRESH" or "SEARCHAFRESH" => Planning.Shops.Stability.Best,
        _ => null,
    };

    public static bool? YesOrNo(string text) => CellWords.Yes.Contains(text.Trim()) ? true : CellWords.No.Contains(text.Trim()) ? false : null;

    private static readonly string[] UnitWords =
        ["grams", "kilograms", "troy oz", "troy ounces", "pennyweights", "pounds", "ounces", "millilitres", "US fl oz", "celsius", "fahrenheit", "millimetres", "inches"];

    /// <summary>The sign of the unit that a misspelt word most likely means; null where none is that near.</summary>
    public static string? NearUnit(string text) => Nearest.Close(text, UnitWords) is { } word ? Unit(word) : null;

    /// <summary>The sign of a unit to write answers in; the text itself where it is none known.</summary>
    public static string Unit(string text) => Key(text) switch
    {
        "G" or "GRAM" or "GRAMS" or "GRAMM" => "g",
        "KG" or "KILO" or "KILOGRAM" or "KILOGRAMS" or "KILOGRAMM" => "kg",
        "TROYOZ" or "OZT" or "TROYOUNCE" or "TROYOUNCES" => "troy oz",
        "DWT" or "PENNYWEIGHT" or "PENNYWEIGHTS" => "dwt",
        "LB" or "LBS" or "POUND" or "POUNDS" => "lb",
        "OZ" or "OUNCE" or "OUNCES" => "oz",
        "ML" or "CC" or "CM3" or "MILLILITRE" or "MILLILITRES" or "MILLILITER" or "MILLILITERS" => "ml",
        "FLOZ" or "USFLOZ" or "USFLUIDOUNCE" or "USFLUIDOUNCES" or "FLUIDOUNCE" or "FLUIDOUNCES" or "FLOZUS" => "US fl oz",
        "C" or "DEGC" or "CELSIUS" or "DEGREESCELSIUS" => "°C",
        "F" or "DEGF" or "FAHRENHEIT" or "DEGREESFAHRENHEIT" => "°F",
        "MM" or "MILLIMETRE" or "MILLIMETRES" or "MILLIMETER" or "MILLIMETERS" => "mm",
        "IN" or "INCH" or "INCHES" => "in",
        _ => text,
    };

    public static FlaskState? State(string text) => Key(text) switch
    {
        "PLANNED" => FlaskState.Planned,
        "WAXED" => FlaskState.Waxed,
        "INVESTED" => FlaskState.Invested,
        "INKILN" or "KILN" or "INTHEKILN" => FlaskState.InKiln,
        "POURED" or "CAST" => FlaskState.Poured,
        _ => null,
    };

    /// <summary>What a plan is to save, first things first; what is not named comes last in the usual order. Nothing where a word is unknown or comes twice.</summary>
    public static IReadOnlyList<Wish>? Wishes(string text)
    {
        var wishes = new List<Wish>();
        var words = Split(text);
        for (var i = 0; i < words.Length; i++)
        {
            // What is due is placed first and few moves come last whatever the shop says; to say so is no mistake.
            if ((i == 0 && IsDue(words[i])) || (i > 0 && i == words.Length - 1 && IsChanges(words[i])))
            {
                continue;
            }

            if (WishOf(words[i]) is not { } wish || wishes.Contains(wish))
            {
                return null;
            }

            wishes.Add(wish);
        }

        return wishes.Count == 0 ? null : [.. wishes, .. Enum.GetValues<Wish>().Except(wishes)];
    }

    /// <summary>The wish that the first unknown word most likely means; null where none is that near.</summary>
    public static string? NearWish(string text) =>
        Split(text).FirstOrDefault(w => WishOf(w) is null && !IsDue(w) && !IsChanges(w)) is { } word
            ? Nearest.Close(word, ["flasks", "investment", "powder", "kiln loads", "metal", "like thicknesses"]) : null;

    private static bool IsDue(string word) => Key(word) is "DUE" or "DUEPIECES" or "DUEPLACED" or "DUEPIECESPLACED";

    private static bool IsChanges(string word) => Key(word) is "CHANGES" or "FEWCHANGES" or "FEWESTCHANGES" or "MOVES" or "FEWESTMOVES" or "FEWESTCHANGESAGAINSTTHELASTPLAN";

    private static Wish? WishOf(string word) => Key(word) switch
    {
        "FLASK" or "FLASKS" or "FEWESTFLASKS" or "FEWERFLASKS" => Wish.Flasks,
        "INVESTMENT" or "LEASTINVESTMENT" or "POWDER" or "LEASTPOWDER" => Wish.Investment,
        "KILN" or "LOADS" or "KILNLOADS" or "FEWESTLOADS" or "FEWESTKILNLOADS" or "KILNHOURS" or "KILNLOADSANDHOURS" or "FEWESTKILNLOADSANDHOURS" => Wish.KilnLoads,
        "THICKNESS" or "THICKNESSES" or "LIKETHICKNESS" or "LIKETHICKNESSES" or "LIKETHICKNESSESTOGETHER" or "SECTIONS" or "LIKESECTIONS" => Wish.LikeThicknesses,
        "METAL" or "LEASTMETAL" or "BUTTONS" or "TRUNKS" or "SPRUES" or "BUTTONSANDTRUNKS" or "BUTTONSANDSPRUES" => Wish.Metal,
        _ => null,
    };

    private static string[] Split(string text) =>
        text.Split([",", ";", ">", "\n", " then "], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);

    /// <summary>Steps that take hands, by the words of the bench; nothing where one of them is unknown.</summary>
    public static IReadOnlyList<ClockStepKind>? Hands(string text) => Steps(text, word => word switch
    {
        "MIX" or "MIXING" or "INVEST" or "INVESTING" => [ClockStepKind.Mix, ClockStepKind.BowlVacuum, ClockStepKind.Fill, ClockStepKind.FlaskVacuum],
        "BASEOFF" or "BASE" => [ClockStepKind.BaseOff],
        "LOAD" or "LOADING" or "LOADKILN" or "LOADTHEKILN" => [ClockStepKind.LoadKiln],
        "POUR" or "POURING" or "CAST" or "CASTING" => [ClockStepKind.Pour],
        "QUENCH" or "QUENCHING" => [ClockStepKind.Quench],
        _ => null,
    });

    /// <summary>Steps that run by themselves; nothing where one of the words is unknown.</summary>
    public static IReadOnlyList<ClockStepKind>? Alone(string text) => Steps(text, word => word switch
    {
        "STEAM" or "STEAMDEWAX" => [ClockStepKind.Steam],
        "BURNOUT" or "KILN" => [ClockStepKind.Stage, ClockStepKind.Fall],
        _ => null,
    });

    /// <summary>The letters of flasks, load by load.</summary>
    public static IReadOnlyList<IReadOnlyList<string>> Loads(string text) =>
    [
        .. text.Split([';', '/', '|', '\n'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
            .Select(load => (IReadOnlyList<string>)[.. load.ToUpperInvariant().Split([' ', ',', '+'], StringSplitOptions.RemoveEmptyEntries)]),
    ];

    public static Silica? Silica(string text) => AnswerWords.Meant(text) switch
    {
        "QUARTZ" => Casting.Investing.Silica.Quartz,
        "CRISTOBALITE" => Casting.Investing.Silica.Cristobalite,
        "BOTH" or "CRISTOBALITE QUARTZ" or "BOTH CRISTOBALITE QUARTZ" => Casting.Investing.Silica.Both,
        _ => null,
    };

    /// <summary>Letters only, all capitals: what tells words apart, and not how they are spaced.</summary>
    public static string Key(string text) => string.Concat(text.Where(char.IsLetterOrDigit)).ToUpperInvariant();

    private static List<ClockStepKind>? Steps(string text, Func<string, ClockStepKind[]?> known)
    {
        var steps = new List<ClockStepKind>();
        foreach (var word in text.Split([",", ";", "+", "\n", " and "], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            if (Key(word) is "NONE" or "NOTHING")
            {
                continue;
            }

            if (known(Key(word)) is not { } kinds)
            {
                return null;
            }

            steps.AddRange(kinds);
        }

        return steps;
    }
}
