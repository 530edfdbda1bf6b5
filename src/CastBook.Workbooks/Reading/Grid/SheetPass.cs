using System.Globalization;
using System.Xml;
using CastBook.Workbooks.Files;
using CastBook.Workbooks.Reading.Package;

namespace CastBook.Workbooks.Reading.Grid;

/// <summary>One pass over a sheet's XML. Names are compared by reference, because the reader atomises them.</summary>
internal sealed class SheetPass
{
    private readonly XmlReader xml;
    private readonly bool date1904;
    private readonly int stopAfter;
    private readonly char[] buffer = new char[1024];
    private readonly string row, cell, v, f, inline, r, s, t;
    private int rowNumber;
    private int column;
    private int priorityBefore;

    public SheetPass(XmlReader xml, bool date1904, int stopAfter)
    {
        (this.xml, this.date1904, this.stopAfter) = (xml, date1904, stopAfter);
        (row, cell, v, f) = (xml.NameTable.Add("row"), xml.NameTable.Add("c"), xml.NameTable.Add("v"), xml.NameTable.Add("f"));
        (inline, r, s, t) = (xml.NameTable.Add("is"), xml.NameTable.Add("r"), xml.NameTable.Add("s"), xml.NameTable.Add("t"));
    }

    public SheetCells Cells { get; } = new();

    public SheetFrame Frame { get; } = new();

    public void Run()
    {
        while (xml.Read())
        {
            if (xml.NodeType != XmlNodeType.Element)
            {
                continue;
            }

            PackageXml.CheckDepth(xml);
            if (xml.Depth == 1 && xml.LocalName == "sheetData")
            {
                if (!ReadRows())
                {
                    return;
                }
            }
            else
            {
                TakeFrame();
            }
        }
    }

    private void TakeFrame()
    {
        switch (xml.LocalName)
        {
            case "mergeCell" when CellRange.TryParse(xml.GetAttribute("ref"), out var merge):
                Frame.Merges.Add(merge);
                break;
            case "autoFilter" when xml.Depth == 1 && CellRange.TryParse(xml.GetAttribute("ref"), out var filter):
                Frame.AutoFilter = filter;
                break;
            case "tablePart" when xml.Attribute("id", "/relationships") is { } id:
                Frame.TablePartIds.Add(id);
                break;
            case "cfRule" when int.TryParse(xml.GetAttribute("priority"), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var priority):
                priorityBefore = Frame.HighestPriority;
                Frame.HighestPriority = Math.Max(priorityBefore, priority);
                break;
            case "formula" when !xml.IsEmptyElement && xml.Read() && xml.Value.Contains("castbook:", StringComparison.Ordinal):
                // A rule of ours: it is taken out and made anew, so it does not count.
                Frame.HighestPriority = priorityBefore;
                break;
            case "legacyDrawing" when xml.Depth == 1:
                Frame.LegacyDrawingId = xml.Attribute("id", "/relationships");
                break;
            default:
                break;
        }
    }

    // False when the pass ends here because the rows wanted have been read.
    private bool ReadRows()
    {
        if (xml.IsEmptyElement)
        {
            return true;
        }

        var depth = xml.Depth;
        while (xml.Read() && xml.Depth > depth)
        {
            if (xml.NodeType != XmlNodeType.Element)
            {
                continue;
            }

            if (ReferenceEquals(xml.LocalName, cell))
            {
                ReadCell();
            }
            else if (ReferenceEquals(xml.LocalName, row))
            {
                BeginRow();
                if (rowNumber > stopAfter)
                {
                    return false;
                }
            }
            else
            {
                PackageXml.CheckDepth(xml);
            }
        }

        return true;
    }

    private void BeginRow()
    {
        var number = rowNumber + 1;
        if (xml.GetAttribute("r") is { } text && !int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out number))
        {
            number = 0;
        }

        if (number <= rowNumber || number > CellRef.MaxRow)
        {
            throw BookRefusedException.Damaged($"row {xml.GetAttribute("r") ?? "beyond the last"}, which is out of order");
        }

        rowNumber = number;
        column = 0;
        if (PackageXml.IsTrue(xml.GetAttribute("hidden")))
        {
            Cells.HiddenRows.Add(number);
        }

        if (!xml.IsEmptyElement && number <= stopAfter)
        {
            Cells.BeginRow(number);
        }
    }

    private void ReadCell()
    {
        var (style, type) = ReadCellAttributes();
        var formula = false;
        string? text = null;
        var length = -1;
        if (!xml.IsEmptyElement)
        {
            var depth = xml.Depth;
            while (xml.Read() && xml.Depth > depth)
            {
                if (xml.NodeType != XmlNodeType.Element)
                {
                    continue;
                }

                formula |= ReferenceEquals(xml.LocalName, f);
                if (ReferenceEquals(xml.LocalName, v) && !xml.IsEmptyElement)
                {
                    (text, length) = ReadValue();
                }
                else if (ReferenceEquals(xml.LocalName, inline))
                {
                    text = StringItems.ReadItem(xml, buffer);
                }
                else
                {
                    PackageXml.CheckDepth(xml);
                }
            }
        }

        Store(type, text, length, style, formula);
    }

    // A short value stays in the buffer; only a text that does not fit becomes a string here.
    private (string? Text, int Length) ReadValue()
    {
        if (!xml.Read() || xml.NodeType == XmlNodeType.EndElement)
        {
            return (null, -1);
        }

        var length = xml.ReadValueChunk(buffer, 0, buffer.Length);
        if (length < buffer.Length - 1)
        {
            return (null, length);
        }

        var start = new string(buffer, 0, length);
        var rest = StringItems.ReadRest(xml, buffer);
        return (start + rest, -1);
    }

    private (int Style, char Type) ReadCellAttributes()
    {
        var style = 0;
        var type = 'n';
        column++;
        while (xml.MoveToNextAttribute())
        {
            var name = xml.LocalName;
            var length = xml.ReadValueChunk(buffer, 0, buffer.Length);
            var value = buffer.AsSpan(0, length);
            if (ReferenceEquals(name, r))
            {
                TakeAddress(value);
            }
            else if (ReferenceEquals(name, s))
            {
                _ = int.TryParse(value, NumberStyles.None, CultureInfo.InvariantCulture, out style);
            }
            else if (ReferenceEquals(name, t))
            {
                type = TypeLetter(value);
            }
        }

        xml.MoveToElement();
        if (column > CellRef.MaxColumn)
        {
            throw BookRefusedException.Damaged($"row {rowNumber}, which is wider than a sheet");
        }

        return (style, type);
    }

    private void TakeAddress(ReadOnlySpan<char> value)
    {
        if (!CellRef.TryParse(value, out var addressRow, out var addressColumn) || addressRow != rowNumber || addressColumn < column)
        {
            throw BookRefusedException.Damaged($"cell {value} in row {rowNumber}, which is out of order");
        }

        column = addressColumn;
    }

    // s shared, i inline, t text of a formula, b yes or no, e error, d ISO date, n number.
    private static char TypeLetter(ReadOnlySpan<char> type) => type switch
    {
        "s" => 's',
        "str" => 't',
        "inlineStr" => 'i',
        "b" => 'b',
        "e" => 'e',
        "d" => 'd',
        _ => 'n',
    };

    private void Store(char type, string? text, int length, int style, bool formula)
    {
        var raw = text ?? (length > 0 ? null : "");
        ReadOnlySpan<char> value = raw is null ? buffer.AsSpan(0, length) : raw;
        if (value.Length == 0)
        {
            // A formula that gives empty text has a value; a formula without any value has none.
            var emptyText = formula && type == 't';
            Cells.Add(column, emptyText ? CellKind.Text : CellKind.Empty, formula, emptyText ? Cells.Keep("") : 0, style);
            return;
        }

        switch (type)
        {
            case 's' when int.TryParse(value, NumberStyles.None, CultureInfo.InvariantCulture, out var index):
                Cells.Add(column, CellKind.Text, formula, index, style);
                break;
            case 'b':
                Cells.Add(column, CellKind.Boolean, formula, value is "1" or "true" ? 1 : 0, style);
                break;
            case 'e':
                Cells.Add(column, CellKind.Error, formula, Cells.Keep(value.ToString()), style);
                break;
            case 'd' when IsoDate.TrySerial(value, date1904, out var serial):
                Cells.Add(column, CellKind.Date, formula, serial, style);
                break;
            case 'n' when double.TryParse(value, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number):
                Cells.Add(column, CellKind.Number, formula, number, style);
                break;
            case 'i':
                Cells.Add(column, CellKind.Text, formula, Cells.Keep(value.ToString()), style);
                break;
            default:
                // Text of a formula; or a value that is not what its type says, which stays what was written.
                Cells.Add(column, CellKind.Text, formula, Cells.Keep(StringItems.Unescape(value.ToString())), style);
                break;
        }
    }
}
