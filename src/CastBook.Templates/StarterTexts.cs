using CastBook.Planning.Shops;
using CastBook.Templates.Sheets;
using CastBook.Templates.Starters;
using CastBook.Templates.Words;
using CastBook.Templates.Writing;

namespace CastBook.Templates;

/// <summary>The texts that the starter books come with: headings, explanations, input messages and words to choose from.</summary>
public static class StarterTexts
{
    /// <summary>All of them.</summary>
    public static IReadOnlySet<string> All { get; } = new HashSet<string>(
        [
            .. Enum.GetValues<StarterKind>().SelectMany(kind => HowTo.Of(kind, withExamples: true).Concat(HowTo.Of(kind, withExamples: false))),
            .. HowToWords.Asking,
            .. Rules.Messages,
            .. Sheets.Concat(Sheets.Select(s => UsUnits.Of(s, []).Spec)).Concat(Sheets.Select(s => SheetUnits.Of(s, ShopUnits.UnitedStates)))
                .SelectMany(s => s.Columns.SelectMany(TextsOf).Append(s.Purpose)),
            .. SettingGuide.All.Concat(SettingGuide.All.Select(g => g.In(ShopUnits.UnitedStates))).SelectMany(g => g.Choices.Append(g.Name).Append(g.WhatFor)),
            .. SettingGuide.All.Select(g => Rules.Title(g.Name)),
        ],
        StringComparer.Ordinal);

    private static IEnumerable<SheetSpec> Sheets => ShopSheets.All.Concat([ShortPiecesSheet.Spec, ResultsSheet.Spec, ResultWordsSheet.Spec]);

    private static IEnumerable<string> TextsOf(ShopColumn column) =>
        [column.Heading, Rules.Title(column.Heading), column.Meaning, .. column.Choices is { Sheet: null } choices ? choices.Formula.Trim('"').Split(',') : []];
}
