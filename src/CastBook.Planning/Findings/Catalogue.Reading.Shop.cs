namespace CastBook.Planning.Findings;

/// <content>What can be wrong with the shop's own sheets and settings.</content>
public static partial class Catalogue
{
    /// <summary>A value of a shop sheet that cannot be read.</summary>
    public static FindingKind ShopValueUnreadable { get; } = new(
        "shop-value-unreadable", Severity.Stop,
        "\"{0}\" under {1} is not {2}.", "For {3} it counts as not given, and nothing usual takes its place where that could hurt.", "Type {2}, or leave the cell empty.");

    /// <summary>A kind of investment powder that is none.</summary>
    public static FindingKind PowderKindUnreadable { get; } = new(
        "powder-kind-unreadable", Severity.Stop,
        "Investment {0} has the Kind \"{1}\", which is neither gypsum nor high temperature.",
        "Water, working time and burnout of one kind ruin a mould of the other, so powder and water are not worked out, no usual schedule is used, and what gypsum does not bear is refused.",
        "Type gypsum or high temperature there.");

    /// <summary>Plain ounces of metal on a shop sheet.</summary>
    public static FindingKind ShopPlainOunce { get; } = new(
        "shop-plain-ounce", Severity.Check,
        "{0}: {1} was read as {2}, in ordinary ounces of 28.35 g.", "Precious metal is often weighed in troy ounces of 31.10 g.",
        "If troy ounces are meant, write ozt for oz.");

    /// <summary>Plain ounces of powder or wax on a shop sheet.</summary>
    public static FindingKind ShopOunceOfPowder { get; } = new(
        "shop-ounce-of-powder", Severity.Note,
        "{0}: {1} was read as {2}, in ordinary ounces of 28.35 g, as powder and wax are sold.", "A troy ounce is a tenth heavier.",
        "If troy ounces are meant, write ozt for oz.");

    /// <summary>Two columns of a shop sheet claim the same field.</summary>
    public static FindingKind ShopHeadingAmbiguous { get; } = new(
        "shop-heading-ambiguous", Severity.Stop,
        "Columns {0} and {1} both say \"{2}\".", "Which of the two counts cannot be told, so neither was read.",
        "Rename the one that is not meant.");

    /// <summary>A column of a shop sheet whose unit measures something else.</summary>
    public static FindingKind ShopUnitAstray { get; } = new(
        "shop-unit-astray", Severity.Check,
        "{0} says \"{1}\", and {2} is no unit of {3}.", "The column was not read, and the plan goes by what it knows without it.",
        "Write a unit of {3} there, such as {4}, and the numbers in that unit.");

    /// <summary>The same name twice on a shop sheet.</summary>
    public static FindingKind ShopNameTwice { get; } = new(
        "shop-name-twice", Severity.Check,
        "The {0} stands twice on sheet {1}.", "Only the first line of it was read.", "Rename or delete the other line.");

    /// <summary>A line of the book that says something else than the shop file's line of that name.</summary>
    public static FindingKind ShopFileDiffers { get; } = new(
        "shop-file-differs", Severity.Note,
        "Of {0} the book says \"{1}\" under {2}, and {3} says \"{4}\".", "The book wins over the shop file, so \"{1}\" was used.",
        "Mend the one that is wrong; an empty cell in the book leaves it to the shop file.");

    /// <summary>A burnout schedule that stands in the book and, with other stages, in the shop file.</summary>
    public static FindingKind ShopFileSchedule { get; } = new(
        "shop-file-schedule-differs", Severity.Note,
        "Schedule {0} stands in the book and, otherwise, in {1}.", "The book wins over the shop file, so its lines were used.",
        "Delete the lines that no longer hold.");

    /// <summary>A flask size that nobody named.</summary>
    public static FindingKind FlaskNamedByMeasures { get; } = new(
        "flask-named-by-measures", Severity.Note,
        "A size of flask has no name at {0}; it is called {1} by its measures.", "", "To call it otherwise, type its name there.");

    /// <summary>A stage without target or hold.</summary>
    public static FindingKind ScheduleStageIncomplete { get; } = new(
        "schedule-stage-incomplete", Severity.Stop,
        "Schedule {0} has no {2} in row {1}.", "A burnout is never guessed, so the schedule is not used, nor another in its place.",
        "Type the {2}, or delete the schedule's lines.");

    /// <summary>A value of a schedule that cannot be read: without it the others would be another burnout.</summary>
    public static FindingKind ScheduleValueUnreadable { get; } = new(
        "schedule-value-unreadable", Severity.Stop,
        "\"{0}\" under {1} is not {2}.", "A burnout is never guessed, so {3} is not used, nor another in its place.", "Type {2}, or empty the cell if there is to be none.");

    /// <summary>A schedule for something that no schedule is chosen for.</summary>
    public static FindingKind ScheduleUseUnreadable { get; } = new(
        "schedule-use-unreadable", Severity.Stop,
        "Schedule {0} is for \"{1}\", which is not wax, resin or stones.", "A mould that is burnt out by the schedule of something else is spoilt, so this one is not used, nor another in its place.",
        "Type wax, resin or stones there, or leave the cell empty if the schedule is for wax and resin alike.");

    /// <summary>A setting whose name is not known.</summary>
    public static FindingKind SettingUnknown { get; } = new(
        "setting-unknown", Severity.Check,
        "No setting is called \"{0}\".", "It was left alone.", "The nearest is \"{1}\".");

    /// <summary>A setting whose value cannot be read.</summary>
    public static FindingKind SettingUnreadable { get; } = new(
        "setting-unreadable", Severity.Stop,
        "{0} says \"{1}\", which is not {2}.", "It counts as not answered.", "Type {2}.{3}");

    /// <summary>A settings file that is no valid JSON.</summary>
    public static FindingKind SettingsFileUnreadable { get; } = new(
        "settings-file-unreadable", Severity.Stop,
        "The settings file {0} cannot be read.", NothingWritten, "Mend it, or take it away.");

    /// <summary>The shop file that the settings name cannot be read.</summary>
    public static FindingKind ShopFileUnreadable { get; } = new(
        "shop-file-unreadable", Severity.Stop,
        "The shop file {0} cannot be opened.", NothingWritten, "Put it there, or take \"shop\" out of castbook.json.");
}
