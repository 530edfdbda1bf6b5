using System.Text;
using System.Text.RegularExpressions;

namespace CastBook.Cli.Tests.Words;

/// <summary>Finds the string literals of a C# source; comments are none, and the code in the holes of a text is looked through too.</summary>
internal sealed partial class SourceLiterals
{
    private readonly string source;
    private readonly List<(int Line, string Text, int Begins, int Ends)> found = [];
    private int at;

    private SourceLiterals(string source) => this.source = source;

    /// <summary>The texts as they stand in the source, holes left out, and the lines they begin in.</summary>
    public static IReadOnlyList<(int Line, string Text)> Of(string source) => Read(source).ConvertAll(l => (l.Line, l.Text));

    /// <summary>The texts without their escapes; literals that a plus joins are one text, and those in holes are left out.</summary>
    public static IReadOnlyList<string> WholeTexts(string source)
    {
        var texts = new List<string>();
        var end = 0;
        foreach (var (_, text, begins, ends) in Read(source).OrderBy(l => l.Begins))
        {
            if (begins < end)
            {
                continue;
            }

            var plain = text.Replace("\"\"", "\"", StringComparison.Ordinal).Replace("\\\"", "\"", StringComparison.Ordinal);
            if (texts.Count > 0 && Plus().IsMatch(source.AsSpan(end, begins - end)))
            {
                texts[^1] += plain;
            }
            else
            {
                texts.Add(plain);
            }

            end = ends;
        }

        return texts;
    }

    private static List<(int Line, string Text, int Begins, int Ends)> Read(string source)
    {
        var reader = new SourceLiterals(source);
        while (reader.at < source.Length)
        {
            reader.Code();
        }

        return reader.found;
    }

    // A plus between two literals, the end of a line and a comment with it or not.
    [GeneratedRegex(@"^\s*(//[^\n]*\n\s*)?\+\s*$")]
    private static partial Regex Plus();

    // Reads on to the end, or over the brace that ends a hole.
    private void Code()
    {
        for (var depth = 0; at < source.Length;)
        {
            if (Sees("//"))
            {
                SkipTo("\n");
            }
            else if (Sees("/*"))
            {
                SkipTo("*/");
            }
            else if (source[at] == '\'')
            {
                at++;
                at += source[at] == '\\' ? 2 : 1;
                SkipTo("'");
            }
            else if (LiteralBegins() is { } signs)
            {
                Literal(signs);
            }
            else if (source[at++] is '{' or '}' && (depth += source[at - 1] == '{' ? 1 : -1) < 0)
            {
                return;
            }
        }
    }

    private string? LiteralBegins()
    {
        var quote = at;
        while (quote < source.Length && source[quote] is '$' or '@')
        {
            quote++;
        }

        return quote < source.Length && source[quote] == '"' ? source[at..quote] : null;
    }

    private void Literal(string signs)
    {
        var line = source.AsSpan(0, at).Count('\n') + 1;
        var first = at;
        at += signs.Length;
        var quotes = 0;
        while (at + quotes < source.Length && source[at + quotes] == '"')
        {
            quotes++;
        }

        var text = new StringBuilder();
        if (quotes >= 3)
        {
            var begins = at += quotes;
            SkipTo(new string('"', quotes));
            text.Append(source, begins, at - quotes - begins);
        }
        else
        {
            at++;
            Line(text, signs.Contains('$', StringComparison.Ordinal), signs.Contains('@', StringComparison.Ordinal));
        }

        found.Add((line, text.ToString(), first, at));
    }

    private void Line(StringBuilder text, bool hasHoles, bool isVerbatim)
    {
        while (at < source.Length)
        {
            if (source[at] == '"' && !(isVerbatim && Sees("\"\"")))
            {
                at++;
                return;
            }

            if (hasHoles && source[at] == '{' && !Sees("{{"))
            {
                at++;
                Code();
                continue;
            }

            var length = (!isVerbatim && source[at] == '\\') || (isVerbatim && Sees("\"\"")) || (hasHoles && (Sees("{{") || Sees("}}"))) ? 2 : 1;
            text.Append(source, at, length);
            at += length;
        }
    }

    private bool Sees(string sign) => string.CompareOrdinal(source, at, sign, 0, sign.Length) == 0;

    private void SkipTo(string end)
    {
        var found = source.IndexOf(end, at, StringComparison.Ordinal);
        at = found < 0 ? source.Length : found + end.Length;
    }
}
