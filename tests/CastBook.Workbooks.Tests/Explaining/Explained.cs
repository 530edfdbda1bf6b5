using CastBook.Workbooks.Explaining;
using CastBook.Workbooks.Settings;

namespace CastBook.Workbooks.Tests.Explaining;

/// <summary>A book with the explanations of its cells.</summary>
internal sealed class Explained
{
    private Explained(BookExplanation book) => Book = book;

    public BookExplanation Book { get; }

    public static Explained From(byte[] book, BookSettings? settings = null)
    {
        using var copy = new MemoryStream();
        return new Explained(BookFiller.Explain(new MemoryStream(book), copy, "night.xlsx", settings ?? BookSettings.None));
    }

    public static Explained From(MemoryStream book, BookSettings? settings = null) => From(book.ToArray(), settings);

    public CellExplanation this[string name]
    {
        get
        {
            var (cell, mistake) = Book.Find(name);
            mistake.ShouldBeNull();
            return Book.Of(cell);
        }
    }

    public IReadOnlyList<string> Lines(string name) => ExplanationText.Lines(this[name]);

    /// <summary>Where an input of a cell comes from.</summary>
    public string From(string name, string input) => this[name].Inputs.Single(i => i.Name == input).From;
}
