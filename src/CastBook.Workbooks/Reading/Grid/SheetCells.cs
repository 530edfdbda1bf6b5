namespace CastBook.Workbooks.Reading.Grid;

/// <summary>The cells of a sheet while they are read and after: parallel lists, a run of them for each row.</summary>
/// <remarks>
/// A cell takes 5 bytes, so a book of 100,000 × 20 cells takes about 11 MB. Texts are held as numbers: an index of the
/// shared strings, or below zero one of the sheet's own texts. Numbers are packed (<see cref="PackedNumber"/>) where they are short.
/// </remarks>
internal sealed class SheetCells
{
    private const byte FormulaFlag = 0x80;
    private const byte LongFlag = 0x40;
    private const byte KindMask = 0x0F;

    private readonly Pages<int> patternOf = new();
    private readonly RowPatterns patterns = new();
    private readonly Pages<uint> digests = new();
    private Pages<int> starts = new();
    private Pages<byte> kinds = new();
    private Pages<int> values = new();
    private Keeping? keeping;
    private readonly List<double> longNumbers = [];
    private readonly List<string> ownTexts = [];
    private int lastAt;

    public List<int> Rows { get; } = [];

    public HashSet<int> HiddenRows { get; } = [];

    /// <summary>Texts of the sheet's own of which every run is struck out, as the objects they are.</summary>
    public HashSet<string> Struck { get; } = new(ReferenceEqualityComparer.Instance);

    /// <summary>The digest of the row begun last; 0 for none.</summary>
    public uint Digest { get; set; }

    /// <summary>Whether a formula stands behind any cell.</summary>
    public bool HasFormulas { get; private set; }

    /// <summary>Begins a row; rows come in ascending order.</summary>
    public void BeginRow(int row)
    {
        EndRow();
        Rows.Add(row);
        starts.Add(values.Count);
    }

    /// <summary>Ends the row begun last; to be called after the last one, before anything is asked.</summary>
    public void EndRow()
    {
        if (patternOf.Count < Rows.Count)
        {
            patternOf.Add(patterns.Close());
            digests.Add(Digest);
            Digest = 0;
        }
    }

    /// <summary>The digest of a row's cells as they were read (<see cref="RowCells.Digest"/>); 0 where none was taken, or not all cells are plain.</summary>
    /// <param name="row">Row, from 1.</param>
    public uint DigestOf(int row) => At(row) is >= 0 and var at ? digests[at] : 0;

    /// <summary>Adds a cell to the row begun last; columns come in ascending order.</summary>
    /// <param name="column">Column, from 1.</param>
    /// <param name="value">What it holds.</param>
    /// <param name="formula">Whether a formula stands behind it.</param>
    /// <param name="style">Its cell format; formats beyond what a file may have are as good as none.</param>
    public void Add(int column, HeldValue value, bool formula, int style)
    {
        patterns.Add((ushort)column, (ushort)Math.Clamp(style, 0, ushort.MaxValue));
        HasFormulas |= formula;
        kinds.Add((byte)((byte)value.Kind | (formula ? FormulaFlag : 0) | (value.IsLong ? LongFlag : 0)));
        values.Add(value.Value);
    }

    /// <summary>A text of the sheet's own.</summary>
    /// <param name="kind">What kind of value it is.</param>
    /// <param name="text">The text.</param>
    public HeldValue Hold(CellKind kind, string text)
    {
        ownTexts.Add(text);
        return new HeldValue(kind, -ownTexts.Count, false);
    }

    /// <summary>A number that is not held packed.</summary>
    /// <param name="kind">What kind of value it is.</param>
    /// <param name="number">The number.</param>
    public HeldValue Hold(CellKind kind, double number)
    {
        longNumbers.Add(number);
        return new HeldValue(kind, longNumbers.Count - 1, true);
    }

    /// <summary>Which cells a row has, and where the first of them is kept.</summary>
    /// <param name="row">Row, from 1.</param>
    public (RowPattern Pattern, int Start) Row(int row) => At(row) is >= 0 and var at ? (patterns[patternOf[at]], starts[at]) : (RowPattern.Empty, 0);

    /// <summary>A cell; empty where there is none.</summary>
    /// <param name="row">Row, from 1.</param>
    /// <param name="column">Column, from 1.</param>
    /// <param name="pattern">Which cells the row has.</param>
    /// <param name="start">Where the first of them is kept.</param>
    /// <param name="strings">The book's shared texts.</param>
    public GridCell Cell(int row, int column, RowPattern pattern, int start, SharedStrings strings)
    {
        var place = pattern.PlaceOf(column);
        if (place < 0)
        {
            return default;
        }

        var style = pattern.Styles[place];
        if (keeping is { } kept)
        {
            place = kept.PlaceOf(row, column, pattern.Columns);
            if (place < 0)
            {
                return new GridCell(CellKind.Empty, 0, null, style, false);
            }
        }

        var at = start + place;
        var (flags, value) = (kinds[at], values[at]);
        var (kind, formula) = ((CellKind)(flags & KindMask), (flags & FormulaFlag) != 0);
        return kind switch
        {
            CellKind.Text or CellKind.Error => new GridCell(kind, 0, value < 0 ? ownTexts[-value - 1] : strings[value], style, formula),
            CellKind.Empty => new GridCell(kind, 0, null, style, formula),
            _ => new GridCell(kind, (flags & LongFlag) != 0 ? longNumbers[value] : PackedNumber.Unpack(value), null, style, formula),
        };
    }

    /// <summary>Forgets the values of all cells but some; formats stay.</summary>
    /// <param name="wholeTo">The last row that is kept whole.</param>
    /// <param name="columns">The columns that are kept in the other rows.</param>
    public void KeepOnly(int wholeTo, IReadOnlySet<int> columns)
    {
        var keep = new Keeping(wholeTo, columns);
        var (keptStarts, keptKinds, keptValues) = (new Pages<int>(), new Pages<byte>(), new Pages<int>());
        for (var row = 0; row < Rows.Count; row++)
        {
            keptStarts.Add(keptValues.Count);
            var its = patterns[patternOf[row]].Columns;
            for (var place = 0; place < its.Length; place++)
            {
                if (keep.Holds(Rows[row], its[place]))
                {
                    keptKinds.Add(kinds[starts[row] + place]);
                    keptValues.Add(values[starts[row] + place]);
                }
            }
        }

        (starts, kinds, values, keeping) = (keptStarts, keptKinds, keptValues, keep);
    }

    public int LastColumnOf(int row) => At(row) is >= 0 and var at && patterns[patternOf[at]].Columns is [.., var last] ? last : 0;

    // Cells are asked for row by row, so the row asked for last mostly answers, or the one after it.
    // One number, so that readers cannot disturb each other.
    private int At(int row)
    {
        var guess = lastAt;
        if (guess < Rows.Count && Rows[guess] == row)
        {
            return guess;
        }

        var at = guess + 1 < Rows.Count && Rows[guess + 1] == row ? guess + 1 : Rows.BinarySearch(row);
        if (at >= 0)
        {
            lastAt = at;
        }

        return at;
    }
}

/// <summary>Which cells still have their values.</summary>
/// <param name="wholeTo">The last row that is kept whole.</param>
/// <param name="columns">The columns that are kept in the other rows.</param>
internal sealed class Keeping(int wholeTo, IReadOnlySet<int> columns)
{
    /// <summary>Whether a cell is kept.</summary>
    /// <param name="row">Its row.</param>
    /// <param name="column">Its column.</param>
    public bool Holds(int row, int column) => row <= wholeTo || columns.Contains(column);

    /// <summary>Where a cell stands among those kept of its row; below zero where it is not kept.</summary>
    /// <param name="row">Its row.</param>
    /// <param name="column">Its column.</param>
    /// <param name="ofRow">The columns of the row's cells.</param>
    public int PlaceOf(int row, int column, ushort[] ofRow)
    {
        if (!Holds(row, column))
        {
            return -1;
        }

        var place = 0;
        for (var i = 0; ofRow[i] < column; i++)
        {
            place += Holds(row, ofRow[i]) ? 1 : 0;
        }

        return place;
    }
}

/// <summary>A value as <see cref="SheetCells"/> holds it.</summary>
/// <param name="Kind">What kind of value.</param>
/// <param name="Value">A packed number, or where the number or text is kept.</param>
/// <param name="IsLong">Whether it is where a number is kept.</param>
internal readonly record struct HeldValue(CellKind Kind, int Value, bool IsLong)
{
    /// <summary>True or false.</summary>
    public static HeldValue Of(bool value) => PackedNumber.TryPack(value ? "1"u8 : "0"u8, out var packed) ? new HeldValue(CellKind.Boolean, packed, false) : default;
}
