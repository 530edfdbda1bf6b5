using System.Runtime.InteropServices;

namespace CastBook.Workbooks.Reading.Grid;

/// <summary>The columns and formats of rows, each pattern of them held once: most rows of a list are formatted alike.</summary>
internal sealed class RowPatterns
{
    private readonly List<RowPattern> patterns = [RowPattern.Empty];
    private readonly Dictionary<int, List<int>> byHash = [];
    private readonly List<ushort> columns = [];
    private readonly List<ushort> styles = [];
    private int last;
    private int asLast;

    /// <summary>A pattern.</summary>
    /// <param name="index">Its number.</param>
    public RowPattern this[int index] => patterns[index];

    /// <summary>Adds a cell to the row that is being read.</summary>
    /// <param name="column">Column, from 1.</param>
    /// <param name="style">Its cell format.</param>
    public void Add(ushort column, ushort style)
    {
        var above = patterns[last];
        if (columns.Count == 0 && asLast < above.Columns.Length && above.Columns[asLast] == column && above.Styles[asLast] == style)
        {
            asLast++;
            return;
        }

        TakeFromAbove();
        columns.Add(column);
        styles.Add(style);
    }

    /// <summary>Ends the row.</summary>
    /// <returns>The number of its pattern.</returns>
    public int Close()
    {
        // Mostly as the row above.
        if (columns.Count > 0 || asLast != patterns[last].Columns.Length)
        {
            TakeFromAbove();
            last = columns.Count == 0 ? 0 : Find() ?? Keep();
            columns.Clear();
            styles.Clear();
        }

        asLast = 0;
        return last;
    }

    // The row is as the one above no longer: what was as there is written out.
    private void TakeFromAbove()
    {
        columns.AddRange(patterns[last].Columns.AsSpan(0, asLast));
        styles.AddRange(patterns[last].Styles.AsSpan(0, asLast));
        asLast = 0;
    }

    private bool Is(int index) =>
        CollectionsMarshal.AsSpan(columns).SequenceEqual(patterns[index].Columns) && CollectionsMarshal.AsSpan(styles).SequenceEqual(patterns[index].Styles);

    private int? Find()
    {
        if (byHash.TryGetValue(Hash(), out var same))
        {
            foreach (var index in same)
            {
                if (Is(index))
                {
                    return index;
                }
            }
        }

        return null;
    }

    private int Keep()
    {
        patterns.Add(new RowPattern([.. columns], [.. styles]));
        if (!byHash.TryGetValue(Hash(), out var same))
        {
            byHash[Hash()] = same = [];
        }

        same.Add(patterns.Count - 1);
        return patterns.Count - 1;
    }

    private int Hash()
    {
        var hash = new HashCode();
        hash.AddBytes(MemoryMarshal.AsBytes(CollectionsMarshal.AsSpan(columns)));
        hash.AddBytes(MemoryMarshal.AsBytes(CollectionsMarshal.AsSpan(styles)));
        return hash.ToHashCode();
    }
}

/// <summary>The columns and formats of a row's cells, in order.</summary>
/// <param name="Columns">Columns, ascending, from 1.</param>
/// <param name="Styles">Cell formats.</param>
internal sealed record RowPattern(ushort[] Columns, ushort[] Styles)
{
    /// <summary>A row without cells.</summary>
    public static RowPattern Empty { get; } = new([], []);

    /// <summary>Where a column stands; below zero where the row has no such cell.</summary>
    /// <param name="column">Column, from 1.</param>
    public int PlaceOf(int column)
    {
        // Most rows have no gaps, so that the place follows from the column.
        var guess = column - 1;
        return (uint)guess < (uint)Columns.Length && Columns[guess] == column ? guess : Columns.AsSpan().BinarySearch((ushort)column);
    }
}
