namespace CastBook.Planning;

/// <summary>What a remark speaks of that the list has columns for.</summary>
[Flags]
public enum RemarkTopics
{
    /// <summary>Nothing of the kind.</summary>
    None = 0,

    /// <summary>A resin or a print.</summary>
    Resin = 1,

    /// <summary>Wax.</summary>
    Wax = 2,

    /// <summary>Stones.</summary>
    Stones = 4,

    /// <summary>That the row is done.</summary>
    Done = 8,

    /// <summary>That the row is to wait.</summary>
    Hold = 16,
}

/// <summary>A remark in a row. It is not read; it is only held against what was read.</summary>
/// <param name="Column">The heading of its column.</param>
/// <param name="Text">The remark as written.</param>
/// <param name="Topics">What it speaks of.</param>
/// <param name="Pieces">How many pieces it speaks of; 0 where it speaks of no number.</param>
public sealed record PieceRemark(string Column, string Text, RemarkTopics Topics, int Pieces);
