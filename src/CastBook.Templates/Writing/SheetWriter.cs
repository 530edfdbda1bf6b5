using CastBook.Planning.Shops;
using CastBook.Templates.Sheets;
using ClosedXML.Excel;

namespace CastBook.Templates.Writing;

/// <summary>Writes one of the shop's sheets: title lines, headings, lines, and what may be typed under them.</summary>
internal static class SheetWriter
{
    private const int ListRows = 2_000;
    private const int ShopRows = 200;

    /// <summary>A width counts digits; letters are narrower on the whole.</summary>
    private const double LettersToDigits = 1.1;

    /// <summary>Writes the sheet.</summary>
    /// <param name="sheet">An empty sheet of the right name.</param>
    /// <param name="content">What it shows.</param>
    /// <param name="onLetter">Whether it is printed on Letter instead of A4.</param>
    public static void Write(IXLWorksheet sheet, SheetContent content, bool onLetter)
    {
        var columns = content.Spec.Columns;
        for (var i = 0; i < columns.Count; i++)
        {
            Column(sheet, content, i);
        }

        Titles(sheet, content);
        var lines = columns.Max(Lines);
        NewBookLook.Headings(sheet.Range(content.HeadingRow, 1, content.HeadingRow, columns.Count), lines);
        if (content.Spec.Name == SettingsSheet.Name)
        {
            Settings(sheet, content);
        }
        else
        {
            Typing(sheet, content);
        }

        NewBookLook.Print(sheet, content.HeadingRow, landscape: true, onLetter);
        sheet.SheetView.Freeze(content.HeadingRow, 1);
        if (content.Spec.IsList)
        {
            NewBookLook.PrintReadably(sheet);
            Table(sheet, content);
        }
    }

    /// <summary>Lines that a heading takes when it breaks between words.</summary>
    internal static int Lines(ShopColumn column)
    {
        // The width counts digits, and letters are narrower on the whole, bold ones too.
        var room = column.Width + 0.5;
        var lines = 0;
        var left = 0.0;
        foreach (var word in column.Heading.Split(' '))
        {
            if (word.Length + 1 > left)
            {
                lines++;
                left = room + 1;
            }

            left -= word.Length + 1;
        }

        return lines;
    }

    private static void Titles(IXLWorksheet sheet, SheetContent content)
    {
        if (content.HeadingRow == 1)
        {
            return;
        }

        NewBookLook.Above(sheet.Range(1, 1, content.HeadingRow - 1, content.Spec.Columns.Count).Style);
        for (var i = 0; i < content.TitleLines.Count; i++)
        {
            CellWriter.Write(sheet.Cell(i + 1, 1), content.TitleLines[i]);
            NewBookLook.Title(sheet.Cell(i + 1, 1), first: i == 0);
        }
    }

    private static void Column(IXLWorksheet sheet, SheetContent content, int index)
    {
        var column = content.Spec.Columns[index];
        var whole = sheet.Column(index + 1);
        whole.Width = column.Width;
        Cells(whole.Style, column);
        CellWriter.Write(sheet.Cell(content.HeadingRow, index + 1), column.Heading);
        for (var row = 0; row < content.Rows.Count; row++)
        {
            var cell = sheet.Cell(content.HeadingRow + 1 + row, index + 1);
            CellWriter.Write(cell, content.Rows[row][index]);
            if (ExampleName.Is(content.Rows[row][0] as string))
            {
                NewBookLook.Example(cell.Style);
            }

            var lines = column.Wraps && content.Rows[row][index] is string words ? (int)Math.Ceiling(words.Length / (column.Width * LettersToDigits)) : 1;
            if (lines > 1)
            {
                NewBookLook.Lines(cell.WorksheetRow(), lines);
            }
        }

    }

    private static void Cells(IXLStyle style, ShopColumn column)
    {
        NewBookLook.List(style, right: column.Kind is ColumnKind.Number or ColumnKind.Day);
        style.Alignment.WrapText = column.Wraps;
        NewBookLook.Format(style, column.Kind == ColumnKind.Words ? Formats.Words : column.Format);
    }

    private static void Typing(IXLWorksheet sheet, SheetContent content)
    {
        var first = content.HeadingRow + 1;
        var last = content.Spec.IsList ? ListRows : ShopRows;
        for (var i = 0; i < content.Spec.Columns.Count; i++)
        {
            var column = content.Spec.Columns[i];
            if (column.Meaning.Length > 0)
            {
                Rules.Apply(sheet.Range(first, i + 1, last, i + 1), column);
            }
        }
    }

    private static void Settings(IXLWorksheet sheet, SheetContent content)
    {
        for (var i = 0; i < content.Rows.Count; i++)
        {
            var row = content.HeadingRow + 1 + i;
            var (name, unit, whatFor) = ((string)content.Rows[i][0]!, (string)content.Rows[i][2]!, (string)content.Rows[i][3]!);
            Rules.Apply(sheet.Range(row, 2, row, 2), SettingGuide.Of(name) with { Unit = unit, WhatFor = whatFor });
        }
    }

    private static void Table(IXLWorksheet sheet, SheetContent content)
    {
        var last = content.HeadingRow + Math.Max(1, content.Rows.Count);
        var table = sheet.Range(content.HeadingRow, 1, last, content.Spec.Columns.Count).CreateTable(content.Spec.Name);
        table.Theme = XLTableTheme.None;
        table.ShowRowStripes = false;
    }
}
