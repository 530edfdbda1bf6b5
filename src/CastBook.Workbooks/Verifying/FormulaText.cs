namespace CastBook.Workbooks.Verifying;

/// <summary>Looks at a formula as text: what is opened is closed.</summary>
internal static class FormulaText
{
    private const int Longest = 8192;

    /// <summary>Whether a formula's quotes, brackets and parentheses close, and it is neither empty nor too long.</summary>
    /// <param name="text">The formula without its equals sign, entities resolved.</param>
    public static bool IsWhole(ReadOnlySpan<char> text)
    {
        if (text.IsWhiteSpace() || text.Length > Longest)
        {
            return false;
        }

        var (parentheses, braces, at) = (0, 0, 0);
        while (at < text.Length)
        {
            switch (text[at])
            {
                case '"' or '\'':
                    at = AfterQuotes(text, at);
                    break;
                case '[':
                    at = AfterBrackets(text, at);
                    break;
                case '(' or ')':
                    parentheses += text[at++] == '(' ? 1 : -1;
                    break;
                case '{' or '}':
                    braces += text[at++] == '{' ? 1 : -1;
                    break;
                default:
                    at++;
                    break;
            }

            if (at < 0 || parentheses < 0 || braces < 0)
            {
                return false;
            }
        }

        return parentheses == 0 && braces == 0;
    }

    // A doubled quote closes and opens again, which comes to the same.
    private static int AfterQuotes(ReadOnlySpan<char> text, int at)
    {
        var length = text[(at + 1)..].IndexOf(text[at]);
        return length < 0 ? -1 : at + length + 2;
    }

    // Inside the brackets of a table an apostrophe says that the next character stands for itself.
    private static int AfterBrackets(ReadOnlySpan<char> text, int at)
    {
        for (var depth = 0; at < text.Length; at++)
        {
            depth += text[at] switch { '[' => 1, ']' => -1, _ => 0 };
            at += text[at] == '\'' ? 1 : 0;
            if (depth == 0)
            {
                return at + 1;
            }
        }

        return -1;
    }
}
