namespace CastBook.Templates.Sheets;

/// <summary>What a column holds, which decides its alignment and what it accepts without a question.</summary>
internal enum ColumnKind
{
    /// <summary>Words, kept exactly as typed: job numbers such as 1-2 must not become dates.</summary>
    Words,

    /// <summary>A number of zero or more.</summary>
    Number,

    /// <summary>A day.</summary>
    Day,

    /// <summary>Words or a number, such as <c>12</c> or <c>75 × 100: 12</c>.</summary>
    Either,
}

/// <summary>A column of a sheet that the shop fills in.</summary>
/// <param name="Heading">The heading, unit included.</param>
/// <param name="Width">Width in characters.</param>
/// <param name="Kind">What it holds.</param>
/// <param name="Meaning">What to type, in at most 255 characters: the input message and the line in the README.</param>
internal sealed record ShopColumn(string Heading, double Width, ColumnKind Kind, string Meaning)
{
    /// <summary>Number format; empty means as typed.</summary>
    public string Format { get; init; } = "";

    /// <summary>The drop-down list, where the column has one.</summary>
    public Choices? Choices { get; init; }

    /// <summary>Whether long words go on in the line below.</summary>
    public bool Wraps { get; init; }

    /// <summary>Whether a line says nothing without it.</summary>
    public bool Needed { get; init; }
}
