using CastBook.Planning.Shops;

namespace CastBook.Workbooks.Reading.Headings;

/// <summary>Words by which a heading is known.</summary>
/// <param name="Text">The words, without unit.</param>
internal sealed record HeadingWord(string Text)
{
    /// <summary>How sure they are, the surest first; 0 leaves it to their place among the field's words.</summary>
    public int Rank { get; init; }

    /// <summary>Whether they mean the field only with a unit: <c>Wax (g)</c> is a weight, <c>Wax</c> alone is not.</summary>
    public bool NeedsUnit { get; init; }

    /// <summary>Whether they speak of a height, which a piece may have in more than one direction.</summary>
    public bool IsHeight { get; init; }

    /// <summary>Whether they head a column that says how far a row is, in any words.</summary>
    public bool IsStatus { get; init; }

    /// <summary>Whether they ask what is cast, so that a name beside them is a person's.</summary>
    public bool IsWhat { get; init; }

    /// <summary>Whether they name a person where another column says what is cast.</summary>
    public bool IsPerson { get; init; }

    /// <summary>Whether a weight under this heading is that of the piece with its gates on.</summary>
    public bool WithGates { get; init; }

    /// <summary>What a weight under this heading is the weight of.</summary>
    public WeightMeaning Meaning { get; init; }

    /// <summary>The pattern material the words tell of.</summary>
    public string? Material { get; init; }

    /// <summary>Their language, where they are among the words that come with the program.</summary>
    public string? Language { get; init; }

    public static implicit operator HeadingWord(string text) => new(text);

    public static HeadingWord FromString(string text) => new(text);
}

/// <summary>A field of a list and the words of its heading, the most telling first.</summary>
/// <param name="Field">The field.</param>
/// <param name="Dimension">What it measures; a heading with a unit of anything else is not its heading.</param>
/// <param name="Words">The words, most telling first.</param>
internal sealed record FieldHeadings(string Field, Dimension Dimension, params IReadOnlyList<HeadingWord> Words);
