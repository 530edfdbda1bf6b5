using System.Globalization;
using System.Security;
using System.Text;
using CastBook.Workbooks.Reading;

namespace CastBook.Workbooks.Tests.Fidelity.RandomBooks;

/// <summary>A sheet of a random book: the list with what shops put around it, or something else.</summary>
internal sealed class RandomSheet(RandomBook book, int number, string name, string part)
{
    private readonly List<(string Type, string Target, bool External)> relations = [];
    private readonly SortedDictionary<int, StringBuilder> rows = [];
    private readonly RandomCells cells = new(book, number);
    private readonly bool hasTable = book.Chance(35);
    private readonly bool hasTotals = book.Chance(50);
    private int first = 1;
    private int top = 1;
    private int last = 1;
    private int bottom = 1;

    private int Right => first + cells.Headings.Count - 1;

    public void Write(bool isList)
    {
        if (isList)
        {
            List();
        }
        else if (name == "Shop")
        {
            Row(1).Append(cells.Text(1, 1, "Setting")).Append(cells.Text(1, 2, "Value")).Append(cells.Text(1, 3, "Unit"));
            Row(2).Append(cells.Text(2, 1, "Button share")).Append(cells.Number(2, 2, 20)).Append(cells.Text(2, 3, "%"));
        }
        else
        {
            for (var row = 1; row < 6; row++)
            {
                Row(row * 2).Append(cells.Any(row * 2, 1)).Append(cells.Any(row * 2, 3));
            }
        }

        var xml = Around(isList);
        book.Add(part, book.Scribe.Spreadsheet(xml), RandomBook.SpreadsheetType + "worksheet+xml");
        if (relations.Count > 0)
        {
            book.AddRelations(part, relations);
        }
    }

    private StringBuilder Row(int row) => rows.TryGetValue(row, out var cells) ? cells : rows[row] = new StringBuilder();

    private void List()
    {
        cells.AreCounted = book.Chance(20);
        (first, top) = (cells.AreCounted ? 1 : book.Random.Next(1, 5), book.Random.Next(1, 7));
        last = top + book.Random.Next(2, 9);
        bottom = last;
        if (top > 1 && book.Chance(60))
        {
            Row(1).Append(cells.Text(1, first, "Wrenmoor Foundry"));
        }

        cells.ChooseHeadings();
        for (var c = 0; c < cells.Headings.Count; c++)
        {
            Row(top).Append(cells.Text(top, first + c, cells.Headings[c]));
        }

        for (var row = top + 1; row <= last; row++)
        {
            for (var c = 0; c < cells.Headings.Count; c++)
            {
                Row(row).Append(cells.Of(cells.Headings[c], row, first + c, top + 1, last));
            }
        }

        if (!cells.AreCounted && book.Chance(30))
        {
            Row(top + 1).Append(cells.Any(top + 1, Right + book.Random.Next(2, 12)));
        }

        if (hasTable && hasTotals)
        {
            Row(last + 1).Append(cells.Text(last + 1, first, "Total"));
        }

        if (book.Chance(50))
        {
            bottom = last + 3;
            Row(bottom).Append(cells.Array(bottom, first, CellRef.AddressOf(top + 1, first) + ":" + CellRef.AddressOf(last, first)));
        }
    }

    private string Around(bool isList)
    {
        var filter = isList && !hasTable && book.Chance(50);
        var area = $"{CellRef.AddressOf(top, first)}:{CellRef.AddressOf(last, Right)}";
        if (filter)
        {
            var absolute = $"${CellRef.ColumnName(first)}${top}:${CellRef.ColumnName(Right)}${last}";
            book.Name($"<~definedName name=\"_xlnm._FilterDatabase\" localSheetId=\"{number - 1}\" hidden=\"1\">'{SecurityElement.Escape(name.Replace("'", "''", StringComparison.Ordinal))}'!{absolute}</~definedName>");
        }

        return "<~worksheet {xmlns}>"
            + If(40, $"<~sheetPr><~tabColor rgb=\"FF1F3864\"/><~outlinePr summaryBelow=\"0\"/></~sheetPr>") + If(60, $"<~dimension ref=\"A1:{CellRef.AddressOf(bottom, Right)}\"/>")
            + If(50, "<~sheetViews><~sheetView workbookViewId=\"0\"/></~sheetViews>") + If(50, "<~sheetFormatPr defaultRowHeight=\"14.5\" outlineLevelRow=\"1\"/>")
            + If(60, $"<~cols><~col min=\"1\" max=\"{book.Random.Next(1, 4)}\" width=\"9.73\" customWidth=\"1\"/><~col min=\"5\" max=\"{book.Random.Next(5, 30)}\" width=\"14.5\" customWidth=\"1\" style=\"0\"/></~cols>")
            + "<~sheetData>" + Rows() + "</~sheetData>"
            + If(20, "<~sheetProtection sheet=\"1\" sort=\"0\"/>") + (filter ? $"<~autoFilter ref=\"{area}\"/>" : "")
            + (isList && top > 1 ? If(50, $"<~mergeCells count=\"1\"><~mergeCell ref=\"{CellRef.AddressOf(1, first)}:{CellRef.AddressOf(1, first + 2)}\"/></~mergeCells>") : "")
            + If(50, $"<~conditionalFormatting sqref=\"{area}\"><~cfRule type=\"cellIs\" dxfId=\"0\" priority=\"2\" operator=\"greaterThan\"><~formula>15</~formula></~cfRule><~cfRule type=\"expression\" priority=\"1\" stopIfTrue=\"1\"><~formula>A1=\"&lt;x&gt;\"</~formula></~cfRule></~conditionalFormatting>")
            + If(50, $"<~dataValidations count=\"1\"><~dataValidation type=\"list\" allowBlank=\"1\" showInputMessage=\"1\" prompt=\"wax&#10;or &#9;resin\" sqref=\"{CellRef.AddressOf(top + 1, first)}\"><~formula1>\"wax,resin\"</~formula1></~dataValidation></~dataValidations>")
            + Links() + If(30, "<~printOptions gridLines=\"1\"/>") + If(60, "<~pageMargins left=\"0.25\" right=\"0.25\" top=\"0.75\" bottom=\"0.75\" header=\"0.3\" footer=\"0.3\"/>")
            + Page() + If(30, "<~headerFooter><~oddHeader>&amp;L&amp;G &amp;CWrenmoor  </~oddHeader></~headerFooter>")
            + If(20, "<~rowBreaks count=\"1\" manualBreakCount=\"1\"><~brk id=\"18\" max=\"16383\" man=\"1\"/></~rowBreaks>") + If(20, $"<~ignoredErrors><~ignoredError sqref=\"{area}\" numberStoredAsText=\"1\"/></~ignoredErrors>")
            + Drawing() + (isList ? Notes() : "") + If(20, RandomParts.Alternate) + (isList && hasTable ? Table() : "")
            + If(25, "<~extLst><~ext uri=\"{05C60535-1F16-4fd2-B633-F4F36F0B64E0}\" xmlns:x14=\"http://schemas.microsoft.com/office/spreadsheetml/2009/9/main\"><x14:sparklineGroups xmlns:xm=\"http://schemas.microsoft.com/office/excel/2006/main\"><x14:sparklineGroup displayEmptyCellsAs=\"gap\"><x14:sparklines><x14:sparkline><xm:f>Orders!A2:A9</xm:f><xm:sqref>Z1</xm:sqref></x14:sparkline></x14:sparklines></x14:sparklineGroup></x14:sparklineGroups></~ext></~extLst>")
            + "</~worksheet>";
    }

    private string If(int percent, string xml) => book.Chance(percent) ? xml : "";

    private string Rows()
    {
        var spans = book.Chance(40);
        var xml = new StringBuilder();
        foreach (var (row, content) in rows)
        {
            xml.Append("<~row");
            xml.Append(!cells.AreCounted || (row > 1 && !rows.ContainsKey(row - 1)) ? $" r=\"{row}\"" : "");
            xml.Append(spans ? $" spans=\"{first}:{Right}\"" : "").Append(If(10, " outlineLevel=\"1\"")).Append(If(10, " ht=\"30\" customHeight=\"1\""));
            xml.Append('>').Append(content).Append("</~row>");
        }

        return xml.ToString();
    }

    private string Links()
    {
        if (!book.Chance(30))
        {
            return "";
        }

        relations.Add(("hyperlink", "https://example.invalid/silver?grain=1&amp;lot=2", true));
        return $"<~hyperlinks><~hyperlink ref=\"{CellRef.AddressOf(last, first)}\" r:id=\"rId{relations.Count}\"/></~hyperlinks>";
    }

    private string Page()
    {
        if (!book.Chance(30))
        {
            return "";
        }

        var settings = $"xl/printerSettings/printerSettings{number}.bin";
        book.Add(settings, [1, 0, 0xFF, (byte)number], null);
        relations.Add(("printerSettings", $"../printerSettings/printerSettings{number}.bin", false));
        return $"<~pageSetup paperSize=\"9\" orientation=\"landscape\" r:id=\"rId{relations.Count}\"/>";
    }

    private string Drawing()
    {
        if (!book.Chance(30))
        {
            return "";
        }

        var (drawing, chart) = ($"xl/drawings/drawing{number}.xml", $"xl/charts/chart{number}.xml");
        book.Add(drawing, book.Scribe.Other(RandomParts.Drawing), "application/vnd.openxmlformats-officedocument.drawing+xml");
        book.AddRelations(drawing, [("chart", $"../charts/chart{number}.xml", false)]);
        book.Add(chart, book.Scribe.Other(RandomParts.Chart($"'{SecurityElement.Escape(name.Replace("'", "''", StringComparison.Ordinal))}'!$A$1:$A$9")), "application/vnd.openxmlformats-officedocument.drawingml.chart+xml");
        relations.Add(("drawing", $"/xl/drawings/drawing{number}.xml", false));
        return $"<~drawing r:id=\"rId{relations.Count}\"/>";
    }

    private string Notes()
    {
        if (!book.Chance(45))
        {
            return "";
        }

        var (row, column) = (book.Random.Next(top, last + 1), book.Random.Next(first, Right + 1));
        var folder = book.Chance(30) ? "xl/comments/comment" : "xl/comments";
        book.Add($"{folder}{number}.xml", book.Scribe.Spreadsheet(
            $"<~comments {{xmlns}}><~authors><~author>bench</~author></~authors><~commentList><~comment ref=\"{CellRef.AddressOf(row, column)}\" authorId=\"0\"><~text><~r><~rPr><~b/></~rPr><~t>bench:</~t></~r><~r><~t xml:space=\"preserve\">&#13;\n CastBook says too heavy </~t></~r></~text></~comment></~commentList></~comments>"),
            RandomBook.SpreadsheetType + "comments+xml");
        var drawing = RandomParts.NoteDrawing(row, column, book.Chance(50), book.Chance(50) ? "\r\n" : "\n");
        book.Add($"xl/drawings/vmlDrawing{number}.vml", Encoding.UTF8.GetBytes(drawing), null);
        relations.Add(("comments", $"..{folder[2..]}{number}.xml", false));
        if (book.Chance(40))
        {
            book.Add($"xl/threadedComments/threadedComment{number}.xml", book.Scribe.Other(RandomParts.Thread(CellRef.AddressOf(row, column))), "application/vnd.ms-excel.threadedcomments+xml");
            relations.Add(("http://schemas.microsoft.com/office/2017/10/relationships/threadedComment", $"../threadedComments/threadedComment{number}.xml", false));
        }

        relations.Add(("vmlDrawing", $"../drawings/vmlDrawing{number}.vml", false));
        return $"<~legacyDrawing r:id=\"rId{relations.Count}\"/>";
    }

    private string Table()
    {
        var area = $"{CellRef.AddressOf(top, first)}:{CellRef.AddressOf(last, Right)}";
        var whole = hasTotals ? $"{CellRef.AddressOf(top, first)}:{CellRef.AddressOf(last + 1, Right)}" : area;
        book.Add($"xl/tables/table{number}.xml", book.Scribe.Spreadsheet(
            $"<~table {{xmlns}} id=\"{number}\" name=\"Pieces{number}\" displayName=\"Pieces{number}\" ref=\"{whole}\"{(hasTotals ? " totalsRowCount=\"1\"" : " totalsRowShown=\"0\"")}><~autoFilter ref=\"{area}\"/><~tableColumns count=\"{cells.Headings.Count.ToString(CultureInfo.InvariantCulture)}\">"
            + string.Concat(cells.Headings.Select((h, i) => $"<~tableColumn id=\"{i + 1}\" name=\"{SecurityElement.Escape(h).Replace("\n", "_x000a_", StringComparison.Ordinal)}\"/>"))
            + "</~tableColumns><~tableStyleInfo name=\"TableStyleLight1\" showRowStripes=\"1\"/></~table>"), RandomBook.SpreadsheetType + "table+xml");
        relations.Add(("table", $"../tables/table{number}.xml", false));
        return $"<~tableParts count=\"1\"><~tablePart r:id=\"rId{relations.Count}\"/></~tableParts>";
    }
}
