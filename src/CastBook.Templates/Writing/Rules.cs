using CastBook.Planning.Shops;
using CastBook.Templates.Sheets;
using ClosedXML.Excel;

namespace CastBook.Templates.Writing;

/// <summary>Gives cells their drop-down lists and input messages. They ask; only a fixed list refuses.</summary>
internal static class Rules
{
    private const int LongestTitle = 32;

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
        rule.ErrorTitle = "Not in the list";
        rule.ErrorStyle = choices.Sheet is null ? XLErrorStyle.Stop : XLErrorStyle.Warning;
        rule.ErrorMessage = choices.Sheet is null
            ? "Choose one of the list."
            : $"The {choices.Sheet} sheet has no such name. Add it there, or choose one of the list.";
    }

    private static void Accept(IXLDataValidation rule, CellKind kind)
    {
        switch (kind)
        {
            case CellKind.Number:
                rule.Decimal.EqualOrGreaterThan(-100_000);
                Warn(rule, "Not a number", "Type digits only, such as 12.4. The unit stands in the heading.");
                break;
            case CellKind.Day:
                rule.Date.EqualOrGreaterThan(new DateTime(2000, 1, 1));
                Warn(rule, "Not a date", "Type a date, such as 4 Dec 2026.");
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
        rule.InputTitle = title.Length <= LongestTitle ? title : title[..LongestTitle];
        rule.InputMessage = message;
    }
}
