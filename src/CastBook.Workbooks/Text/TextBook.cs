using System.Buffers;
using System.Globalization;
using System.IO.Compression;
using System.Text;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Writing;

namespace CastBook.Workbooks.Text;

/// <summary>A plain workbook of one sheet, made of separated text.</summary>
/// <remarks>
/// Every cell stays the text that was typed, so that reading decides by the whole column what a comma means; only short
/// whole numbers become numbers. Text never becomes a formula.
/// </remarks>
internal static class TextBook
{
    private const string Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private const string Office = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private const string Package = "http://schemas.openxmlformats.org/package/2006";
    private const string Head = "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n";

    // More digits may be a code of the shop's, which a number would spoil.
    private const int MostDigits = 6;

    /// <summary>Makes the workbook.</summary>
    /// <param name="rows">The rows, every cell as typed.</param>
    /// <param name="output">Where to.</param>
    public static void Write(IReadOnlyList<string[]> rows, Stream output)
    {
        using var zip = new ZipArchive(output, ZipArchiveMode.Create, leaveOpen: true);
        Add(zip, "[Content_Types].xml", $"""{Head}<Types xmlns="{Package}/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>"""
            + """<Default Extension="xml" ContentType="application/xml"/>"""
            + """<Override PartName="/xl/workbook.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml"/>"""
            + """<Override PartName="/xl/worksheets/sheet1.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml"/>"""
            + """<Override PartName="/xl/styles.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.styles+xml"/></Types>""");
        Add(zip, "_rels/.rels", $"""{Head}<Relationships xmlns="{Package}/relationships"><Relationship Id="rId1" Type="{Office}/officeDocument" Target="xl/workbook.xml"/></Relationships>""");
        Add(zip, "xl/workbook.xml", $"""{Head}<workbook xmlns="{Main}" xmlns:r="{Office}"><sheets><sheet name="Pieces" sheetId="1" r:id="rId1"/></sheets></workbook>""");
        Add(zip, "xl/_rels/workbook.xml.rels", $"""{Head}<Relationships xmlns="{Package}/relationships"><Relationship Id="rId1" Type="{Office}/worksheet" Target="worksheets/sheet1.xml"/>"""
            + $"""<Relationship Id="rId2" Type="{Office}/styles" Target="styles.xml"/></Relationships>""");
        Add(zip, "xl/styles.xml", Encoding.UTF8.GetString(StyleBook.Smallest(Main)));
        using var sheet = Open(zip, "xl/worksheets/sheet1.xml");
        sheet.Write(Encoding.UTF8.GetBytes($"""{Head}<worksheet xmlns="{Main}"><sheetData>"""));
        WriteRows(rows, sheet);
        sheet.Write("</sheetData></worksheet>"u8);
    }

    private static void WriteRows(IReadOnlyList<string[]> rows, Stream sheet)
    {
        var line = new ArrayBufferWriter<byte>(1024);
        for (var row = 1; row <= rows.Count; row++)
        {
            line.ResetWrittenCount();
            line.Write("<row r=\""u8);
            row.TryFormat(line.GetSpan(CellRef.MaxRow.ToString(CultureInfo.InvariantCulture).Length), out var digits, default, CultureInfo.InvariantCulture);
            line.Advance(digits);
            line.Write("\">"u8);
            for (var column = 1; column <= Math.Min(rows[row - 1].Length, CellRef.MaxColumn); column++)
            {
                if (ValueOf(rows[row - 1][column - 1]) is { IsEmpty: false } value)
                {
                    value.Write(line, row, column, null, []);
                }
            }

            line.Write("</row>"u8);
            sheet.Write(line.WrittenSpan);
        }
    }

    /// <summary>What a cell as typed becomes: short whole numbers numbers, all else text.</summary>
    /// <param name="text">As typed.</param>
    public static CellValue ValueOf(string text)
    {
        var isWhole = text.Length is > 0 and <= MostDigits && text.All(char.IsAsciiDigit) && (text.Length == 1 || text[0] != '0');
        return isWhole ? CellValue.Of(double.Parse(text, CultureInfo.InvariantCulture)) : CellValue.Of(text);
    }

    private static void Add(ZipArchive zip, string part, string xml)
    {
        using var stream = Open(zip, part);
        stream.Write(Encoding.UTF8.GetBytes(xml));
    }

    private static Stream Open(ZipArchive zip, string part)
    {
        var entry = zip.CreateEntry(part, CompressionLevel.Optimal);
        entry.LastWriteTime = PackageWriter.NoTime;
        return entry.Open();
    }
}
