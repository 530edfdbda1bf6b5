namespace CastBook.Planning.Findings;

/// <content>What can be found about kilns and their loads.</content>
public static partial class Catalogue
{
    /// <summary>A flask that no kiln takes.</summary>
    public static FindingKind FlaskOverKiln { get; } = new(
        "flask-over-kiln", Severity.Check,
        "Flask {0} is {1} wide outside and finds no room in any kiln with {2} around it.",
        "It is in no kiln load and not on the clock.",
        "Check the inside sizes on the Kilns sheet and \"Gap in the kiln\" on the Shop sheet, or burn it out elsewhere.");

    /// <summary>A flask that the shop wants in a load and that is not there.</summary>
    public static FindingKind KilnLoadsNameNoFlask { get; } = new(
        "kiln-loads-name-no-flask", Severity.Check,
        "\"Kiln loads\" names flask {0}, which does not wait for the kiln tonight.",
        "The flasks it does name stand together as it says, and all others as they fit.",
        "Correct \"Kiln loads\" on the Shop sheet, or clear it when the next night is planned.");

    /// <summary>Flasks that wait for a more demanding one in their load.</summary>
    public static FindingKind LoadWaitsForAFlask { get; } = new(
        "load-waits-for-a-flask", Severity.Note,
        "Load {0} takes {1} by \"{2}\", for the sake of {3}; by itself {4} could be poured after {5}.",
        "", "Nothing to do. To run them apart, type \"{6}\" as \"Kiln loads\" on the Shop sheet.");

    /// <summary>The last hold is longer than the schedule's.</summary>
    public static FindingKind LastHoldLengthened { get; } = new(
        "last-hold-lengthened", Severity.Note,
        "The schedule \"{0}\" is held at {1} for {2} instead of {3}: by estimate the core of flask {4} may need so long to be within {5} of the kiln.",
        "", "Nothing to do. If you know that your moulds follow faster, pour earlier.");

    /// <summary>The core may not reach the top.</summary>
    public static FindingKind CoreBehindAtTop { get; } = new(
        "core-behind-at-top", Severity.Check,
        "When the hold of the schedule \"{0}\" at {1} ends, the core of flask {2} has by estimate between {3} and {4}.",
        "Carbon that is not burnt out of the core gives gas and rough castings; the drying of the mould comes on top of this.",
        "Hold the top {5} longer on the Schedules sheet, or put smaller flasks into this load.");

    /// <summary>Moulds that wait in the hot kiln for longer than their powder bears.</summary>
    public static FindingKind KeptHotTooLong { get; } = new(
        "kept-hot-too-long", Severity.Check,
        "{0} {1} up to {2} in the hot kiln before the pour, counted from when the kiln has fallen to the first flask temperature; {3} is to be kept hot for {4} at most.",
        "Gypsum goes on breaking down in a hot kiln, which gives gas and rough castings.",
        "Part the load with \"Kiln loads\" on the Shop sheet, so that fewer flasks wait for others.");

    /// <summary>Moulds that wait in the hot kiln for long, and nothing says how long they may.</summary>
    public static FindingKind KeptHotNotKnown { get; } = new(
        "kept-hot-not-known", Severity.Note,
        "{0} {1} up to {2} in the hot kiln before the pour, longer than any published schedule holds, and nothing says how long {3} bears that.",
        "", "Look into the data sheet of your powder for its limit and type it as \"Kept hot at most\" on the Investments sheet.");

    /// <summary>Too fast through an inversion, by the maker.</summary>
    public static FindingKind InversionTooFast { get; } = new(
        "inversion-too-fast", Severity.Check,
        "The schedule \"{0}\" goes from {1} to {2} at {3}, and {4}: {5} is to go through that at no more than {6}.",
        "Silica changes its volume there at a stroke; a mould that is taken through it too fast cracks, and the metal runs into the cracks.",
        "Type a lower rate for that stage on the Schedules sheet, or part it so that it is slow there.");

    /// <summary>A stage without a rate goes through an inversion whose rate has a limit.</summary>
    public static FindingKind InversionRateNotSet { get; } = new(
        "inversion-rate-not-set", Severity.Check,
        "The schedule \"{0}\" goes from {1} to {2} without a rate, and {3}: {4} is to go through that at no more than {5}.",
        "Without a rate the kiln goes as fast as it can; a mould that is taken through it too fast cracks, and the metal runs into the cracks.",
        "Type a rate for that stage on the Schedules sheet.");

    /// <summary>Faster through an inversion than any published programme.</summary>
    public static FindingKind InversionFasterThanPublished { get; } = new(
        "inversion-faster-than-published", Severity.Note,
        "The schedule \"{0}\" goes from {1} to {2} at {3}, and {4}; published programmes go up by {5} at most.",
        "", "Look into the data sheet of your powder for its limit and type it as \"Inversion at most\" on the Investments sheet.");

    /// <summary>A kiln that cannot drive the water out in time.</summary>
    public static FindingKind KilnTooWeakToDry { get; } = new(
        "kiln-too-weak-to-dry", Severity.Check,
        "The moulds of load {0} hold {1} of water, which takes {2} kWh to boil off; \"{3}\" gives {4} kWh until the end of the first stage, before any loss.",
        "A mould that is wet when its kiln goes on bursts or cracks, and its burnout begins late.",
        "Hold the first stage {5} or longer on the Schedules sheet, or put fewer flasks into the load.");

    /// <summary>Nobody has said how strong the kiln is.</summary>
    public static FindingKind KilnPowerNotKnown { get; } = new(
        "kiln-power-not-known", Severity.Note,
        "Nothing says how strong the kiln is, and the moulds of load {0} hold {1} of water: whether it can dry them in time is not known.",
        "", "Type \"Power\" on the Kilns sheet, in kW, as its plate says.");

    /// <summary>Nobody has said how fast the kiln cools.</summary>
    public static FindingKind KilnCoolingNotKnown { get; } = new(
        "kiln-cooling-not-known", Severity.Note,
        "Nothing says how fast the kiln cools, so {0} in an hour was counted for its fall to flask temperature.",
        "", "Note its temperature every half hour on its way down, and type the fall in an hour as \"Cools\" on the Kilns sheet.");
}
