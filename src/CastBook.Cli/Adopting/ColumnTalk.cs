using CastBook.Workbooks.Adopting;
using CastBook.Workbooks.Reports;

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
        output.WriteLine($"{book}: the list is on sheet {look.Sheet}, its headings in row {look.HeadingRow}");
        var longest = Math.Min(30, look.Columns.Max(c => c.Heading.Length));
        foreach (var column in look.Columns)
        {
            var meaning = column.Field is { } field ? PieceWords.Of(field)
                : column.Nearest is { } near ? $"not known; is it {PieceWords.Of(near)}?"
                : "not known: left alone";
            output.WriteLine($"  {column.Letter,-2}  {column.Heading.ReplaceLineEndings(" ").PadRight(longest)}  {meaning}");
        }

        if (look.Missing.Count > 0)
        {
            output.WriteLine($"no column for: {string.Join(", ", look.Missing.Select(PieceWords.Of))}");
        }
    }

    /// <summary>Asks which columns are meant; gives their headings by field.</summary>
    /// <param name="prompt">Where it is asked.</param>
    /// <param name="look">What was seen.</param>
    public static Dictionary<string, string> Ask(Prompt prompt, BookLook look)
    {
        var named = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var field in look.Missing.Concat(look.Columns.Select(c => c.Nearest).OfType<string>()).Distinct())
        {
            var near = look.Columns.FirstOrDefault(c => c.Nearest == field);
            var hint = near is null ? "" : $"; {near.Letter} comes near";
            while (prompt.Words($"Which column holds {PieceWords.Of(field)}? Its letter{hint}") is { } letter)
            {
                if (look.Columns.FirstOrDefault(c => c.Letter.Equals(letter, StringComparison.OrdinalIgnoreCase) && c.Field is null) is { } column)
                {
                    named[field] = column.Heading;
                    break;
                }

                prompt.Say($"  Type one of {string.Join(", ", look.Columns.Where(c => c.Field is null).Select(c => c.Letter))}. Enter alone leaves it open.");
            }
        }

        return named;
    }
}
