using System.Globalization;

namespace CastBook.Workbooks.Reading;

/// <summary>A cell of a named sheet; rows and columns count from 1, as a person counts them.</summary>
/// <param name="Sheet">The sheet's name.</param>
/// <param name="Row">Row, from 1.</param>
/// <param name="Column">Column, from 1.</param>
public readonly record struct CellRef(string Sheet, int Row, int Column)
{
    /// <summary>The last row a workbook can have.</summary>
    public const int MaxRow = 1_048_576;

    /// <summary>The last column a workbook can have.</summary>
    public const int MaxColumn = 16_384;

    /// <summary>The address within the sheet, such as <c>C14</c>.</summary>
    public string Address => AddressOf(Row, Column);

    /// <summary>As a link or a formula writes it: <c>Pieces!C14</c>, <c>'Night plan'!A1</c>.</summary>
    public override string ToString() => $"{Quote(Sheet)}!{Address}";

    /// <summary>The address of a row and column, such as <c>C14</c>.</summary>
    /// <param name="row">Row, from 1.</param>
    /// <param name="column">Column, from 1.</param>
    public static string AddressOf(int row, int column) =>
        ColumnName(column) + row.ToString(CultureInfo.InvariantCulture);

    /// <summary>The letters of a column: 1 is A, 27 is AA.</summary>
    /// <param name="column">Column, from 1.</param>
    public static string ColumnName(int column)
    {
        Span<char> letters = stackalloc char[4];
        var at = letters.Length;
        for (var rest = column; rest > 0; rest = (rest - 1) / 26)
        {
            letters[--at] = (char)('A' + ((rest - 1) % 26));
        }

        return new string(letters[at..]);
    }

    /// <summary>Reads an address such as <c>C14</c> or <c>$C$14</c>; false where it is none or lies outside a sheet.</summary>
    /// <param name="text">The address.</param>
    /// <param name="row">Row, from 1.</param>
    /// <param name="column">Column, from 1.</param>
    public static bool TryParse(ReadOnlySpan<char> text, out int row, out int column)
    {
        row = column = 0;
        var at = 0;
        if (at < text.Length && text[at] == '$')
        {
            at++;
        }

        var letters = at;
        for (; at < text.Length && char.IsAsciiLetter(text[at]) && at - letters < 3; at++)
        {
            column = (column * 26) + (char.ToUpperInvariant(text[at]) - 'A' + 1);
        }

        if (at == letters)
        {
            return false;
        }

        if (at < text.Length && text[at] == '$')
        {
            at++;
        }

        return int.TryParse(text[at..], NumberStyles.None, CultureInfo.InvariantCulture, out row)
            && row is >= 1 and <= MaxRow && column is >= 1 and <= MaxColumn;
    }

    /// <summary>Reads a plain address such as <c>C14</c> from the bytes of a part; false where it is none or lies outside a sheet.</summary>
    /// <param name="utf8">The address.</param>
    /// <param name="row">Row, from 1.</param>
    /// <param name="column">Column, from 1.</param>
    internal static bool TryParse(ReadOnlySpan<byte> utf8, out int row, out int column)
    {
        row = column = 0;
        var at = 0;
        for (; at < utf8.Length && at < 3 && (uint)((utf8[at] | 0x20) - 'a') < 26; at++)
        {
            column = (column * 26) + (utf8[at] | 0x20) - 'a' + 1;
        }

        var digits = utf8.Length - at;
        if (at == 0 || digits is 0 or > 7)
        {
            return false;
        }

        for (; at < utf8.Length; at++)
        {
            var digit = (uint)(utf8[at] - '0');
            if (digit > 9)
            {
                return false;
            }

            row = (row * 10) + (int)digit;
        }

        return row is >= 1 and <= MaxRow && column <= MaxColumn;
    }

    /// <summary>A sheet's name as a formula writes it: quoted unless it is a plain word.</summary>
    /// <param name="sheet">The sheet's name.</param>
    public static string Quote(string sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        var plain = sheet.Length > 0 && !char.IsAsciiDigit(sheet[0])
            && sheet.All(c => char.IsLetterOrDigit(c) || c == '_') && !TryParse(sheet, out _, out _);
        return plain ? sheet : $"'{sheet.Replace("'", "''", StringComparison.Ordinal)}'";
    }
}
