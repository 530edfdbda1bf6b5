using System.Buffers.Text;
using System.Globalization;
using System.Text;
using CastBook.Workbooks.Files;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Words;
using CastBook.Workbooks.Xml;

namespace CastBook.Workbooks.Reading.Grid;

/// <summary>One walk over the tags of a sheet: its cells, and what stands around them.</summary>
/// <param name="scanner">The sheet.</param>
/// <param name="date1904">Whether days count from 1904.</param>
/// <param name="stopAfter">The last row wanted.</param>
internal sealed partial class SheetPass(XmlScanner scanner, bool date1904, int stopAfter)
{
    private int row;
    private int column;

    public SheetCells Cells { get; } = new();

    public SheetFrame Frame { get; } = new();

    public void Run()
    {
        Walk();
        Cells.EndRow();
    }

    private void Walk()
    {
        if (!scanner.NextInside() || scanner.Kind == TagKind.Empty)
        {
            return;
        }

        while (scanner.NextInside())
        {
            if (!scanner.LocalName.SequenceEqual("sheetData"u8))
            {
                TakeFrame();
            }
            else if (scanner.Kind == TagKind.Start && !ReadRows())
            {
                return;
            }

            scanner.Drop();
        }
    }

    // False when the pass ends here because the rows wanted have been read.
    private bool ReadRows()
    {
        while (scanner.NextInside())
        {
            if (!scanner.LocalName.SequenceEqual("row"u8))
            {
                scanner.SkipAndDrop();
                continue;
            }

            BeginRow();
            if (row > stopAfter)
            {
                return false;
            }

            if (scanner.Kind == TagKind.Start)
            {
                ReadCells();
            }

            scanner.Drop();
        }

        RequireEndOf("sheetData"u8);
        return true;
    }

    private void BeginRow()
    {
        var tag = scanner.Tag;
        var number = row + 1;
        if (TagAttributes.TryGet(tag, "r"u8, out var text) && (!Utf8Parser.TryParse(text, out number, out var used) || used != text.Length))
        {
            number = 0;
        }

        if (number <= row || number > CellRef.MaxRow)
        {
            throw BookRefusedException.Damaged(text.IsEmpty ? RefusalWords.RowBeyondLast : RefusalWords.RowOutOfOrder(Encoding.UTF8.GetString(text)));
        }

        row = number;
        column = 0;
        if (number > stopAfter)
        {
            return;
        }

        if (TagAttributes.TryGet(tag, "hidden"u8, out var hidden) && PackageXml.IsTrue(Encoding.UTF8.GetString(hidden)))
        {
            Cells.HiddenRows.Add(number);
        }

        if (scanner.Kind == TagKind.Start)
        {
            Cells.BeginRow(number);
        }
    }

    private void ReadCells()
    {
        var digest = scanner.TryPeek(RowCells.Closing, out var cells) ? RowCells.Digest(cells) : 0;
        while (true)
        {
            if (scanner.NextPlainCell(out var cell))
            {
                TakePlain(cell);
                scanner.Drop();
                continue;
            }

            if (!scanner.NextInside())
            {
                break;
            }

            // The formulas of cells that are not plain may belong together: those are looked into again when the book is written.
            digest = 0;
            if (scanner.LocalName.SequenceEqual("c"u8))
            {
                ReadCell();
            }
            else
            {
                scanner.SkipAndDrop();
            }

            scanner.Drop();
        }

        RequireEndOf("row"u8);
        Cells.Digest = digest;
    }

    private void TakePlain(PlainCell cell)
    {
        TakePlace(cell.Address);
        _ = Utf8Parser.TryParse(cell.Style, out int style, out _);
        var type = cell.Type.IsEmpty ? 'n' : TypeLetter(cell.Type);
        Cells.Add(column, ValueOf(type, cell.Value) ?? Without(type, cell.HasFormula), cell.HasFormula, style);
    }

    private void ReadCell()
    {
        var (style, type) = ReadCellAttributes();
        var formula = false;
        HeldValue? value = null;
        if (scanner.Kind == TagKind.Start)
        {
            while (scanner.NextInside())
            {
                if (scanner.LocalName.SequenceEqual("v"u8))
                {
                    value = ValueOf(type, scanner.ReadText());
                }
                else if (scanner.LocalName.SequenceEqual("is"u8))
                {
                    value = Cells.Hold(CellKind.Text, StringItems.ReadItem(scanner, Cells.Struck));
                }
                else
                {
                    formula |= scanner.LocalName.SequenceEqual("f"u8);
                    TakeArray();
                    scanner.SkipAndDrop();
                }
            }

            RequireEndOf("c"u8);
        }

        Cells.Add(column, value ?? Without(type, formula), formula, style);
    }

    // A formula that gives empty text has a value; a formula without any value has none.
    private HeldValue Without(char type, bool formula) => formula && type == 't' ? Cells.Hold(CellKind.Text, "") : default;

    private (int Style, char Type) ReadCellAttributes()
    {
        var (style, type) = (0, 'n');
        ReadOnlySpan<byte> address = default;
        var attributes = new TagAttributes.Walk(scanner.Tag);
        while (attributes.Next())
        {
            if (attributes.Name.Length != 1)
            {
                continue;
            }

            switch (attributes.Name[0])
            {
                case (byte)'r':
                    address = attributes.Value;
                    break;
                case (byte)'s':
                    _ = Utf8Parser.TryParse(attributes.Value, out style, out _);
                    break;
                case (byte)'t':
                    type = TypeLetter(attributes.Value);
                    break;
                default:
                    break;
            }
        }

        TakePlace(address);
        return (style, type);
    }

    private void TakePlace(ReadOnlySpan<byte> address)
    {
        if (address.IsEmpty)
        {
            column = column < CellRef.MaxColumn
                ? column + 1
                : throw BookRefusedException.Damaged(RefusalWords.RowTooWide(row));
            return;
        }

        if (!CellRef.TryParse(address, out var itsRow, out var itsColumn) || itsRow != row || itsColumn <= column)
        {
            throw BookRefusedException.Damaged(RefusalWords.CellOutOfOrder(Encoding.UTF8.GetString(address), row));
        }

        column = itsColumn;
    }

    // s shared, i inline, t text of a formula, b yes or no, e error, d ISO date, n number.
    private static char TypeLetter(ReadOnlySpan<byte> type) => type switch
    {
        [(byte)'s'] => 's',
        [(byte)'b'] => 'b',
        [(byte)'e'] => 'e',
        [(byte)'d'] => 'd',
        [(byte)'n'] => 'n',
        _ when type.SequenceEqual("str"u8) => 't',
        _ when type.SequenceEqual("inlineStr"u8) => 'i',
        _ => 'n',
    };

    private HeldValue? ValueOf(char type, ReadOnlySpan<byte> raw)
    {
        if (type == 'n' && PackedNumber.TryPack(raw, out var packed))
        {
            return new HeldValue(CellKind.Number, packed, false);
        }

        if (type == 's' && Utf8Parser.TryParse(raw, out int index, out var used) && used == raw.Length && index >= 0)
        {
            return new HeldValue(CellKind.Text, index, false);
        }

        return raw.Length == 0 ? null : OtherValue(type, StringItems.TextOf(raw));
    }

    private HeldValue OtherValue(char type, string text)
    {
        switch (type)
        {
            case 'b':
                return HeldValue.Of(text is "1" or "true");
            case 'e':
                return Cells.Hold(CellKind.Error, text);
            case 'd' when IsoDate.TrySerial(text, date1904, out var serial):
                return Cells.Hold(CellKind.Date, serial);
            case 'n' when double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number):
                return Cells.Hold(CellKind.Number, number);
            case 's' when int.TryParse(text, NumberStyles.Integer, CultureInfo.InvariantCulture, out var index) && index >= 0:
                return new HeldValue(CellKind.Text, index, false);
            case 'i':
                return Cells.Hold(CellKind.Text, text);
            default:
                // Text of a formula; or a value that is not what its type says, which stays what was written.
                return Cells.Hold(CellKind.Text, StringItems.Unescape(text));
        }
    }

    private void RequireEndOf(ReadOnlySpan<byte> name)
    {
        if (scanner.Kind != TagKind.End || !scanner.LocalName.SequenceEqual(name))
        {
            throw new InvalidDataException(RefusalWords.TagsDoNotMatch);
        }
    }
}
