using CastBook.Templates.Words;

namespace CastBook.Templates.Starters;

/// <summary>The first sheet of a new book: a title and ten lines.</summary>
internal static class HowTo
{
    /// <summary>The lines.</summary>
    /// <param name="kind">What the book is for.</param>
    /// <param name="withExamples">Whether example rows stand in it.</param>
    public static IReadOnlyList<string> Of(StarterKind kind, bool withExamples)
    {
        var lines = kind switch
        {
            StarterKind.Night => HowToWords.Night,
            StarterKind.List => HowToWords.List,
            StarterKind.Shop => HowToWords.Shop,
            _ => HowToWords.Results,
        };
        return [.. lines.Select(line => line.Length > 0 ? line : withExamples ? HowToWords.WithExamples : HowToWords.WithoutExamples)];
    }
}
