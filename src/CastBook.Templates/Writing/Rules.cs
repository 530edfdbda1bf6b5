using CastBook.Planning.Shops;
using CastBook.Templates.Sheets;
using ClosedXML.Excel;

namespace CastBook.Templates.Writing;

/// <summary>Gives cells their drop-down lists and input messages. They ask; only a fixed list refuses.</summary>
internal static class Rules
{
    private const int LongestTitle = 32;
    private const string NotInList = "Not in the list";
    private const string ChooseOne = "Choose one of the list.";
    private const string NotNumber = "Not a number";
    private const string TypeDigits = "Type digits only, such as 12.4. The unit stands in the heading.";
    private const string NotDate = "Not a date";
    private const string TypeDate = "Type a date, such as 4 Dec 2026.";

    /// <summary>What is said of a wrong entry.</summary>
    public static IReadOnlyList<string> Messages { get; } =
        [NotInList, ChooseOne, NotNumber, TypeDigits, NotDate, TypeDate, .. ShopSheets.All.Select(s => NoSuchName(s.Name))];

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
            Accept(rule, setting.Unit.Length > 0 ? CellKind.Number : CellKind.Words);
        }

        Say(rule, setting.Name, setting.WhatFor);
    }

    private static void Choose(IXLDataValidation rule, Choices choices)
    {
        rule.List(choices.Formula, true);
        rule.ErrorTitle = NotInList;
        rule.ErrorStyle = choices.Sheet is null ? XLErrorStyle.Stop : XLErrorStyle.Warning;
        rule.ErrorMessage = choices.Sheet is null ? ChooseOne : NoSuchName(choices.Sheet);
    }

    private static string NoSuchName(string sheet) => $"The {sheet} sheet has no such name. Add it there, or choose one of the list.";

    private static void Accept(IXLDataValidation rule, CellKind kind)
    {
        switch (kind)
        {
            case CellKind.Number:
                rule.Decimal.EqualOrGreaterThan(-100_000);
                Warn(rule, NotNumber, TypeDigits);
                break;
            case CellKind.Day:
                rule.Date.EqualOrGreaterThan(new DateTime(2000, 1, 1));
                Warn(rule, NotDate, TypeDate);
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
