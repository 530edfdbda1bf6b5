using CastBook.Planning.Findings;
using CastBook.Workbooks.Reading.Headings;

namespace CastBook.Workbooks.Settings;

/// <summary>A sheet of the shop's: its usual name, what its rows are, and its columns.</summary>
/// <param name="Name">Its usual name.</param>
/// <param name="Kind">What a row of it is.</param>
/// <param name="Called">What a sentence calls a row.</param>
/// <param name="Columns">Its columns; the first one names the row.</param>
internal sealed record ShopSheet(string Name, SubjectKind Kind, string Called, IReadOnlyList<FieldHeadings> Columns)
{
    /// <summary>The words of the columns, to be looked up.</summary>
    public WordIndex Index { get; } = new(Columns);

    /// <summary>Other names under which shops keep it; such a sheet is it only where it has the columns of one.</summary>
    public IReadOnlyList<string> OtherNames { get; private init; } = [];

    /// <summary>The columns of which it must have one under another name.</summary>
    public IReadOnlyList<string> Telling { get; private init; } = [];

    /// <summary>Whether a sheet of a name may be it.</summary>
    /// <param name="name">The name.</param>
    public bool MayBeCalled(string name) => IsName(Name, name) || OtherNames.Any(other => IsName(other, name));

    /// <summary>Whether a sheet of a name and with these columns is it.</summary>
    /// <param name="name">The name.</param>
    /// <param name="fields">The fields that its columns mean.</param>
    public bool Is(string name, IEnumerable<string> fields) => IsName(Name, name) || (MayBeCalled(name) && fields.Any(Telling.Contains));

    /// <summary>Fields of the shop file's line that hold no longer where the book's line says something else of the same thing.</summary>
    public IReadOnlyList<FieldBond> Bonds { get; private init; } = [];

    public static ShopSheet Flasks { get; } = new("Flasks", SubjectKind.FlaskSize, Words.ShopRowWords.FlaskSize,
    [
        new(ShopField.Name, Dimension.None, "size", "flask size", "flask", "name"),
        new(ShopField.InsideDiameter, Dimension.Length, "inside diameter", "diameter inside", "inside dia", "diameter", "dia", "ø"),
        new(ShopField.Height, Dimension.Length, "height"),
        new(ShopField.Owned, Dimension.None, "owned", "we own", "how many", "count", "qty", "number"),
        new(ShopField.Method, Dimension.None, "method", "casting method"),
        new(ShopField.Holds, Dimension.Volume, "holds", "volume"),
        new(ShopField.Powder, Dimension.Mass, "powder", "investment"),
        new(ShopField.Water, Dimension.Volume, "water"),
        new(ShopField.SprueDiameter, Dimension.Length, "sprue diameter", "sprue dia", "trunk diameter", new("sprue") { NeedsUnit = true }, new("trunk") { NeedsUnit = true }),
        new(ShopField.BaseHeight, Dimension.Length, "base height", "sprue base height", new("base") { NeedsUnit = true }),
        new(ShopField.Cup, Dimension.Volume, "cup", "cup volume", "button cup"),
        new(ShopField.PerTree, Dimension.None, "per tree", "pieces per tree"),
        new(ShopField.AboveTree, Dimension.Length, "above tree", "above the tree"),
        new(ShopField.ToWall, Dimension.Length, "to wall", "to the wall"),
    ])
    {
        Bonds = [new([ShopField.InsideDiameter, ShopField.Height], [ShopField.Holds, ShopField.Powder, ShopField.Water])],
    };

    public static ShopSheet Crucibles { get; } = new("Crucibles", SubjectKind.Crucible, Words.ShopRowWords.Crucible,
    [
        new(ShopField.Name, Dimension.None, "crucible", "name"),
        new(ShopField.Holds, Dimension.Volume, "holds", "volume"),
        new(ShopField.Rated, Dimension.Mass, "rated", "rating"),
        new(ShopField.RatedFor, Dimension.None, "rated for"),
        new(ShopField.Alloys, Dimension.None, "alloys", "for alloys", "alloy"),
        new(ShopField.MadeOf, Dimension.None, "made of", "crucible material"),
        new(ShopField.Owned, Dimension.None, "owned", "we own", "how many", "count", "qty"),
    ])
    {
        Bonds = [new([ShopField.Rated], [ShopField.RatedFor])],
    };

    public static ShopSheet Kilns { get; } = new("Kilns", SubjectKind.Kiln, Words.ShopRowWords.Kiln,
    [
        new(ShopField.Name, Dimension.None, "kiln", "name"),
        new(ShopField.Shape, Dimension.None, "shape"),
        new(ShopField.InsideWidth, Dimension.Length, "inside width", "width"),
        new(ShopField.InsideDepth, Dimension.Length, "inside depth", "depth"),
        new(ShopField.InsideDiameter, Dimension.Length, "inside diameter", "diameter"),
        new(ShopField.Power, Dimension.Power, "power"),
        new(ShopField.Cools, Dimension.Rate, "cools", "cooling"),
        new(ShopField.ReadsHighBy, Dimension.Temperature, "reads high by", "reads high"),
    ])
    {
        Bonds = [new([ShopField.Shape], [ShopField.InsideWidth, ShopField.InsideDepth, ShopField.InsideDiameter])],
    };

    public static ShopSheet Alloys { get; } = new("Alloys", SubjectKind.Alloy, Words.ShopRowWords.Alloy,
    [
        new(ShopField.Name, Dimension.None, "alloy", "name", "metal"),
        new(ShopField.OtherNames, Dimension.None, "other names", "also called", "aliases"),
        new(ShopField.Composition, Dimension.None, "composition"),
        new(ShopField.Density, Dimension.Density, "density"),
        new(ShopField.Solidus, Dimension.Temperature, "solidus"),
        new(ShopField.Liquidus, Dimension.Temperature, "liquidus"),
        new(ShopField.MetalTemperature, Dimension.Temperature, "metal temp", "metal temperature", "pouring temperature"),
        new(ShopField.FlaskTemperatureFine, Dimension.Temperature, "flask temp fine", "flask temperature fine"),
        new(ShopField.FlaskTemperatureOrdinary, Dimension.Temperature, "flask temp ordinary", "flask temperature ordinary"),
        new(ShopField.FlaskTemperatureHeavy, Dimension.Temperature, "flask temp heavy", "flask temperature heavy"),
        new(ShopField.QuenchAfter, Dimension.Time, "quench after", "quench"),
        new(ShopField.Loss, Dimension.Percent, "loss", "melt loss"),
        new(ShopField.Fresh, Dimension.Mass, "fresh", "fresh metal"),
        new(ShopField.Remelt, Dimension.Mass, "re-melt", "remelt"),
        new(ShopField.Price, Dimension.Price, "price"),
    ])
    {
        OtherNames = ["Metals", "Metal"],
        Telling = [ShopField.Composition, ShopField.Density, ShopField.Solidus, ShopField.Liquidus, ShopField.MetalTemperature],
        Bonds =
        [
            new(
                [ShopField.Composition],
                [
                    ShopField.Density, ShopField.Solidus, ShopField.Liquidus, ShopField.MetalTemperature, ShopField.FlaskTemperatureFine,
                    ShopField.FlaskTemperatureOrdinary, ShopField.FlaskTemperatureHeavy, ShopField.QuenchAfter,
                ]),
        ],
    };

    public static ShopSheet Materials { get; } = new("Materials", SubjectKind.Material, Words.ShopRowWords.Material,
    [
        new(ShopField.Name, Dimension.None, "material", "name"),
        new(ShopField.Kind, Dimension.None, "kind", "type"),
        new(ShopField.Density, Dimension.Density, "density"),
        new(ShopField.CubeMass, Dimension.Mass, "cube weighs", "test cube weighs", "cube weight"),
        new(ShopField.CubeEdge, Dimension.Length, "cube edge", "test cube edge"),
        new(ShopField.CubeVolume, Dimension.Volume, "cube volume", "test cube volume"),
        new(ShopField.PrintAtLeast, Dimension.Temperature, "print at least", "print at"),
        new(ShopField.WashAtMost, Dimension.Time, "wash at most", "wash"),
        new(ShopField.BathAtMost, Dimension.Time, "each bath at most", "bath at most", "bath"),
        new(ShopField.CureEachSide, Dimension.Time, "cure each side", "cure"),
        new(ShopField.WaterRinse, Dimension.None, "water rinse", "rinse in water"),
        new(ShopField.Roughen, Dimension.None, "roughen", "roughened"),
    ])
    {
        Bonds =
        [
            new(
                [ShopField.Kind],
                [
                    ShopField.Density, ShopField.CubeMass, ShopField.CubeEdge, ShopField.CubeVolume, ShopField.PrintAtLeast, ShopField.WashAtMost,
                    ShopField.BathAtMost, ShopField.CureEachSide, ShopField.WaterRinse, ShopField.Roughen,
                ]),
            new(
                [ShopField.CubeMass, ShopField.CubeEdge, ShopField.CubeVolume],
                [ShopField.Density, ShopField.CubeMass, ShopField.CubeEdge, ShopField.CubeVolume])
            {
                BySayingAny = true,
            },
        ],
    };

    public static ShopSheet Investments { get; } = new("Investments", SubjectKind.Investment, Words.ShopRowWords.Investment,
    [
        new(ShopField.Name, Dimension.None, "investment", "powder", "name"),
        new(ShopField.Kind, Dimension.None, "kind", "type"),
        new(ShopField.WaterPer100, Dimension.None, "water per 100", "water to 100 powder"),
        new(ShopField.PowderDensity, Dimension.Density, "powder density", "density"),
        new(ShopField.WorkingTime, Dimension.Time, "working time"),
        new(ShopField.SetAtLeast, Dimension.Time, "set at least", "set"),
        new(ShopField.NeverAbove, Dimension.Temperature, "never above"),
        new(ShopField.Silica, Dimension.None, "silica"),
        new(ShopField.InversionRate, Dimension.Rate, "inversion at most", "inversion rate"),
        new(ShopField.KeptHot, Dimension.Time, "kept hot at most", "kept hot"),
        new(ShopField.InStock, Dimension.Mass, "in stock", "stock"),
    ]);

    public static ShopSheet Schedules { get; } = new("Schedules", SubjectKind.Schedule, Words.ShopRowWords.Schedule,
    [
        new(ShopField.Name, Dimension.None, "schedule", "name"),
        new(ShopField.For, Dimension.None, "for"),
        new(ShopField.UpToDiameter, Dimension.Length, "up to diameter"),
        new(ShopField.UpToHeight, Dimension.Length, "up to height"),
        new(ShopField.LoadAt, Dimension.Temperature, "load at"),
        new(ShopField.Stage, Dimension.None, "stage", "step"),
        new(ShopField.Target, Dimension.Temperature, "target"),
        new(ShopField.Rate, Dimension.Rate, "rate"),
        new(ShopField.Hold, Dimension.Time, "hold"),
    ]);

    public static ShopSheet Trees { get; } = new("Trees", SubjectKind.Flask, Words.ShopRowWords.Flask,
    [
        new(ShopField.Name, Dimension.None, "flask"),
        new(ShopField.Size, Dimension.None, "size"),
        new(ShopField.Base, Dimension.Mass, "base"),
        new(ShopField.TreeOnBase, Dimension.Mass, "tree on base"),
        new(ShopField.OfItWax, Dimension.Mass, "of it wax"),
        new(ShopField.State, Dimension.None, "state"),
    ]);

    /// <summary>The sheets of a shop, without ours.</summary>
    public static IReadOnlyList<ShopSheet> OfShop { get; } = [Flasks, Crucibles, Kilns, Alloys, Materials, Investments, Schedules];

    private static bool IsName(string one, string other) => one.Equals(other.Trim(), StringComparison.OrdinalIgnoreCase);
}
