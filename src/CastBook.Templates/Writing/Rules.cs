using CastBook.Planning.Shops;
using CastBook.Templates.Sheets;
using CastBook.Templates.Words;
using ClosedXML.Excel;

namespace CastBook.Templates.Writing;

/// <summary>Gives cells their drop-down lists and input messages. They ask; only a fixed list refuses.</summary>
internal static class Rules
{
    private const int LongestTitle = 32;

    /// <summary>What is said of a wrong entry.</summary>
    public static IReadOnlyList<string> Messages { get; } =
        [EntryWords.NotInList, EntryWords.ChooseOne, EntryWords.NotNumber, EntryWords.TypeDigits, EntryWords.NotDate, EntryWords.TypeDate, .. ShopSheets.All.Select(s => EntryWords.NoSuchName(s.Name))];

    /// <summary>The title of a message, no longer than the file format allows.</summary>
    /// <param name="title">The whole title.</param>
    public static string Title(string title) => title.Length <= LongestTitle ? title : title[..LongestTitle];

    /// <summary>Says what to type in a column.</summary>
    /// <param name="cells">The cells of the column.</param>
    /// <param name="column">The column.</param>
    public static void Apply(IXLRange cells, ShopColumn column)
    {
        var rule = cells.SetDataValidation();
        if (column.Choices is not null)
        {
            Choose(rule, column.Choices);
        }
        else
        {
            Accept(rule, column.Kind);
        }

        Say(rule, column.Heading, column.Meaning);
    }

    /// <summary>Says what to type for a setting.</summary>
    /// <param name="cell">The cell of its value.</param>
    /// <param name="setting">The setting.</param>
    public static void Apply(IXLRange cell, SettingGuide setting)
    {
        var rule = cell.SetDataValidation();
        if (SettingsSheet.ChoicesOf(setting) is { } choices)
        {
            Choose(rule, choices);
        }
        else
        {
            Accept(rule, setting.Unit.Length > 0 ? ColumnKind.Number : ColumnKind.Words);
        }

        Say(rule, setting.Name, setting.WhatFor);
    }

    private static void Choose(IXLDataValidation rule, Choices choices)
    {
        rule.List(choices.Formula, true);
        rule.ErrorTitle = EntryWords.NotInList;
        rule.ErrorStyle = choices.Sheet is null ? XLErrorStyle.Stop : XLErrorStyle.Warning;
        rule.ErrorMessage = choices.Sheet is null ? EntryWords.ChooseOne : EntryWords.NoSuchName(choices.Sheet);
    }

    private static void Accept(IXLDataValidation rule, ColumnKind kind)
    {
        switch (kind)
        {
            case ColumnKind.Number:
                rule.Decimal.EqualOrGreaterThan(-100_000);
                Warn(rule, EntryWords.NotNumber, EntryWords.TypeDigits);
                break;
            case ColumnKind.Day:
                rule.Date.EqualOrGreaterThan(new DateTime(2000, 1, 1));
                Warn(rule, EntryWords.NotDate, EntryWords.TypeDate);
                break;
            default:
                rule.AllowedValues = XLAllowedValues.AnyValue;
                break;
        }
    }

    private static void Warn(IXLDataValidation rule, string title, string message)
    {
        rule.ErrorStyle = XLErrorStyle.Warning;
        rule.ErrorTitle = title;
        rule.ErrorMessage = message;
    }

    private static void Say(IXLDataValidation rule, string title, string message)
    {
        rule.IgnoreBlanks = true;
        rule.InputTitle = Title(title);
        rule.InputMessage = message;
    }
}
