using System.CommandLine;
using System.CommandLine.Completions;
using System.CommandLine.Parsing;
using CastBook.Cli.Words;

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
            return [ProgramWords.NoOption(option)];
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
            ? ProgramWords.TooManyWithoutQuotes(extra, $"{words[at - 1]} {extra}")
            : ProgramWords.TooMany(extra);
    }

    private static string Say(ParseError error) => error.SymbolResult switch
    {
        ArgumentResult { Tokens: [], Argument: { Description: { } what } argument } => ProgramWords.Missing(argument.Name, what),
        ArgumentResult { Tokens: [var token, ..], Argument: var argument } => SayOf(token.Value, argument.ValueType, argument.GetCompletions(CompletionContext.Empty)) ?? error.Message,
        OptionResult { Implicit: true, Option: { Description: { } what } option } => ProgramWords.Missing(option.Name, what),
        OptionResult { Tokens: [], Option: { Description: { } what } option } => ProgramWords.NothingAfter(option.Name, what),
        OptionResult { IdentifierTokenCount: > 1, Option: var option } => ProgramWords.GivenTwice(option.Name),
        OptionResult { Tokens: [var token, ..], Option: var option } => SayOf(token.Value, option.ValueType, option.GetCompletions(CompletionContext.Empty)) ?? error.Message,
        _ => error.Message,
    };

    private static string? SayOf(string typed, Type type, IEnumerable<CompletionItem> choices) =>
        (Nullable.GetUnderlyingType(type) ?? type) == typeof(int) ? ProgramWords.NoWholeNumber(typed)
        : choices.Select(c => c.Label).ToList() is { Count: > 0 } words ? ProgramWords.NoneOf(typed, words)
        : null;
}
