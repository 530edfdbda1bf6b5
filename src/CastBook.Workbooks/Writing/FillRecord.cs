using System.Globalization;
using System.Runtime.InteropServices;
using System.Text;
using CastBook.Workbooks.Reading.Grid;

namespace CastBook.Workbooks.Writing;

/// <summary>
/// What CastBook wrote last, by column and sheet, as hashes in a hidden column of Checks: only so can a value that a
/// person typed be told from one of ours. The hashes are a set, so sorting the rows does not matter.
/// </summary>
internal sealed class FillRecord
{
    private const string Marker = "castbook-record";
    private const string BeforeMarker = "castbook-before";

    // A cell holds 32,767 characters; six bits a character.
    private const int HashesInCell = 6000;
    private const int MostBytesKept = 4 * HashesInCell;

    // Nine digits with sign, point and exponent.
    private const int MostDigits = 24;
    private const double MostShort = 1e5;

    private readonly Dictionary<string, HashSet<uint>> written = new(StringComparer.Ordinal);

    // A row may be moved from list to list, so what was written in a column of one list is known in that of any other.
    private readonly Dictionary<string, List<HashSet<uint>>> inAnyList = new(StringComparer.Ordinal);
    private readonly Dictionary<string, (uint After, byte[] Before)> elements = new(StringComparer.Ordinal);

    /// <summary>The record of a book: empty where it has no Checks sheet of ours.</summary>
    /// <param name="checks">The Checks sheet, or null.</param>
    /// <param name="column">The column the record stands in.</param>
    public static FillRecord Read(SheetGrid? checks, int column)
    {
        var record = new FillRecord();
        foreach (var row in checks?.Rows ?? [])
        {
            // Nothing behind the key: no value of it is ours. Some programs drop the blank there.
            if (checks!.Cell(row, column).Text?.TrimEnd().Split(' ') is [var marker, var key, .. var rest])
            {
                record.Take(marker, key, rest is [var only] ? only : "");
            }
        }

        return record;
    }

    /// <summary>Takes over of another record what this filling does not write anew: questions asked once, lists not read, and what stood before.</summary>
    /// <param name="before">What CastBook wrote last.</param>
    /// <param name="elsewhere">Hidden names of columns in lists that are not read this time.</param>
    public void CarryOver(FillRecord before, IReadOnlyCollection<string> elsewhere)
    {
        foreach (var (key, hashes) in before.written.Where(w => Reading.OwnName.IsQuestions(w.Key) || elsewhere.Contains(w.Key)))
        {
            SetOf(key).UnionWith(hashes);
        }

        foreach (var (key, element) in before.elements)
        {
            elements.TryAdd(key, element);
        }
    }

    /// <summary>Records what an element was before we changed it, so that it can be put back where nobody changed it since.</summary>
    /// <param name="key">What it is called here; without blanks.</param>
    /// <param name="before">The element as it was; nothing where there was none.</param>
    /// <param name="after">The element as we wrote it.</param>
    public void Changed(string key, byte[] before, byte[] after)
    {
        if (before.Length <= MostBytesKept)
        {
            elements[key] = (Hash(Encoding.UTF8.GetString(after)), before);
        }
    }

    /// <summary>What an element was before we changed it; null where somebody changed it since, or we did not.</summary>
    /// <param name="key">What it is called here.</param>
    /// <param name="now">The element as it stands.</param>
    public byte[]? Before(string key, byte[] now) =>
        elements.TryGetValue(key, out var element) && element.After == Hash(Encoding.UTF8.GetString(now)) ? element.Before : null;

    /// <summary>Whether anything is recorded of a column, in any list, or of a sheet.</summary>
    /// <param name="key">Its hidden name.</param>
    public bool Knows(string key) => inAnyList.ContainsKey(Reading.OwnName.Split(key).Name);

    /// <summary>Whether CastBook wrote this text there.</summary>
    /// <param name="key">The column's or sheet's hidden name.</param>
    /// <param name="text">The text, as <see cref="TextOf(GridCell)"/> gives it.</param>
    public bool Wrote(string key, ReadOnlySpan<char> text)
    {
        if (!inAnyList.TryGetValue(Reading.OwnName.Split(key).Name, out var lists))
        {
            return false;
        }

        var hash = Hash(text);
        foreach (var hashes in lists)
        {
            if (hashes.Contains(hash))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Records that CastBook writes this text there.</summary>
    /// <param name="key">The column's or sheet's hidden name.</param>
    /// <param name="text">The text, as <see cref="TextOf(CellValue)"/> gives it; empty text is not recorded.</param>
    public void Add(string key, ReadOnlySpan<char> text)
    {
        var hashes = SetOf(key);
        if (text.Length > 0)
        {
            hashes.Add(Hash(text));
        }
    }

    /// <summary>Whether CastBook wrote what a cell shows.</summary>
    /// <param name="key">The column's hidden name.</param>
    /// <param name="cell">The cell.</param>
    public bool Wrote(string key, GridCell cell)
    {
        Span<char> digits = stackalloc char[MostDigits];
        return Wrote(key, TextOf(cell, digits));
    }

    /// <summary>Records that CastBook writes, or leaves, what a cell shows.</summary>
    /// <param name="key">The column's hidden name.</param>
    /// <param name="cell">The cell.</param>
    public void Add(string key, GridCell cell)
    {
        Span<char> digits = stackalloc char[MostDigits];
        Add(key, TextOf(cell, digits));
    }

    /// <summary>Records that CastBook writes a value; an empty one is not recorded.</summary>
    /// <param name="key">The column's hidden name.</param>
    /// <param name="value">The value.</param>
    public void Add(string key, CellValue value)
    {
        if (value.Number is { } number)
        {
            Add(key, number);
        }
        else
        {
            Add(key, value.Text);
        }
    }

    // Below a hundred thousand three decimals are eight digits, so that the shortest digits are those of the record.
    private void Add(string key, double number)
    {
        Span<byte> digits = stackalloc byte[ShortNumber.MostLength];
        var length = Math.Abs(number) < MostShort ? ShortNumber.Write(number, digits) : 0;
        Span<char> text = stackalloc char[MostDigits];
        if (length == 0)
        {
            Add(key, Number(number, text));
            return;
        }

        Encoding.ASCII.GetChars(digits[..length], text);
        Add(key, text[..length]);
    }

    /// <summary>Writes the record.</summary>
    /// <param name="sheet">The Checks sheet.</param>
    /// <param name="column">The column for it.</param>
    public void Write(OwnedSheet sheet, int column)
    {
        var row = 0;
        foreach (var (key, hashes) in written.OrderBy(w => w.Key, StringComparer.Ordinal))
        {
            foreach (var chunk in hashes.Order().Chunk(HashesInCell).DefaultIfEmpty([]))
            {
                var bytes = MemoryMarshal.AsBytes(chunk.AsSpan());
                sheet.Set(++row, column, $"{Marker} {key} {Convert.ToBase64String(bytes)}", CellLook.Small);
            }
        }

        foreach (var (key, (hash, bytes)) in elements.OrderBy(e => e.Key, StringComparer.Ordinal))
        {
            sheet.Set(++row, column, $"{BeforeMarker} {key} {Convert.ToBase64String([.. BitConverter.GetBytes(hash), .. bytes])}", CellLook.Small);
        }
    }

    /// <summary>A cell as the record knows it: numbers to nine digits, which survive every program.</summary>
    /// <param name="cell">The cell.</param>
    public static string TextOf(GridCell cell) => cell.Kind switch
    {
        CellKind.Number or CellKind.Date or CellKind.Boolean => Number(cell.Number),
        CellKind.Text or CellKind.Error => cell.Text ?? "",
        _ => "",
    };

    /// <summary>A value as the record knows it.</summary>
    /// <param name="value">The value.</param>
    public static string TextOf(CellValue value) => value.Number is { } number ? Number(number) : value.Text ?? "";

    private static ReadOnlySpan<char> TextOf(GridCell cell, Span<char> digits) => cell.Kind switch
    {
        CellKind.Number or CellKind.Date or CellKind.Boolean => Number(cell.Number, digits),
        CellKind.Text or CellKind.Error => cell.Text,
        _ => "",
    };

    private static string Number(double number) => number.ToString("G9", CultureInfo.InvariantCulture);

    private static ReadOnlySpan<char> Number(double number, Span<char> digits) =>
        number.TryFormat(digits, out var length, "G9", CultureInfo.InvariantCulture) ? digits[..length] : Number(number);

    /// <summary>FNV-1a over the characters, line ends as one: office programs change them.</summary>
    private static uint Hash(ReadOnlySpan<char> text)
    {
        var hash = 2166136261u;
        foreach (var c in text)
        {
            if (c != '\r')
            {
                hash = unchecked((hash ^ c) * 16777619u);
            }
        }

        return hash;
    }

    private void Take(string marker, string key, string content)
    {
        var bytes = new byte[content.Length];
        if (!Convert.TryFromBase64String(content, bytes, out var length))
        {
            return;
        }

        if (marker == Marker)
        {
            SetOf(key).UnionWith(MemoryMarshal.Cast<byte, uint>(bytes.AsSpan(0, length)).ToArray());
        }
        else if (marker == BeforeMarker && length >= sizeof(uint))
        {
            elements[key] = (BitConverter.ToUInt32(bytes), bytes[sizeof(uint)..length]);
        }
    }

    private HashSet<uint> SetOf(string key)
    {
        if (!written.TryGetValue(key, out var hashes))
        {
            written[key] = hashes = [];
            var name = Reading.OwnName.Split(key).Name;
            if (!inAnyList.TryGetValue(name, out var lists))
            {
                inAnyList[name] = lists = [];
            }

            lists.Add(hashes);
        }

        return hashes;
    }
}
