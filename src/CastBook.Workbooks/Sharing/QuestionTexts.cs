using CastBook.Planning.Shops;
using CastBook.Workbooks.Reading.Headings;
using CastBook.Workbooks.Settings;
using CastBook.Workbooks.Sheets;

namespace CastBook.Workbooks.Sharing;

/// <summary>The texts on sheets of the shop that are CastBook's own: headings and what explains a sheet or a setting.</summary>
internal static class QuestionTexts
{
    /// <summary>The texts that may stand above and in the headings of a shop sheet.</summary>
    /// <param name="sheet">The sheet's name.</param>
    /// <param name="wishes">What else is known.</param>
    public static IReadOnlySet<string> Of(string sheet, ShareWishes wishes) =>
        new HashSet<string>([.. wishes.KnownTexts, sheet, "Setting", "Value", "Unit", "What it is for", .. QuestionSheets.Explanations], StringComparer.OrdinalIgnoreCase);

    /// <summary>Whether a text in the row of a setting is its name, its unit or what it is for.</summary>
    /// <param name="text">The text.</param>
    /// <param name="guide">The setting.</param>
    public static bool Says(string text, SettingGuide guide) =>
        text == guide.WhatFor || text == guide.In(ShopUnits.UnitedStates).WhatFor || CellUnit.TryParse(text, out _)
        || (ShopWords.Key(text) == ShopWords.Key(guide.Name) && text.Length <= guide.Name.Length + 2);
}
