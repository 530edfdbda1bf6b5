using CastBook.Planning.Shops;
using CastBook.Templates.Words;

namespace CastBook.Templates.Sheets;

/// <summary>The shop's answers and choices, a setting a line.</summary>
internal static class SettingsSheet
{
    public const string Name = "Shop";

    /// <summary>The heading of the column with the units.</summary>
    public const string UnitHeading = "Unit";

    /// <summary>The ways to cast, for this sheet and for a flask that is cast another way.</summary>
    public static Choices Methods { get; } = Choices.Of([.. SettingGuide.Of(SettingName.CastingMethod).Choices]);

    public static SheetSpec Spec { get; } = new(Name, SettingsWords.Purpose,
    [
        new("Setting", 22, ColumnKind.Words, SettingsWords.Setting),
        new("Value", 20, ColumnKind.Either, SettingsWords.Value),
        new(UnitHeading, 11, ColumnKind.Words, SettingsWords.Unit),
        new("What it is for", 82, ColumnKind.Words, SettingsWords.WhatFor) { Wraps = true },
    ]);

    /// <summary>The settings, in the order in which a shop should answer.</summary>
    public static IReadOnlyList<SettingGuide> Settings => SettingGuide.All;

    /// <summary>The drop-down list of a setting, where it has one.</summary>
    /// <param name="setting">The setting.</param>
    public static Choices? ChoicesOf(SettingGuide setting) => setting.Name switch
    {
        SettingName.PatternMaterial => Choices.From(MaterialsSheet.Name),
        SettingName.Investment => Choices.From(InvestmentsSheet.Name),
        _ when setting.Choices.Count > 0 => Choices.Of([.. setting.Choices]),
        _ => null,
    };
}
