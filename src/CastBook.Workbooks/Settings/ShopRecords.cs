using System.Globalization;
using CastBook.Casting.Investing;
using CastBook.Casting.Metals;
using CastBook.Planning;
using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Words;
using UnitsNet;

namespace CastBook.Workbooks.Settings;

/// <summary>Rows of the shop's sheets turned into what they are.</summary>
internal static class ShopRecords
{
    public static FlaskSize Flask(ShopRow row) => new()
    {
        Name = row.Name,
        InsideDiameter = row.Length(ShopField.InsideDiameter),
        Height = row.Length(ShopField.Height),
        Owned = row.Count(ShopField.Owned),
        Method = row.Choice(ShopField.Method, ShopWords.Method, WantedWords.Methods),
        Holds = row.Volume(ShopField.Holds),
        Powder = row.Mass(ShopField.Powder),
        Water = row.Volume(ShopField.Water),
        SprueDiameter = row.Length(ShopField.SprueDiameter),
        BaseHeight = row.Length(ShopField.BaseHeight),
        Cup = row.Volume(ShopField.Cup),
        PerTree = row.Count(ShopField.PerTree),
        AboveTree = row.Length(ShopField.AboveTree),
        ToWall = row.Length(ShopField.ToWall),
        Unreadable = row.Unreadable,
    };

    public static Crucible Crucible(ShopRow row) => new()
    {
        Name = row.Name,
        Holds = row.Volume(ShopField.Holds),
        Rated = row.Mass(ShopField.Rated),
        RatedFor = row.Text(ShopField.RatedFor),
        Alloys = Names(row.Text(ShopField.Alloys)),
        MadeOf = row.Text(ShopField.MadeOf),
        Owned = row.Count(ShopField.Owned),
        Unreadable = row.Unreadable,
    };

    public static Kiln Kiln(ShopRow row) => new()
    {
        Name = row.Name,
        Shape = row.Choice(ShopField.Shape, ShopWords.Shape, WantedWords.Shapes),
        InsideWidth = row.Length(ShopField.InsideWidth),
        InsideDepth = row.Length(ShopField.InsideDepth),
        InsideDiameter = row.Length(ShopField.InsideDiameter),
        Power = row.Number(ShopField.Power) is { } kilowatts ? Power.FromKilowatts(kilowatts) : null,
        CoolsDegreesPerHour = row.Number(ShopField.Cools),
        ReadsHighBy = row.Step(ShopField.ReadsHighBy),
        Unreadable = row.Unreadable,
    };

    public static ShopAlloy Alloy(ShopRow row) => new()
    {
        Alloy = new Alloy
        {
            Name = row.Name,
            OtherNames = Names(row.Text(ShopField.OtherNames)),
            Composition = Composition(row),
            Density = row.Density(ShopField.Density),
            Solidus = row.Temperature(ShopField.Solidus),
            Liquidus = row.Temperature(ShopField.Liquidus),
            MetalTemperature = row.Temperature(ShopField.MetalTemperature),
            FlaskTemperatureFine = row.Temperature(ShopField.FlaskTemperatureFine),
            FlaskTemperatureOrdinary = row.Temperature(ShopField.FlaskTemperatureOrdinary),
            FlaskTemperatureHeavy = row.Temperature(ShopField.FlaskTemperatureHeavy),
            QuenchAfter = Quench(row),
        },
        Poisons = row.Text(ShopField.Composition) is { } parts && !CastBook.Casting.Metals.Composition.TryParse(parts, out _, out _)
            ? [.. Elements.BesideNumbers(parts).Where(e => e.Hazard == ElementHazard.Poison)]
            : [],
        Loss = row.Percent(ShopField.Loss),
        Fresh = row.Mass(ShopField.Fresh),
        Remelt = row.Mass(ShopField.Remelt),
        PricePerGram = row.Number(ShopField.Price),
        Unreadable = row.Unreadable,
    };

    public static Material Material(ShopRow row) => new()
    {
        Name = row.Name,
        Kind = row.Choice(ShopField.Kind, ShopWords.Kind, WantedWords.Kinds),
        Density = row.Density(ShopField.Density),
        CubeMass = row.Mass(ShopField.CubeMass),
        CubeEdge = row.Length(ShopField.CubeEdge),
        CubeVolume = row.Volume(ShopField.CubeVolume),
        PrintAtLeast = row.Temperature(ShopField.PrintAtLeast),
        WashAtMost = row.Minutes(ShopField.WashAtMost),
        BathAtMost = row.Minutes(ShopField.BathAtMost),
        CureEachSide = row.Minutes(ShopField.CureEachSide),
        WaterRinse = row.Choice(ShopField.WaterRinse, ShopWords.YesOrNo, WantedWords.YesNo),
        Roughen = row.Choice(ShopField.Roughen, ShopWords.YesOrNo, WantedWords.YesNo),
        Unreadable = row.Unreadable,
    };

    public static Investment Investment(ShopRow row) => Powder(row, Binder(row));

    public static TreeInHand Tree(ShopRow row) => new(
        row.Name,
        row.Text(ShopField.Size),
        row.Mass(ShopField.Base),
        row.Mass(ShopField.TreeOnBase),
        row.Mass(ShopField.OfItWax),
        State(row))
    {
        Unreadable = row.Unreadable,
    };

    private static Investment Powder(ShopRow row, InvestmentKind? kind) => new()
    {
        Name = row.Name,
        Kind = kind,
        WaterPer100 = row.Number(ShopField.WaterPer100),
        PowderDensity = row.Density(ShopField.PowderDensity),
        WorkingTime = row.Minutes(ShopField.WorkingTime),
        SetAtLeast = row.Minutes(ShopField.SetAtLeast),
        NeverAbove = row.Temperature(ShopField.NeverAbove),
        Silica = row.Choice(ShopField.Silica, ShopWords.Silica, WantedWords.Silicas),
        InversionDegreesPerHour = row.Number(ShopField.InversionRate),
        KeptHotAtMost = row.Minutes(ShopField.KeptHot),
        InStock = row.Mass(ShopField.InStock),
        Unreadable = row.Unreadable,
    };

    private static InvestmentKind? Binder(ShopRow row)
    {
        var kind = row.Text(ShopField.Kind) is { } text ? ShopWords.Binder(text) : null;
        if (kind is null && row.Typed(ShopField.Kind) is { } typed)
        {
            row.Fail(Catalogue.PowderKindUnreadable, ShopField.Kind, row.Name, typed);
        }

        return kind;
    }

    // A word that cannot be read says at least that somebody has begun with the flask: nothing in it is moved.
    private static FlaskState State(ShopRow row)
    {
        if (row.Text(ShopField.State) is not { } text)
        {
            return FlaskState.Planned;
        }

        if (ShopWords.State(text) is { } state)
        {
            return state;
        }

        row.Say(Catalogue.FlaskStateUnreadable, ShopField.State, row.Name, text);
        return FlaskState.Waxed;
    }

    private static string[] Names(string? text) =>
        text is null ? [] : text.Split([',', ';', '\n'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);

    private static Composition? Composition(ShopRow row)
    {
        if (row.Text(ShopField.Composition) is not { } text)
        {
            return null;
        }

        if (!CastBook.Casting.Metals.Composition.TryParse(text, out var composition, out var why))
        {
            row.Fail(ShopField.Composition, text, WantedWords.Composition(CompositionFaultWords.Why(why)));
        }

        return composition;
    }

    // One wait for every flask, or three for small, medium and large ones: 8/15/20.
    private static QuenchWaits Quench(ShopRow row)
    {
        var text = row.Text(ShopField.QuenchAfter);
        if (text is null || !text.Contains('/', StringComparison.Ordinal))
        {
            var wait = text is null ? null : row.Minutes(ShopField.QuenchAfter);
            return new QuenchWaits(wait, wait, wait);
        }

        var waits = new List<Duration>();
        foreach (var part in text.Split('/', StringSplitOptions.TrimEntries))
        {
            if (double.TryParse(part, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var minutes) && minutes < 1000)
            {
                waits.Add(Duration.FromMinutes(minutes));
            }
        }

        if (waits.Count != 3)
        {
            row.Fail(ShopField.QuenchAfter, text, WantedWords.OneOrThreeTimes);
            return QuenchWaits.None;
        }

        return new QuenchWaits(waits[0], waits[1], waits[2]);
    }
}
