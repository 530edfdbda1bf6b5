using System.Globalization;
using System.Text;

namespace CastBook.Benchmarks;

/// <summary>Writes the cells of a sheet one after the other.</summary>
internal sealed class SheetText(StringTable strings, int columns)
{
    private readonly StringBuilder xml = new();
    private int row;
    private int column;

    public SheetText Row()
    {
        xml.Append(row > 0 ? "</row>" : "").Append(CultureInfo.InvariantCulture, $"<row r=\"{++row}\" spans=\"1:{columns}\">");
        column = 0;
        return this;
    }

    public SheetText Words(string text, int style = 0)
    {
        Open(style).Append(CultureInfo.InvariantCulture, $" t=\"s\"><v>{strings.Of(text)}</v></c>");
        return this;
    }

    public SheetText Number(double value, int style = 0)
    {
        Open(style).Append(CultureInfo.InvariantCulture, $"><v>{value}</v></c>");
        return this;
    }

    public SheetText Formula(string formula, double value, int style = 0)
    {
        Open(style).Append(CultureInfo.InvariantCulture, $"><f>{formula}</f><v>{value}</v></c>");
        return this;
    }

    /// <summary>Leaves a cell out, as an office program does with an empty one.</summary>
    public SheetText Nothing()
    {
        column++;
        return this;
    }

    public string ToXml() => string.Create(CultureInfo.InvariantCulture,
        $"{PackageXml.Declaration}<worksheet xmlns=\"{PackageXml.Main}\"><dimension ref=\"A1:{PackageXml.Column(columns - 1)}{row}\"/>"
        + $"<sheetViews><sheetView workbookViewId=\"0\"/></sheetViews><sheetFormatPr defaultRowHeight=\"15\"/><sheetData>{xml}</row></sheetData>"
        + $"<pageMargins left=\"0.7\" right=\"0.7\" top=\"0.75\" bottom=\"0.75\" header=\"0.3\" footer=\"0.3\"/></worksheet>");

    private StringBuilder Open(int style)
    {
        xml.Append(CultureInfo.InvariantCulture, $"<c r=\"{PackageXml.Column(column++)}{row}\"");
        return style == 0 ? xml : xml.Append(CultureInfo.InvariantCulture, $" s=\"{style}\"");
    }
}
