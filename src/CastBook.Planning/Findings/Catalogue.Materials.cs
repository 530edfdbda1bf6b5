namespace CastBook.Planning.Findings;

/// <content>What can be found about pattern materials: their density, what was printed of them, and what castings taught.</content>
public static partial class Catalogue
{
    /// <summary>A pattern material has no density.</summary>
    public static FindingKind PatternDensityMissing { get; } = new(
        "pattern-density-missing", Severity.Stop,
        "No density is known for {0}.",
        "{1}",
        "Weigh a solid cube of it, divide by its measured volume, and type the result as {2}.");

    /// <summary>A resin by its name that the sheet calls a wax.</summary>
    public static FindingKind ResinCalledWax { get; } = new(
        "resin-called-wax", Severity.Check,
        "{0} is a resin by its name, and a wax by Kind on the Materials sheet.",
        "As wax it gets the shorter burnout, and resin that is not burnt out spoils the casting.",
        "Type resin as its Kind, or another name if it is wax.");

    /// <summary>A density learnt from a test cube.</summary>
    public static FindingKind DensityFromCube { get; } = new(
        "density-from-cube", Severity.Note,
        "The density of {0}, {1}, is learnt from its test cube.",
        "", "To change it, type the density on the Materials sheet.");

    /// <summary>A density that no pattern material has.</summary>
    public static FindingKind PatternDensityImpossible { get; } = new(
        "pattern-density-impossible", Severity.Stop,
        "A density of {1} is given for {0}, which no wax or resin has.",
        "The metal follows from it.",
        "Correct {2}, in g/cm³: about 1. Until then it counts as not given.");

    /// <summary>The test cube tells another density than the sheet gives.</summary>
    public static FindingKind CubeDiffers { get; } = new(
        "cube-differs", Severity.Check,
        "The Materials sheet gives {1} for {0}; its test cube tells {2}.",
        "More than 3 % apart, and the metal follows from it. The density given was used.",
        "Weigh and measure the cube again, or clear the density to use the cube's.");

    /// <summary>A test cube that no pattern material can be.</summary>
    public static FindingKind CubeUnlikely { get; } = new(
        "cube-unlikely", Severity.Check,
        "The test cube of {0} tells {1}; such material runs from {2} to {3}.",
        "The metal follows from it.",
        "Weigh and measure the cube again: it must be solid, and its edge is what a caliper reads.");

    /// <summary>Castings that were weighed correct the metal.</summary>
    public static FindingKind CastingsTaught { get; } = new(
        "castings-taught", Severity.Note,
        "Metal of {0} from {1} is taken as {2} of what weight and density come to, as the castings weighed in {3} say.",
        "", "To leave it as reckoned, type no as \"Learn from castings\" on the Shop sheet.");

    /// <summary>Too few castings were weighed to learn from.</summary>
    public static FindingKind CastingsTooFew { get; } = new(
        "castings-too-few", Severity.Note,
        "Nothing is learnt yet about {0} from {1}: castings were weighed in {2}, and three are wanted.",
        "", "Type what one casting weighs, gates off, over Metal each in more lines.");

    /// <summary>The shop wants to learn from castings, and none was weighed.</summary>
    public static FindingKind NoCastingsWeighed { get; } = new(
        "no-castings-weighed", Severity.Note,
        "\"Learn from castings\" is yes, and no line has the weight of a casting beside that of its pattern.",
        "", "Type what one casting weighs, gates off, over Metal each.");

    /// <summary>Castings that were weighed lie too far from what was reckoned, or from one another.</summary>
    public static FindingKind CastingsDisagree { get; } = new(
        "castings-disagree", Severity.Check,
        "The castings weighed of {0} from {1} come to {2} of what was reckoned, the least to {3} and the most to {4}.",
        "More than 10 % off, or more than 5 % apart, is a slip in a weight or a wrong density. Nothing was learnt from them.",
        "Correct what is typed over Metal each, the weights beside it or the material's density.");

    /// <summary>A material's name fits several materials of the shop.</summary>
    public static FindingKind MaterialAmbiguous { get; } = new(
        "material-ambiguous", Severity.Stop,
        "{0} can mean {1}.",
        "They differ in density, and the metal follows from it.",
        "Type one of these names in the list.");

    /// <summary>A material's name fits only one material of the shop.</summary>
    public static FindingKind MaterialTakenAs { get; } = new(
        "material-taken-as", Severity.Note,
        "\"{0}\" is taken as \"{1}\", the only such material on the Materials sheet.",
        "", "To change it, type another name in the list.");

    /// <summary>A material's name is not known.</summary>
    public static FindingKind MaterialUnknown { get; } = new(
        "material-unknown", Severity.Stop,
        "No pattern material is called {0}.",
        "The metal follows from its density.",
        "Type the name you mean{1}, or add the material with its density to the Materials sheet.");

    /// <summary>What a material wants before its pieces go on a tree.</summary>
    public static FindingKind MaterialBeforeTree { get; } = new(
        "material-before-tree", Severity.Note,
        "{0} wants {1}, by its line on the Materials sheet.",
        "", "See to it before its pieces go on a tree.");

    /// <summary>Printed colder than the material allows.</summary>
    public static FindingKind PrintedTooCold { get; } = new(
        "printed-too-cold", Severity.Check,
        "Printed at {0}, but {1} wants at least {2}.",
        "Parts printed too cold may be soft or cured unevenly.",
        "Look at the parts before they go on a tree, or correct the cell.");

    /// <summary>Washed longer than the material allows.</summary>
    public static FindingKind WashedTooLong { get; } = new(
        "washed-too-long", Severity.Check,
        "Washed {0}, but {1} allows {2} at most.",
        "A long wash draws wax out of the surface and swells fine sections.",
        "Look at the parts before they go on a tree, or correct the cell.");

    /// <summary>Longer in one bath than the material allows.</summary>
    public static FindingKind BathTooLong { get; } = new(
        "bath-too-long", Severity.Check,
        "Washed {0} in one bath, but {1} allows {2} in a bath.",
        "A long bath draws wax out of the surface and swells fine sections; one number counts as one bath.",
        "Look at the parts before they go on a tree, or type the baths one by one, such as 1.5 + 1.5.");

    /// <summary>Cured for less than the material wants.</summary>
    public static FindingKind CuredTooShort { get; } = new(
        "cured-too-short", Severity.Check,
        "Cured {0} a side, but {1} wants {2}.",
        "Half-cured resin reacts with the investment and leaves a rough skin.",
        "Cure the parts again, or correct the cell.");
}
