using System.CommandLine;
using System.CommandLine.Parsing;

namespace CastBook.Cli;

/// <summary>Says what is wrong with a command line, in words that tell what to type.</summary>
internal static class CommandMistakes
{
    /// <summary>The sentences, without the program's name.</summary>
    /// <param name="parsed">A command line that did not parse.</param>
    /// <param name="words">Its words.</param>
    public static IReadOnlyList<string> Of(ParseResult parsed, string[] words)
    {
        // A misspelt option is taken as the book, and then the book as a word too many: the first cause is the only one worth a line.
        if (Array.Find(words, w => w.StartsWith("--", StringComparison.Ordinal) && w.Length > 2 && !IsOption(w, parsed.CommandResult)) is { } option)
        {
            return [$"there is no option '{option}' here."];
        }

        return parsed.UnmatchedTokens is [var extra, ..] ? [TooMany(extra, words)] : [.. parsed.Errors.Select(Say)];
    }

    private static bool IsOption(string word, CommandResult command)
    {
        var name = word.Split('=', ':')[0];
        for (SymbolResult? result = command; result is not null; result = result.Parent)
        {
            if (result is CommandResult { Command: var known } && known.Options.Any(o => o.Name == name || o.Aliases.Contains(name)))
            {
                return true;
            }
        }

        return false;
    }

    private static string TooMany(string extra, string[] words)
    {
        var at = Array.IndexOf(words, extra);
        return at > 0 && !words[at - 1].StartsWith('-') && Path.HasExtension(extra) && !Path.HasExtension(words[at - 1])
            ? $"'{extra}' is a word too many. A path with blanks stands in quotes: \"{words[at - 1]} {extra}\"."
            : $"'{extra}' is a word too many.";
    }

    private static string Say(ParseError error) => error.SymbolResult switch
    {
        ArgumentResult { Tokens: [], Argument: { Description: { } what } argument } => $"{argument.Name} is missing. {what}",
        ArgumentResult { Tokens: [var token, ..], Argument.ValueType: var type } when (Nullable.GetUnderlyingType(type) ?? type) == typeof(int) => $"'{token.Value}' is no whole number.",
        _ => error.Message,
    };
}
