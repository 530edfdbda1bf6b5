namespace CastBook.Workbooks.Reading.Grid;

/// <summary>What kind of value a cell holds.</summary>
public enum CellKind
{
    /// <summary>Nothing, or only a format.</summary>
    Empty,

    /// <summary>A number.</summary>
    Number,

    /// <summary>Text.</summary>
    Text,

    /// <summary>True or false, as 1 or 0 in <see cref="GridCell.Number"/>.</summary>
    Boolean,

    /// <summary>An error such as <c>#N/A</c>, its code in <see cref="GridCell.Text"/>.</summary>
    Error,

    /// <summary>A date as ISO text (Strict books), turned into a serial number of the book's date system.</summary>
    Date,
}

/// <summary>A cell as the file has it: value, style and whether a formula stands behind it.</summary>
/// <param name="Kind">What kind of value.</param>
/// <param name="Number">The number, where it is one.</param>
/// <param name="Text">The text or error code, where it is one.</param>
/// <param name="Style">Index of its cell format.</param>
/// <param name="HasFormula">Whether a formula stands behind it; the value is then the cached one, empty if there is none.</param>
public readonly record struct GridCell(CellKind Kind, double Number, string? Text, int Style, bool HasFormula)
{
    /// <summary>Whether there is neither value nor formula.</summary>
    public bool IsEmpty => Kind == CellKind.Empty && !HasFormula;
}
