using CastBook.Planning.Findings;

namespace CastBook.Workbooks.Files;

/// <summary>The file cannot be read as a workbook. Nothing was written; the finding says why, in words for its owner.</summary>
/// <remarks>Thrown by <see cref="BookGate"/>, the package and the reader; the program ends with the code for "could not be read".</remarks>
#pragma warning disable CA1032 // Implement standard exception constructors: a refusal without its finding says nothing.
public sealed class BookRefusedException : Exception
#pragma warning restore CA1032
{
    /// <summary>A refusal.</summary>
    /// <param name="finding">Why, and what to do.</param>
    /// <param name="inner">What was thrown underneath, where something was.</param>
    public BookRefusedException(Finding finding, Exception? inner = null)
        : base(Sentence(finding), inner) => Finding = finding;

    /// <summary>Why, and what to do.</summary>
    public Finding Finding { get; }

    internal static BookRefusedException For(FindingKind kind, params string[] values) =>
        new(kind.At(Subject.Book, values));

    internal static BookRefusedException Damaged(string what, Exception? inner = null) =>
        new(Catalogue.BookDamaged.At(Subject.Book, what), inner);

    private static string Sentence(Finding finding)
    {
        ArgumentNullException.ThrowIfNull(finding);
        return string.Join(' ', new[] { finding.Seen, finding.Why, finding.Remedy }.Where(t => t.Length > 0));
    }
}
