using CastBook.Planning.Findings;
using CastBook.Planning.Shops;

namespace CastBook.Workbooks.Reading.Headings;

/// <summary>The headings by which the columns of a list of pieces are known, in English and German; a shop adds its own in its settings.</summary>
/// <remarks>
/// A field takes the column that says the earliest of its words; a column once taken is taken, so the order of the fields matters too:
/// with both <c>Bezeichnung</c> and <c>Modell</c> in a list, the first names the piece and the second its material.
/// </remarks>
internal static class HeadingWords
{
    private const WeightMeaning Pattern = WeightMeaning.Pattern;
    private const WeightMeaning Finished = WeightMeaning.FinishedMetal;

    /// <summary>The fields of a piece.</summary>
    public static IReadOnlyList<FieldWords> Piece { get; } =
    [
        new(PieceField.Piece, Dimension.None,
            "piece", "piece name", "item", "item name", "name", "description", "pattern", "pattern name", "model", "model name",
            "design", "part", "part name", "style", "article", "bezeichnung", "benennung", "artikel", "teil", "job", "pieces",
            "code", "item code", "part number", "part no", "sku", "ref", "reference", "no", "nr", "number", "#", "id", "order id", "modell"),
        new(PieceField.Quantity, Dimension.None,
            "qty", "quantity", "qty to cast", "quantity to cast", "to cast", "count", "number of pieces", "no of pieces", "how many",
            "pcs", "pieces", "qnty", "stückzahl", "stück", "anzahl", "menge"),
        new(PieceField.PatternMass, Dimension.Mass, [.. PatternWeights, .. PlainWeights, .. FinishedWeights]),
        new(PieceField.PatternVolume, Dimension.Volume,
            "pattern volume", "pattern volume each", "model volume", "print volume", new HeadingWord("resin volume", Material: "resin"),
            new HeadingWord("wax volume", Material: "wax"), "volume", "volume each", "vol", "modellvolumen", "volumen",
            new HeadingWord("resin", true, Material: "resin"), new HeadingWord("wax", true, Material: "wax")),
        new(PieceField.Alloy, Dimension.None,
            "alloy", "metal", "casting alloy", "metal alloy", "alloy name", "metal type", "type of metal", "legierung", "metall"),
        new(PieceField.Material, Dimension.None,
            "material", "pattern material", "wax or resin", "resin or wax", "wax/resin", "resin/wax", "pattern type", "modellmaterial", "werkstoff", "modell"),
        new(PieceField.Shape, Dimension.None, "shape", "form"),
        new(PieceField.Length, Dimension.Length, "length", "length from gate", "long", "l", "länge", "height", "h", "höhe"),
        new(PieceField.Width, Dimension.Length, "width", "wide", "w", "breite", "b"),
        new(PieceField.Thickness, Dimension.Length, "thickness", "thick", "depth", "t", "d", "dicke", "stärke", "tiefe", "height", "h", "höhe"),
        new(PieceField.FinestSection, Dimension.Length,
            "finest section", "thinnest section", "thinnest", "thinnest wall", "min section", "minimum section", "min wall"),
        new(PieceField.HeaviestSection, Dimension.Length,
            "heaviest section", "thickest section", "thickest", "max section", "maximum section"),
        new(PieceField.Gates, Dimension.None, "gates", "number of gates", "no of gates", "gate count", "sprues"),
        new(PieceField.GateDiameter, Dimension.Length, "gate diameter", "gate dia", "gate ø"),
        new(PieceField.GateLength, Dimension.Length, "gate length"),
        new(PieceField.StonesIn, Dimension.None, "stones in", "stones in wax", "stones in place", "stones set", "with stones"),
        new(PieceField.PerTree, Dimension.None, "per tree", "pieces per tree", "fit a tree", "fits per tree", "max per tree"),
        new(PieceField.PrintedAt, Dimension.Temperature, "printed at", "print temperature", "print temp", "resin temperature", "resin temp"),
        new(PieceField.Washed, Dimension.Time, "washed", "wash", "wash time"),
        new(PieceField.Cured, Dimension.Time, "cured", "cure", "cure time", "cured each side"),
        new(PieceField.Due, Dimension.None, "due", "due date", "deadline", "needed by", "delivery date", "delivery", "fällig", "liefertermin", "termin"),
        new(PieceField.Night, Dimension.None, "night", "casting night"),
        new(PieceField.Done, Dimension.None, "done", "completed", "complete", "cast already", "already cast", "erledigt"),
        new(PieceField.KeepInFlask, Dimension.None, "keep in flask", "wanted flask", "fixed flask"),
        new(PieceField.LeaveOut, Dimension.None, "leave out", "skip", "on hold", "hold", "omit", "exclude"),
    ];

    private static IEnumerable<HeadingWord> PatternWeights =>
    [
        new("pattern weight", Meaning: Pattern), new("pattern weight each", Meaning: Pattern), new("pattern wt", Meaning: Pattern),
        new("pattern mass", Meaning: Pattern), new("weight of pattern", Meaning: Pattern), new("model weight", Meaning: Pattern),
        new("print weight", Meaning: Pattern), new("printed weight", Meaning: Pattern), new("modellgewicht", Meaning: Pattern),
        new("wax weight", false, Pattern, "wax"), new("wax weight each", false, Pattern, "wax"), new("wax wt", false, Pattern, "wax"),
        new("wax mass", false, Pattern, "wax"), new("wachsgewicht", false, Pattern, "wax"),
        new("resin weight", false, Pattern, "resin"), new("resin weight each", false, Pattern, "resin"), new("resin wt", false, Pattern, "resin"),
        new("resin mass", false, Pattern, "resin"), new("harzgewicht", false, Pattern, "resin"),
        new("pattern", true, Pattern), new("model", true, Pattern), new("modell", true, Pattern),
        new("wax", true, Pattern, "wax"), new("wachs", true, Pattern, "wax"), new("resin", true, Pattern, "resin"),
    ];

    private static IEnumerable<HeadingWord> PlainWeights =>
    [
        "weight", "weight each", "each weight", "weight per piece", "piece weight", "unit weight", "wt", "wt each", "wgt", "mass", "mass each",
        "gewicht", "stückgewicht", "einzelgewicht",
    ];

    private static IEnumerable<HeadingWord> FinishedWeights =>
    [
        new("finished weight", Meaning: Finished), new("finished weight each", Meaning: Finished), new("finished wt", Meaning: Finished),
        new("finished metal", true, Finished), new("finished metal weight", Meaning: Finished), new("cast weight", Meaning: Finished),
        new("cast weight each", Meaning: Finished), new("cast wt", Meaning: Finished), new("casting weight", Meaning: Finished),
        new("metal weight", Meaning: Finished), new("metal weight each", Meaning: Finished), new("weight in metal", Meaning: Finished),
        new("fertiggewicht", Meaning: Finished), new("gussgewicht", Meaning: Finished), new("metallgewicht", Meaning: Finished),
    ];
}
