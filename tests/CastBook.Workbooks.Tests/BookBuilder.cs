using System.Globalization;
using System.IO.Compression;
using System.Security;
using System.Text;

namespace CastBook.Workbooks.Tests;

/// <summary>
/// Builds small workbooks as raw parts, so that a test sees exactly the XML it asked for.
/// <code>
/// using var book = new BookBuilder()
///     .Sheet("Pieces", s => s
///         .Row("Piece", "Qty", "Pattern weight (g)", "Alloy")
///         .Row("Otter ring", 6, 4.35, "Sterling 925"))
///     .Build();
/// </code>
/// Values: text, numbers, bool, DateOnly, null (no cell), or a <see cref="Cell"/> for errors, formulas, styles and raw XML.
/// </summary>
internal sealed class BookBuilder
{
    internal const string MainNamespace = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    internal const string OfficeNamespace = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private const string PackageNamespace = "http://schemas.openxmlformats.org/package/2006/";

    private readonly List<SheetBuilder> sheets = [];
    private readonly List<string> names = [];
    private readonly List<(string Name, string Content)> extra = [];
    private bool date1904;

    /// <summary>Styles every built book has: 0 plain, 1 date, 2 percentage, 3 bold, 4 struck out, 5 with a font that says it is not.</summary>
    internal static class Style
    {
        internal const int Date = 1;
        internal const int Percent = 2;
        internal const int Bold = 3;
        internal const int Struck = 4;
        internal const int NotStruck = 5;
    }

    /// <summary>A book with one sheet called Pieces, from rows of values; the first row is the headings.</summary>
    public static MemoryStream Pieces(params object?[][] rows) =>
        new BookBuilder().Sheet("Pieces", s =>
        {
            foreach (var row in rows)
            {
                s.Row(row);
            }
        }).Build();

    public BookBuilder Sheet(string name, Action<SheetBuilder> fill)
    {
        var sheet = new SheetBuilder(name, sheets.Count + 1);
        fill(sheet);
        sheets.Add(sheet);
        return this;
    }

    /// <summary>Adds a defined name, hidden unless said otherwise: <c>Name("CastBook_Flask", "Pieces!$F$1")</c>.</summary>
    public BookBuilder Name(string name, string text, int? localSheet = null, bool hidden = true)
    {
        var local = localSheet is { } index ? $" localSheetId=\"{index}\"" : "";
        names.Add($"<definedName name=\"{name}\"{local}{(hidden ? " hidden=\"1\"" : "")}>{SecurityElement.Escape(text)}</definedName>");
        return this;
    }

    public BookBuilder Date1904()
    {
        date1904 = true;
        return this;
    }

    /// <summary>Adds a part or replaces one, as text.</summary>
    public BookBuilder Part(string name, string content)
    {
        extra.Add((name, content));
        return this;
    }

    /// <summary>The finished book, at its start.</summary>
    public MemoryStream Build()
    {
        var parts = new List<(string Name, string Content)>
        {
            ("[Content_Types].xml", ContentTypes()),
            ("_rels/.rels", Relationships([("rId1", "officeDocument", "xl/workbook.xml")])),
            ("xl/workbook.xml", Workbook()),
            ("xl/_rels/workbook.xml.rels", Relationships([.. sheets.Select(s => ($"rId{s.Number}", "worksheet", $"worksheets/sheet{s.Number}.xml")), ("rId900", "styles", "styles.xml")])),
            ("xl/styles.xml", Styles),
        };
        foreach (var sheet in sheets)
        {
            parts.AddRange(sheet.Parts());
        }

        foreach (var replaced in extra)
        {
            parts.RemoveAll(p => p.Name == replaced.Name);
            parts.Add(replaced);
        }

        return Zip(parts);
    }

    /// <summary>Packs parts into a zip, in order.</summary>
    public static MemoryStream Zip(IEnumerable<(string Name, string Content)> parts)
    {
        var stream = new MemoryStream();
        using (var zip = new ZipArchive(stream, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var (name, content) in parts)
            {
                var entry = zip.CreateEntry(name);
                entry.LastWriteTime = new DateTimeOffset(2026, 1, 1, 0, 0, 0, TimeSpan.Zero);
                using var writer = new StreamWriter(entry.Open(), new UTF8Encoding(false));
                writer.Write(content);
            }
        }

        stream.Position = 0;
        return stream;
    }

    internal static string Relationships(IEnumerable<(string Id, string Type, string Target)> all) =>
        $"<Relationships xmlns=\"{PackageNamespace}relationships\">"
        + string.Concat(all.Select(r => $"<Relationship Id=\"{r.Id}\" Type=\"{OfficeNamespace}/{r.Type}\" Target=\"{r.Target}\"/>"))
        + "</Relationships>";

    private string Workbook() =>
        $"<workbook xmlns=\"{MainNamespace}\" xmlns:r=\"{OfficeNamespace}\">"
        + (date1904 ? "<workbookPr date1904=\"1\"/>" : "")
        + "<sheets>" + string.Concat(sheets.Select(s =>
            $"<sheet name=\"{SecurityElement.Escape(s.Name)}\" sheetId=\"{s.Number}\"{(s.IsHidden ? " state=\"hidden\"" : "")} r:id=\"rId{s.Number}\"/>")) + "</sheets>"
        + (names.Count > 0 ? "<definedNames>" + string.Concat(names) + "</definedNames>" : "") + "</workbook>";

    private string ContentTypes()
    {
        const string Spreadsheet = "application/vnd.openxmlformats-officedocument.spreadsheetml.";
        string Override(string part, string type) => $"<Override PartName=\"/{part}\" ContentType=\"{Spreadsheet}{type}+xml\"/>";
        return $"<Types xmlns=\"{PackageNamespace}content-types\"><Default Extension=\"rels\" ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/>"
            + "<Default Extension=\"xml\" ContentType=\"application/xml\"/>" + Override("xl/workbook.xml", "sheet.main") + Override("xl/styles.xml", "styles")
            + string.Concat(sheets.Select(s => Override($"xl/worksheets/sheet{s.Number}.xml", "worksheet")))
            + string.Concat(sheets.Where(s => s.HasTable).Select(s => Override($"xl/tables/table{s.Number}.xml", "table"))) + "</Types>";
    }

    private const string Styles =
        $"<styleSheet xmlns=\"{MainNamespace}\">"
        + "<fonts count=\"4\"><font><sz val=\"11\"/><name val=\"Calibri\"/></font><font><b/><sz val=\"11\"/><name val=\"Calibri\"/></font>"
        + "<font><strike/><sz val=\"11\"/><name val=\"Calibri\"/></font><font><strike val=\"0\"/><sz val=\"11\"/><name val=\"Calibri\"/></font></fonts>"
        + "<fills count=\"2\"><fill><patternFill patternType=\"none\"/></fill><fill><patternFill patternType=\"gray125\"/></fill></fills>"
        + "<borders count=\"1\"><border><left/><right/><top/><bottom/><diagonal/></border></borders>"
        + "<cellStyleXfs count=\"1\"><xf numFmtId=\"0\" fontId=\"0\" fillId=\"0\" borderId=\"0\"/></cellStyleXfs>"
        + "<cellXfs count=\"6\"><xf numFmtId=\"0\" fontId=\"0\" fillId=\"0\" borderId=\"0\" xfId=\"0\"/>"
        + "<xf numFmtId=\"14\" fontId=\"0\" fillId=\"0\" borderId=\"0\" xfId=\"0\" applyNumberFormat=\"1\"/>"
        + "<xf numFmtId=\"9\" fontId=\"0\" fillId=\"0\" borderId=\"0\" xfId=\"0\" applyNumberFormat=\"1\"/>"
        + "<xf numFmtId=\"0\" fontId=\"1\" fillId=\"0\" borderId=\"0\" xfId=\"0\" applyFont=\"1\"/>"
        + "<xf numFmtId=\"0\" fontId=\"2\" fillId=\"0\" borderId=\"0\" xfId=\"0\" applyFont=\"1\"/>"
        + "<xf numFmtId=\"0\" fontId=\"3\" fillId=\"0\" borderId=\"0\" xfId=\"0\" applyFont=\"1\"/></cellXfs>"
        + "<cellStyles count=\"1\"><cellStyle name=\"Normal\" xfId=\"0\" builtinId=\"0\"/></cellStyles></styleSheet>";
}

/// <summary>A cell that plain values cannot say.</summary>
internal sealed record Cell(object? Value = null, int Style = 0, string? Formula = null, string? Error = null, string? Xml = null)
{
    public static Cell Fault(string error, string? formula = null) => new(Error: error, Formula: formula);

    /// <summary>A formula with its saved value; without one when the value is null.</summary>
    public static Cell Computed(string formula, object? value) => new(value, Formula: formula);
}

/// <summary>A sheet of a <see cref="BookBuilder"/>.</summary>
internal sealed class SheetBuilder(string name, int number)
{
    private readonly StringBuilder rows = new();
    private readonly List<string> after = [];
    private string before = "";
    private string? table;
    private int row;

    public string Name => name;

    public int Number => number;

    public bool IsHidden { get; private set; }

    public bool HasTable => table is not null;

    /// <summary>The next row; null leaves a cell out.</summary>
    public SheetBuilder Row(params object?[] values) => Add(values, "");

    /// <summary>The next row, hidden.</summary>
    public SheetBuilder HiddenRow(params object?[] values) => Add(values, " hidden=\"1\"");

    /// <summary>Leaves rows out.</summary>
    public SheetBuilder Skip(int count = 1)
    {
        row += count;
        return this;
    }

    public SheetBuilder Hidden()
    {
        IsHidden = true;
        return this;
    }

    /// <summary>XML before the cells, such as <c>cols</c>.</summary>
    public SheetBuilder Before(string xml)
    {
        before += xml;
        return this;
    }

    /// <summary>XML after the cells, such as <c>autoFilter</c> or <c>mergeCells</c>, in the format's order.</summary>
    public SheetBuilder After(string xml)
    {
        after.Add(xml);
        return this;
    }

    /// <summary>Makes a range a table: <c>Table("A1:D9", ["Piece", "Qty", "Weight", "Alloy"])</c>.</summary>
    public SheetBuilder Table(string range, string[] columns, bool totals = false, string? tableType = null)
    {
        var rangeWithoutTotals = totals
            ? range[..(range.IndexOfAny(['0', '1', '2', '3', '4', '5', '6', '7', '8', '9'], range.IndexOf(':', StringComparison.Ordinal)))]
                + (int.Parse(new string([.. range.Reverse().TakeWhile(char.IsAsciiDigit).Reverse()]), CultureInfo.InvariantCulture) - 1)
            : range;
        table = $"<table xmlns=\"{BookBuilder.MainNamespace}\" id=\"{number}\" name=\"Table{number}\" displayName=\"Table{number}\" ref=\"{range}\""
            + (tableType is null ? "" : $" tableType=\"{tableType}\"") + (totals ? " totalsRowCount=\"1\"" : " totalsRowShown=\"0\"") + ">"
            + $"<autoFilter ref=\"{rangeWithoutTotals}\"/><tableColumns count=\"{columns.Length}\">"
            + string.Concat(columns.Select((c, i) => $"<tableColumn id=\"{i + 1}\" name=\"{SecurityElement.Escape(c)}\"/>"))
            + "</tableColumns><tableStyleInfo name=\"TableStyleLight1\" showRowStripes=\"1\"/></table>";
        return this;
    }

    public IEnumerable<(string Name, string Content)> Parts()
    {
        yield return ($"xl/worksheets/sheet{number}.xml",
            $"<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\r\n<worksheet xmlns=\"{BookBuilder.MainNamespace}\" xmlns:r=\"{BookBuilder.OfficeNamespace}\">{before}<sheetData>{rows}</sheetData>"
            + string.Concat(after) + (HasTable ? "<tableParts count=\"1\"><tablePart r:id=\"rId1\"/></tableParts>" : "") + "</worksheet>");
        if (table is not null)
        {
            yield return ($"xl/worksheets/_rels/sheet{number}.xml.rels", BookBuilder.Relationships([("rId1", "table", $"../tables/table{number}.xml")]));
            yield return ($"xl/tables/table{number}.xml", table);
        }
    }

    private SheetBuilder Add(object?[] values, string attributes)
    {
        row++;
        rows.Append(CultureInfo.InvariantCulture, $"<row r=\"{row}\"{attributes}>");
        for (var column = 1; column <= values.Length; column++)
        {
            if (values[column - 1] is { } value)
            {
                rows.Append(CellXml(value is Cell cell ? cell : new Cell(value), CastBook.Workbooks.Reading.CellRef.AddressOf(row, column)));
            }
        }

        rows.Append("</row>");
        return this;
    }

    private static string CellXml(Cell cell, string address)
    {
        if (cell.Xml is not null)
        {
            return cell.Xml.Replace("{r}", address, StringComparison.Ordinal);
        }

        var style = cell.Style > 0 ? $" s=\"{cell.Style}\"" : "";
        var formula = cell.Formula is null ? "" : $"<f>{SecurityElement.Escape(cell.Formula)}</f>";
        var (type, value) = cell.Error is { } error ? (" t=\"e\"", $"<v>{error}</v>") : Value(cell);
        style = cell is { Value: DateOnly, Style: 0 } ? $" s=\"{BookBuilder.Style.Date}\"" : style;
        return $"<c r=\"{address}\"{style}{type}>{formula}{value}</c>";
    }

    private static (string Type, string Value) Value(Cell cell) => cell.Value switch
    {
        null => ("", ""),
        string text when cell.Formula is not null => (" t=\"str\"", $"<v>{SecurityElement.Escape(text)}</v>"),
        string text => (" t=\"inlineStr\"", $"<is><t xml:space=\"preserve\">{SecurityElement.Escape(text)}</t></is>"),
        bool yes => (" t=\"b\"", yes ? "<v>1</v>" : "<v>0</v>"),
        DateOnly day => ("", $"<v>{day.DayNumber - new DateOnly(1899, 12, 30).DayNumber}</v>"),
        IFormattable number => ("", $"<v>{number.ToString(null, CultureInfo.InvariantCulture)}</v>"),
        var other => throw new ArgumentException($"A cell cannot hold {other}."),
    };
}
