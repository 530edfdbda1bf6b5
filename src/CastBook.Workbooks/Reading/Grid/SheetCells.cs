namespace CastBook.Workbooks.Reading.Grid;

/// <summary>The cells of a sheet while they are read and after: parallel lists, a run of them for each row.</summary>
/// <remarks>
/// A cell takes 9 bytes, so a book of 100,000 × 20 cells stays under 20 MB. Texts are held as numbers: an index of the
/// shared strings, or below zero one of the sheet's own texts. Numbers are packed (<see cref="PackedNumber"/>) where they are short.
/// </remarks>
internal sealed class SheetCells
{
    private const byte FormulaFlag = 0x80;
    private const byte LongFlag = 0x40;
    private const byte KindMask = 0x0F;

    private readonly Pages<int> starts = new();
    private readonly Pages<ushort> columns = new();
    private readonly Pages<byte> kinds = new();
    private readonly Pages<int> values = new();
    private readonly Pages<ushort> styles = new();
    private readonly List<double> longNumbers = [];
    private readonly List<string> ownTexts = [];
    private int lastAt;

    public List<int> Rows { get; } = [];

    public HashSet<int> HiddenRows { get; } = [];

    /// <summary>Whether a formula stands behind any cell.</summary>
    public bool HasFormulas { get; private set; }

    /// <summary>Begins a row; rows come in ascending order.</summary>
    public void BeginRow(int row)
    {
        Rows.Add(row);
        starts.Add(columns.Count);
    }

    /// <summary>Adds a cell to the row begun last; columns come in ascending order.</summary>
    /// <param name="column">Column, from 1.</param>
    /// <param name="value">What it holds.</param>
    /// <param name="formula">Whether a formula stands behind it.</param>
    /// <param name="style">Its cell format; formats beyond what a file may have are as good as none.</param>
    public void Add(int column, HeldValue value, bool formula, int style)
    {
        columns.Add((ushort)column);
        HasFormulas |= formula;
        kinds.Add((byte)((byte)value.Kind | (formula ? FormulaFlag : 0) | (value.IsLong ? LongFlag : 0)));
        values.Add(value.Value);
        styles.Add((ushort)Math.Clamp(style, 0, ushort.MaxValue));
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

    /// <summary>A cell; empty where there is none.</summary>
    public GridCell Cell(int row, int column, SharedStrings strings)
    {
        var at = Find(row, column);
        if (at < 0)
        {
            return default;
        }

        var (flags, value, style) = (kinds[at], values[at], styles[at]);
        var (kind, formula) = ((CellKind)(flags & KindMask), (flags & FormulaFlag) != 0);
        return kind switch
        {
            CellKind.Text or CellKind.Error => new GridCell(kind, 0, value < 0 ? ownTexts[-value - 1] : strings[value], style, formula),
            CellKind.Empty => new GridCell(kind, 0, null, style, formula),
            _ => new GridCell(kind, (flags & LongFlag) != 0 ? longNumbers[value] : PackedNumber.Unpack(value), null, style, formula),
        };
    }

    public int LastColumnOf(int row)
    {
        var at = At(row);
        if (at < 0)
        {
            return 0;
        }

        var (first, end) = Run(at);
        return first == end ? 0 : columns[end - 1];
    }

    private int Find(int row, int column)
    {
        var at = At(row);
        if (at < 0)
        {
            return -1;
        }

        // Most rows have no gaps, so that the place follows from the column.
        var (first, end) = Run(at);
        var guess = first + column - 1;
        if (guess < end && columns[guess] == column)
        {
            return guess;
        }

        while (first < end)
        {
            var middle = (first + end) / 2;
            var there = columns[middle];
            if (there == column)
            {
                return middle;
            }

            (first, end) = there < column ? (middle + 1, end) : (first, middle);
        }

        return -1;
    }

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

    private (int First, int End) Run(int at) => (starts[at], at + 1 < starts.Count ? starts[at + 1] : columns.Count);
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
