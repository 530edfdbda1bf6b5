using CastBook.Templates.Sheets;
using ClosedXML.Excel;

namespace CastBook.Templates.Writing;

/// <summary>How a book looks: read at arm's length, printed in black and white.</summary>
internal static class NewBookLook
{
    private const string Face = "Calibri";
    private const double ListSize = 11;
    private const double TitleSize = 14;
    private const double LineHeight = 14.5;

    // Percent: 11 points become 9.
    private const int ReadableScale = 80;

    private static readonly XLColor Ink = XLColor.FromHtml("#1F2A30");
    private static readonly XLColor Band = XLColor.FromHtml("#E7ECEE");
    private static readonly XLColor Rule = XLColor.FromHtml("#9AA7AD");
    private static readonly XLColor Hairline = XLColor.FromHtml("#CFD8DB");

    /// <summary>Typeface and colour of everything that says nothing else.</summary>
    public static void Everywhere(IXLStyle style)
    {
        style.Font.FontName = Face;
        style.Font.FontSize = ListSize;
        style.Font.FontColor = Ink;
    }

    /// <summary>A cell of a list: words left, numbers right, a quiet line under each row.</summary>
    public static void List(IXLStyle style, bool right)
    {
        Everywhere(style);
        style.Alignment.Horizontal = right ? XLAlignmentHorizontalValues.Right : XLAlignmentHorizontalValues.Left;
        style.Alignment.Indent = right ? 0 : 1;
        style.Border.BottomBorder = XLBorderStyleValues.Thin;
        style.Border.BottomBorderColor = Hairline;
    }

    /// <summary>The cells above a list.</summary>
    public static void Above(IXLStyle style)
    {
        style.Border.BottomBorder = XLBorderStyleValues.None;
        style.Alignment.Horizontal = XLAlignmentHorizontalValues.Left;
        style.Alignment.Indent = 0;
    }

    /// <summary>How numbers are shown.</summary>
    public static void Format(IXLStyle style, string format)
    {
        if (Formats.BuiltIn(format) is int number)
        {
            style.NumberFormat.NumberFormatId = number;
        }
        else
        {
            style.NumberFormat.Format = format;
        }
    }

    /// <summary>The band of headings: wrapped, and high enough for the longest of them.</summary>
    /// <param name="headings">The cells.</param>
    /// <param name="lines">How many lines the longest heading takes.</param>
    public static void Headings(IXLRange headings, int lines)
    {
        headings.Style.Font.Bold = true;
        headings.Style.Fill.BackgroundColor = Band;
        headings.Style.Alignment.WrapText = true;
        headings.Style.Alignment.Vertical = XLAlignmentVerticalValues.Top;
        Format(headings.Style, Formats.AsTyped);
        headings.Style.Border.BottomBorder = XLBorderStyleValues.Thin;
        headings.Style.Border.BottomBorderColor = Rule;
        headings.FirstRow().WorksheetRow().Height = (lines * LineHeight) + 2;
    }

    /// <summary>A row of which a cell goes on in further lines.</summary>
    /// <param name="row">The row.</param>
    /// <param name="lines">How many lines the cell takes.</param>
    public static void Lines(IXLRow row, int lines)
    {
        row.Height = (lines * LineHeight) + 2;
        row.Cells().Style.Alignment.Vertical = XLAlignmentVerticalValues.Top;
    }

    /// <summary>A line above a list.</summary>
    public static void Title(IXLCell cell, bool first)
    {
        Format(cell.Style, Formats.AsTyped);
        cell.Style.Alignment.WrapText = false;
        cell.Style.Font.Bold = first;
        cell.Style.Font.FontSize = first ? TitleSize : ListSize;
        if (first)
        {
            cell.WorksheetRow().Height = TitleSize * 1.5;
        }
    }

    /// <summary>A cell of an example row, set apart from the shop's own.</summary>
    public static void Example(IXLStyle style) => style.Font.Italic = true;

    /// <summary>
    /// As many pages wide as it takes, the names again on each: a list grows when it is filled, and all of it on one page could not be read
    /// at arm's length.
    /// </summary>
    public static void PrintReadably(IXLWorksheet sheet)
    {
        sheet.PageSetup.PagesWide = 0;
        sheet.PageSetup.PagesTall = 0;
        sheet.PageSetup.Scale = ReadableScale;
        sheet.PageSetup.SetColumnsToRepeatAtLeft(1, 1);
    }

    /// <summary>One page wide, headings on every page, with page numbers.</summary>
    public static void Print(IXLWorksheet sheet, int headingRow, bool landscape, bool onLetter)
    {
        var page = sheet.PageSetup;
        page.PaperSize = onLetter ? XLPaperSize.LetterPaper : XLPaperSize.A4Paper;
        page.PageOrientation = landscape ? XLPageOrientation.Landscape : XLPageOrientation.Portrait;
        page.FitToPages(1, 0);
        page.Margins.SetLeft(0.4).SetRight(0.4).SetTop(0.5).SetBottom(0.7).SetHeader(0.3).SetFooter(0.3);
        if (headingRow > 0)
        {
            page.SetRowsToRepeatAtTop(headingRow, headingRow);
        }

        page.Footer.Left.AddText(XLHFPredefinedText.SheetName);
        page.Footer.Right.AddText(XLHFPredefinedText.PageNumber);
        page.Footer.Right.AddText(" / ");
        page.Footer.Right.AddText(XLHFPredefinedText.NumberOfPages);
    }
}
