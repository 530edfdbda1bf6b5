using System.Globalization;

namespace CastBook.Planning.Findings;

/// <summary>One kind of finding: its stable word id, its weight and its wording.</summary>
/// <remarks>Texts are composite format strings; the values are given, already written for a reader, to <see cref="At(Subject, string[])"/>.</remarks>
/// <param name="Id">Stable words, such as <c>pattern-density-missing</c>; never reused.</param>
/// <param name="Severity">How much it weighs.</param>
/// <param name="Seen">What was seen, one sentence.</param>
/// <param name="Why">Why it matters, one sentence; may be empty.</param>
/// <param name="Remedy">What to do or type, one sentence; may be empty.</param>
public sealed record FindingKind(string Id, Severity Severity, string Seen, string Why, string Remedy)
{
    /// <summary>A finding of this kind about one thing.</summary>
    /// <param name="subject">What it is about.</param>
    /// <param name="values">The values for the texts' placeholders, in order.</param>
    public Finding At(Subject subject, params string[] values) => At([subject], values);

    /// <summary>A finding of this kind about several things at once.</summary>
    /// <param name="subjects">What it is about, at least one; the first is where the link leads.</param>
    /// <param name="values">The values for the texts' placeholders, in order.</param>
    public Finding At(IReadOnlyList<Subject> subjects, params string[] values)
    {
        ArgumentNullException.ThrowIfNull(values);
        return new(this, subjects, Fill(Seen, values), Fill(Why, values), Fill(Remedy, values));
    }

    private static string Fill(string text, string[] values) =>
        values.Length == 0 ? text : string.Format(CultureInfo.InvariantCulture, text, values);
}

/// <summary>Something to stop for, to check or to note, about one or several things.</summary>
/// <param name="Kind">Which kind.</param>
/// <param name="Subjects">What it is about; the first is where the link leads.</param>
/// <param name="Seen">What was seen.</param>
/// <param name="Why">Why it matters.</param>
/// <param name="Remedy">What to do or type.</param>
public sealed record Finding(FindingKind Kind, IReadOnlyList<Subject> Subjects, string Seen, string Why, string Remedy)
{
    /// <summary>The kind's word id.</summary>
    public string Id => Kind.Id;

    /// <summary>The kind's weight.</summary>
    public Severity Severity => Kind.Severity;
}
