using CastBook.Planning.Shops;

namespace CastBook.Templates.Sheets;

/// <summary>The shop's answers and choices, a setting a line.</summary>
internal static class SettingsSheet
{
    public const string Name = "Shop";

    public static Choices Methods { get; } = Choices.Of("vacuum perforated", "vacuum solid", "spin");

    public static SheetSpec Spec { get; } = new(Name, "Your answers and choices. An empty value means that you have not said.",
    [
        new("Setting", 22, CellKind.Words, "The setting's name. Leave it as it is."),
        new("Value", 20, CellKind.Either, "Your answer."),
        new("Unit", 11, CellKind.Words, "The unit of the value."),
        new("What it is for", 74, CellKind.Words, "What the setting does."),
    ]);

    public static IReadOnlyList<ShopSetting> Settings { get; } = [.. Answers(), .. Steps(), .. Trees()];

    private static ShopSetting[] Answers() =>
    [
        new(SettingName.WeightsAreOf, "", "What the weight column weighs: the pattern, or the finished metal of an earlier casting.")
            { Choices = Choices.Of("pattern", "finished metal") },
        new(SettingName.PatternMaterial, "", "Material of lines that name none: a name of the Materials sheet.") { Choices = Choices.From(MaterialsSheet.Name) },
        new(SettingName.PatternDensity, "g/cm³", "Density of the material of lines that name none."),
        new(SettingName.SprueWaxDensity, "g/cm³", "Density of the wax that trunks and gates are built of. Empty: 0.95, and the plan says so."),
        new(SettingName.CastingMethod, "", "How you cast. It decides clearances and limits.") { Choices = Methods },
        new(SettingName.CrucibleHolds, "ml", "Volume of your crucible to the brim, where the Crucibles sheet is empty."),
        new(SettingName.Investment, "", "The powder in use, where the Investments sheet has several.") { Choices = Choices.From(InvestmentsSheet.Name) },
        new(SettingName.Night, "", "Which night to plan, where the Night column names several."),
    ];

    private static ShopSetting[] Steps() =>
    [
        new(SettingName.ButtonShare, "%", "The least button, as a share of pieces and tree. Empty: 20."),
        new(SettingName.ButtonAtLeast, "ml", "The least button by volume. Empty: 1.5."),
        new(SettingName.MeltLoss, "%", "Metal lost in melting. Empty: 1."),
        new(SettingName.ChargeStep, "g", "Charges are rounded up to this step. Empty: 1."),
        new(SettingName.PowderStep, "g", "Powder is rounded up to this step. Empty: 5."),
    ];

    private static ShopSetting[] Trees() =>
    [
        new(SettingName.GapBetweenPieces, "mm", "The least gap between two pieces on a tree. Empty: 3."),
        new(SettingName.GateLength, "mm", "Length of a gate where the piece names none. Empty: at most 7."),
        new(SettingName.GateDiameter, "mm", "Diameter of a gate where the piece names none."),
        new(SettingName.GateAngle, "°", "Angle between trunk and pieces. Empty: 50."),
    ];
}

/// <summary>A line of the Shop sheet.</summary>
/// <param name="Name">The setting's name.</param>
/// <param name="Unit">The unit its value is read in; empty for words.</param>
/// <param name="Meaning">What it is for, and what an empty value means.</param>
internal sealed record ShopSetting(string Name, string Unit, string Meaning)
{
    /// <summary>The drop-down list, where the answer is one of a few.</summary>
    public Choices? Choices { get; init; }
}
