using CastBook.Cli.Words;
using CastBook.Planning.Findings;
using CastBook.Workbooks.Adopting;
using CastBook.Workbooks.Words;

namespace CastBook.Cli.Adopting;

/// <summary>Says which columns were recognised, and asks for those that a list needs and for headings that are nearly known.</summary>
internal static class ColumnTalk
{
    /// <summary>Tells what was seen.</summary>
    /// <param name="book">The book's name.</param>
    /// <param name="look">What was seen.</param>
    /// <param name="output">Where to.</param>
    public static void Tell(string book, BookLook look, TextWriter output)
    {
        output.WriteLine(AdoptWords.List(book, look.Sheet, look.HeadingRow));
        var longest = Math.Min(30, look.Columns.Max(c => c.Heading.Length));
        foreach (var column in look.Columns)
        {
            var meaning = column.Field is { } field ? field == PieceField.Sizes ? AdoptWords.Sizes : FieldWords.Of(field)
                : column.Nearest is { } near ? AdoptWords.NearlyKnown(FieldWords.Of(near))
                : AdoptWords.NotKnown;
            output.WriteLine($"  {column.Letter,-2}  {column.Heading.ReplaceLineEndings(" ").PadRight(longest)}  {meaning}");
        }

        foreach (var doubt in look.OfColumns)
        {
            output.WriteLine(AdoptWords.OfColumn(doubt.Seen, doubt.Remedy));
        }

        if (look.OtherLists is { } others)
        {
            output.WriteLine(AdoptWords.OtherLists(others.Seen, others.Remedy));
        }

        if (look.Missing.Count > 0)
        {
            output.WriteLine(AdoptWords.NoColumn(look.Missing.Select(FieldWords.Of)));
        }
    }

    /// <summary>Asks which columns are meant; gives their headings by field.</summary>
    /// <param name="prompt">Where it is asked.</param>
    /// <param name="look">What was seen.</param>
    /// <param name="told">The headings that were told before, by field; they are offered again.</param>
    public static Dictionary<string, NamedHeading> Ask(Prompt prompt, BookLook look, IReadOnlyDictionary<string, IReadOnlyList<string>> told)
    {
        var named = new Dictionary<string, NamedHeading>(StringComparer.Ordinal);
        var known = look.Columns.Where(c => c.Field is { } field && told.TryGetValue(field, out var words) && words.Contains(c.Heading)).ToDictionary(c => c.Field!);
        foreach (var field in known.Keys.Concat(look.Missing).Concat(look.Columns.Select(c => c.Nearest).OfType<string>()).Distinct())
        {
            var (near, was) = (look.Columns.FirstOrDefault(c => c.Nearest == field), known.GetValueOrDefault(field));
            var question = near is null ? QuestionWords.WhichColumn(FieldWords.Of(field)) : QuestionWords.WhichColumn(FieldWords.Of(field), near.Letter);
            while (prompt.Words(question, was?.Letter) is { } letter)
            {
                var free = look.Columns.Where(c => c.Field is null || c == was).ToList();
                if (free.Find(c => c.Letter.Equals(letter, StringComparison.OrdinalIgnoreCase)) is { } column)
                {
                    if (column != was)
                    {
                        named[field] = new NamedHeading(column.Heading, was?.Heading);
                    }

                    break;
                }

                prompt.Say(QuestionWords.TypeLetter(free.Select(c => c.Letter), was is null));
            }
        }

        return named;
    }

    /// <summary>The headings of a list with those that were told just now.</summary>
    /// <param name="told">The headings told, by field.</param>
    /// <param name="before">What was told before, by field.</param>
    public static IReadOnlyDictionary<string, IReadOnlyList<string>> With(
        IReadOnlyDictionary<string, NamedHeading> told, IReadOnlyDictionary<string, IReadOnlyList<string>> before)
    {
        var columns = new Dictionary<string, IReadOnlyList<string>>(before, StringComparer.OrdinalIgnoreCase);
        foreach (var (field, named) in told)
        {
            columns[field] = [named.Heading, .. columns.GetValueOrDefault(field, []).Where(h => h != named.Was)];
        }

        return columns;
    }
}

/// <summary>A heading that was told.</summary>
/// <param name="Heading">The heading.</param>
/// <param name="Was">The heading told before, whose place it takes; missing for none.</param>
internal sealed record NamedHeading(string Heading, string? Was);
