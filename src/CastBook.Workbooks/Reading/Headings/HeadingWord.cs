using CastBook.Planning.Shops;

namespace CastBook.Workbooks.Reading.Headings;

/// <summary>Words by which a heading is known.</summary>
/// <param name="Text">The words, without unit.</param>
/// <param name="NeedsUnit">Whether they mean the field only with a unit: <c>Wax (g)</c> is a weight, <c>Wax</c> alone is not.</param>
/// <param name="Meaning">What a weight under this heading is the weight of.</param>
/// <param name="Material">The pattern material the words tell of.</param>
internal sealed record HeadingWord(string Text, bool NeedsUnit = false, WeightMeaning Meaning = WeightMeaning.Unknown, string? Material = null)
{
    public static implicit operator HeadingWord(string text) => new(text);

    public static HeadingWord Of(string text) => new(text);
}

/// <summary>A field of a list and the words of its heading, the most telling first.</summary>
/// <param name="Field">The field.</param>
/// <param name="Dimension">What it measures; a heading with a unit of anything else is not its heading.</param>
/// <param name="Words">The words, most telling first.</param>
internal sealed record FieldWords(string Field, Dimension Dimension, params IReadOnlyList<HeadingWord> Words);
