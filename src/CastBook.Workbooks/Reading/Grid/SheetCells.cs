using System.Runtime.InteropServices;

namespace CastBook.Workbooks.Reading.Grid;

/// <summary>The cells of a sheet while they are read and after: parallel lists, a run of them for each row.</summary>
/// <remarks>
/// A cell takes about 17 bytes: a book of 10,000 × 20 cells stays under 4 MB.
/// Texts are held as numbers: an index of the shared strings, or below zero one of the sheet's own texts.
/// </remarks>
internal sealed class SheetCells
{
    private readonly List<int> starts = [];
    private readonly List<ushort> columns = [];
    private readonly List<string> ownTexts = [];
    private int lastAt;

    public List<int> Rows { get; } = [];

    public List<byte> Kinds { get; } = [];

    public List<double> Values { get; } = [];

    public List<int> Styles { get; } = [];

    public HashSet<int> HiddenRows { get; } = [];

    /// <summary>Begins a row; rows come in ascending order.</summary>
    public void BeginRow(int row)
    {
        Rows.Add(row);
        starts.Add(columns.Count);
    }

    /// <summary>Adds a cell to the row begun last; columns come in ascending order.</summary>
    public void Add(int column, CellKind kind, bool formula, double value, int style)
    {
        columns.Add((ushort)column);
        Kinds.Add(SheetGrid.Pack(kind, formula));
        Values.Add(value);
        Styles.Add(style);
    }

    /// <summary>Keeps a text of the sheet's own; returns the number that stands for it.</summary>
    public int Keep(string text)
    {
        ownTexts.Add(text);
        return -ownTexts.Count;
    }

    public string? TextOf(int index, SharedStrings strings) => index < 0 ? ownTexts[-index - 1] : strings[index];

    /// <summary>The position of a cell in the lists; below zero where there is none.</summary>
    public int Find(int row, int column)
    {
        var at = At(row);
        if (at < 0)
        {
            return -1;
        }

        var (first, end) = Run(at);
        var found = CollectionsMarshal.AsSpan(columns)[first..end].BinarySearch((ushort)column);
        return found < 0 ? -1 : first + found;
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

    // Cells are asked for row by row, so the row asked for last mostly answers. One number, so that readers cannot disturb each other.
    private int At(int row)
    {
        var guess = lastAt;
        if (guess < Rows.Count && Rows[guess] == row)
        {
            return guess;
        }

        var at = Rows.BinarySearch(row);
        if (at >= 0)
        {
            lastAt = at;
        }

        return at;
    }

    private (int First, int End) Run(int at) => (starts[at], at + 1 < starts.Count ? starts[at + 1] : columns.Count);
}
