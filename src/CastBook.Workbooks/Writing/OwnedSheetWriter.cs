using System.Globalization;
using System.Text;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Xml;

namespace CastBook.Workbooks.Writing;

/// <summary>Writes the part of a sheet that CastBook makes.</summary>
internal static class OwnedSheetWriter
{
    // Paper as the format numbers it.
    private const int Letter = 1;
    private const int A4 = 9;

    /// <summary>The sheet's part.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="styles">The book's formats, to which its looks are added.</param>
    /// <param name="dialect">The book's namespaces.</param>
    /// <param name="isLetter">Whether it is printed on Letter, as where sizes are in inches, and not on A4.</param>
    public static byte[] Write(OwnedSheet sheet, StyleBook styles, Dialect dialect, bool isLetter)
    {
        var xml = new StringBuilder(4096);
        xml.Append(CultureInfo.InvariantCulture, $"<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\r\n<worksheet xmlns=\"{dialect.Spreadsheet}\">");
        xml.Append(CultureInfo.InvariantCulture, $"""<sheetPr><tabColor rgb="FF2F6F73"/>{(sheet.PrintScale > 0 ? "" : "<pageSetUpPr fitToPage=\"1\"/>")}</sheetPr>""");
        View(xml, sheet);
        Columns(xml, sheet);
        Cells(xml, sheet, styles);
        Marks(xml, sheet, styles);
        DropDowns(xml, sheet);
        Links(xml, sheet);
        xml.Append("""<printOptions horizontalCentered="1"/><pageMargins left="0.4" right="0.4" top="0.5" bottom="0.5" header="0.3" footer="0.3"/>""");
        var size = sheet.PrintScale > 0 ? string.Create(CultureInfo.InvariantCulture, $"scale=\"{sheet.PrintScale}\"") : sheet.OnePage ? "" : "fitToHeight=\"0\"";
        xml.Append(CultureInfo.InvariantCulture, $"""<pageSetup paperSize="{(isLetter ? Letter : A4)}" orientation="{(sheet.Landscape ? "landscape" : "portrait")}" {size}/>""");
        xml.Append("<headerFooter><oddFooter>&amp;L&amp;9&amp;A&amp;R&amp;9&amp;P / &amp;N</oddFooter></headerFooter>");
        Pages(xml, sheet);
        xml.Append("</worksheet>");
        return Encoding.UTF8.GetBytes(xml.ToString());
    }

    private static void View(StringBuilder xml, OwnedSheet sheet)
    {
        xml.Append("""<sheetViews><sheetView showGridLines="0" workbookViewId="0">""");
        if (sheet.HeadingRow > 0)
        {
            var top = CellRef.AddressOf(sheet.HeadingRow + 1, 1);
            xml.Append(CultureInfo.InvariantCulture, $"""<pane ySplit="{sheet.HeadingRow}" topLeftCell="{top}" activePane="bottomLeft" state="frozen"/>""");
            xml.Append(CultureInfo.InvariantCulture, $"""<selection pane="bottomLeft" activeCell="{top}" sqref="{top}"/>""");
        }

        xml.Append("""</sheetView></sheetViews><sheetFormatPr defaultRowHeight="15"/>""");
    }

    private static void Columns(StringBuilder xml, OwnedSheet sheet)
    {
        var last = Math.Max(sheet.Widths.Count, sheet.HiddenColumns.DefaultIfEmpty().Max());
        if (last == 0)
        {
            return;
        }

        xml.Append("<cols>");
        for (var column = 1; column <= last; column++)
        {
            var width = column <= sheet.Widths.Count ? sheet.Widths[column - 1] : 9;
            var hidden = sheet.HiddenColumns.Contains(column) ? " hidden=\"1\"" : "";
            xml.Append(CultureInfo.InvariantCulture, $"""<col min="{column}" max="{column}" width="{width}" customWidth="1"{hidden}/>""");
        }

        xml.Append("</cols>");
    }

    private static void Cells(StringBuilder xml, OwnedSheet sheet, StyleBook styles)
    {
        xml.Append("<sheetData>");
        foreach (var (row, cells) in sheet.Rows)
        {
            var height = sheet.Heights.TryGetValue(row, out var points)
                ? $" ht=\"{points.ToString(CultureInfo.InvariantCulture)}\" customHeight=\"1\"" : "";
            var hidden = sheet.HiddenRows.Contains(row) ? " hidden=\"1\"" : "";
            xml.Append(CultureInfo.InvariantCulture, $"""<row r="{row}"{height}{hidden}>""");
            foreach (var (column, cell) in cells)
            {
                xml.Append(cell.Value.ToXml(row, column, styles.Format(cell.Look), ""));
            }

            xml.Append("</row>");
        }

        xml.Append("</sheetData>");
    }

    private static void Marks(StringBuilder xml, OwnedSheet sheet, StyleBook styles)
    {
        var priority = 1;
        foreach (var group in sheet.Marks.Distinct().GroupBy(m => m.Severity).OrderByDescending(g => g.Key))
        {
            var cells = string.Join(' ', group.Select(m => CellRef.AddressOf(m.Row, m.Column)));
            xml.Append(MarkRules.Always(cells, group.Key, styles.Mark(group.Key), priority++).Replace("~", "", StringComparison.Ordinal));
        }
    }

    private static void DropDowns(StringBuilder xml, OwnedSheet sheet)
    {
        if (sheet.Choices.Count == 0)
        {
            return;
        }

        xml.Append(CultureInfo.InvariantCulture, $"""<dataValidations count="{sheet.Choices.Count}">""");
        foreach (var (range, choices) in sheet.Choices)
        {
            var listed = XmlText.EscapeText($"\"{string.Join(',', choices)}\"");
            xml.Append(CultureInfo.InvariantCulture, $"""<dataValidation type="list" allowBlank="1" sqref="{range}"><formula1>{listed}</formula1></dataValidation>""");
        }

        xml.Append("</dataValidations>");
    }

    private static void Pages(StringBuilder xml, OwnedSheet sheet)
    {
        if (sheet.PageStarts.Count == 0)
        {
            return;
        }

        xml.Append(CultureInfo.InvariantCulture, $"""<rowBreaks count="{sheet.PageStarts.Count}" manualBreakCount="{sheet.PageStarts.Count}">""");
        foreach (var row in sheet.PageStarts)
        {
            xml.Append(CultureInfo.InvariantCulture, $"""<brk id="{row - 1}" max="16383" man="1"/>""");
        }

        xml.Append("</rowBreaks>");
    }

    private static void Links(StringBuilder xml, OwnedSheet sheet)
    {
        if (sheet.Links.Count == 0)
        {
            return;
        }

        xml.Append("<hyperlinks>");
        foreach (var (row, column, target) in sheet.Links)
        {
            xml.Append(CultureInfo.InvariantCulture, $"""<hyperlink ref="{CellRef.AddressOf(row, column)}" location="{XmlText.EscapeAttribute(target.ToString())}"/>""");
        }

        xml.Append("</hyperlinks>");
    }
}
