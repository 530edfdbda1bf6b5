namespace CastBook.Planning.Findings;

/// <content>Powder, water, mixes and setting.</content>
public static partial class Catalogue
{
    /// <summary>Several powders and none chosen.</summary>
    public static FindingKind InvestmentNotChosen { get; } = new(
        "investment-not-chosen", Severity.Stop,
        "The Investments sheet has {0}.",
        "Powder and water are worked out once one of them is chosen.",
        "Type its name as \"Investment\" on the Shop sheet.");

    /// <summary>The chosen powder is not on the sheet.</summary>
    public static FindingKind InvestmentUnknown { get; } = new(
        "investment-unknown", Severity.Stop,
        "The Shop sheet names the investment \"{0}\", but the Investments sheet has {1}.",
        "Powder and water are worked out once the two agree.",
        "Type one of those names as \"Investment\" on the Shop sheet.");

    /// <summary>More or less water to the powder than any such powder takes.</summary>
    public static FindingKind WaterRatioImpossible { get; } = new(
        "water-ratio-impossible", Severity.Stop,
        "{0} has {1} parts of water to 100 of powder; such powders take {2} to {3}, by mass.",
        "Too thin a mould breaks and too thick a mix does not run, so powder and water are not worked out.",
        "Type the parts of water to 100 of powder from the maker's data sheet under \"Water per 100\" on the Investments sheet: 40 where it says 0.40.");

    /// <summary>A powder that is not gypsum-bonded, without numbers of its own.</summary>
    public static FindingKind PowderNumbersMissing { get; } = new(
        "powder-numbers-missing", Severity.Stop,
        "{0} is no gypsum-bonded powder, and its row says nothing under {1}.",
        "What is usual for gypsum-bonded powders breaks such a mould, or lets it set in the bowl, so powder and water are not worked out.",
        "Type the numbers of the maker's data sheet on the Investments sheet.");

    /// <summary>A chart with more or less water to the powder than any such powder takes.</summary>
    public static FindingKind WaterChartUnlikely { get; } = new(
        "water-chart-unlikely", Severity.Check,
        "The chart for flask size \"{0}\" gives {1}: {2} parts of water to 100 of powder; such powders take {3} to {4}, by mass.",
        "Too thin a mould breaks and too thick a mix does not run. The chart was used.",
        "Check \"Powder\" and \"Water\" on the Flasks sheet, and the units in their headings.");

    /// <summary>A density that no powder's grains have.</summary>
    public static FindingKind PowderDensityImpossible { get; } = new(
        "powder-density-impossible", Severity.Check,
        "{0} has a powder density of {1}; the grains of casting powders lie between {2} and {3}.",
        "A heap is lighter than its grains, for there is air in it; with its density too little powder is weighed out. {4} was used.",
        "Clear \"Powder density\" on the Investments sheet, or type that of the grains.");

    /// <summary>Chart and computed powder far apart.</summary>
    public static FindingKind PowderChartDiffers { get; } = new(
        "powder-chart-differs", Severity.Check,
        "The chart gives {1} of powder for flask size \"{0}\", {2} are worked out.",
        "More than 15 % apart. The chart was used; too little leaves the tree uncovered.",
        "Check \"Powder\" on the Flasks sheet, and that its diameter is the inside one.");

    /// <summary>Too little powder.</summary>
    public static FindingKind PowderShort { get; } = new(
        "powder-short", Severity.Stop,
        "{0}: {1} of powder needed, {2} in stock.",
        "A mix cannot wait for powder.",
        "Buy {3}, or correct \"In stock\" on the Investments sheet.");

    /// <summary>A set shorter than anybody publishes.</summary>
    public static FindingKind SetTooShort { get; } = new(
        "set-too-short", Severity.Check,
        "{0} is to set for {1}.",
        "Published times start at an hour; a green mould cracks and its skin comes off with the wax.",
        "Correct \"Set at least\" on the Investments sheet, or check it against the maker's data sheet.");

    /// <summary>No mixing bowl is known.</summary>
    public static FindingKind MixingBowlNotKnown { get; } = new(
        "mixing-bowl-not-known", Severity.Note,
        "Nothing says what the mixing bowl holds, so powder and water are given flask by flask and not put together to mixes.",
        "", "Type its volume to the brim in ml as \"Mixing bowl\" on the Shop sheet.");

    /// <summary>Not even one flask can be filled in the working time.</summary>
    public static FindingKind WorkingTimeTooShort { get; } = new(
        "working-time-too-short", Severity.Stop,
        "{0} loses its gloss after {1}; mixing, filling one flask and both vacuums take {2} and must be over {3} before that.",
        "A mould that is moved while it sets cracks, so no mix is planned.",
        "Shorten a step on the Shop sheet, or correct \"Working time\" on the Investments sheet.");
}
