using CastBook.Workbooks.Reading.Package;

namespace CastBook.Workbooks.Reading.Grid;

/// <summary>The book's shared strings, as plain text.</summary>
public sealed class SharedStrings
{
    private readonly List<string> texts;
    private readonly HashSet<string> struck;

    private SharedStrings(List<string> texts, HashSet<string> struck) => (this.texts, this.struck) = (texts, struck);

    /// <summary>No strings: a book without the part.</summary>
    public static SharedStrings None { get; } = new([], []);

    /// <summary>How many there are.</summary>
    public int Count => texts.Count;

    /// <summary>A string; null where the book has none of this index.</summary>
    /// <param name="index">Index, from 0.</param>
    public string? this[int index] => index >= 0 && index < texts.Count ? texts[index] : null;

    /// <summary>Those of which every run is struck out, as the objects they are: another cell may say the same and stand.</summary>
    internal IReadOnlySet<string> Struck => struck;

    /// <summary>Reads the strings of a book.</summary>
    /// <param name="package">The book.</param>
    /// <exception cref="Files.BookRefusedException">The part cannot be read.</exception>
    public static SharedStrings Read(BookPackage package)
    {
        ArgumentNullException.ThrowIfNull(package);
        if (package.SharedStringsPart is not { } name)
        {
            return None;
        }

        using var part = package.OpenPart(name);
        var struck = new HashSet<string>(ReferenceEqualityComparer.Instance);
        return new SharedStrings(StringItems.ReadAll(part, name, struck), struck);
    }
}
