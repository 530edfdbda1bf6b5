using System.CommandLine;
using CastBook.Cli.Words;
using CastBook.Workbooks.Explaining;
using CastBook.Workbooks.Files;

namespace CastBook.Cli;

/// <summary><c>castbook explain BOOK CELL</c>: how a number came to be.</summary>
internal static class ExplainCommand
{
    /// <summary>The command.</summary>
    /// <param name="output">Where answers go.</param>
    /// <param name="errors">Where everything else goes.</param>
    /// <param name="clock">The clock.</param>
    public static Command Make(TextWriter output, TextWriter errors, TimeProvider clock)
    {
        var book = new Argument<string>("BOOK") { Description = SharedWords.BookOnlyRead };
        var cell = new Argument<string?>("CELL") { Description = ExplainWords.Cell, Arity = ArgumentArity.ZeroOrOne };
        var night = new Option<string?>("--night") { Description = SharedWords.Night, HelpName = "NIGHT" };
        var start = new Option<string?>("--start") { Description = ExplainWords.Start, HelpName = "HOUR" };
        var pourAt = new Option<string?>("--pour-at") { Description = ExplainWords.PourAt, HelpName = "HOUR" };
        var json = new Option<bool>("--json") { Description = ExplainWords.Json };
        var command = new Command(
            "explain",
            ExplainWords.Command)
        {
            book, cell, night, start, pourAt, json,
        };
        command.SetAction(parsed => Run(
            new Request(parsed.GetValue(book)!, parsed.GetValue(cell), parsed.GetValue(night), parsed.GetValue(start), parsed.GetValue(pourAt), parsed.GetValue(json)), output, errors, clock));
        return command;
    }

    private static int Run(Request request, TextWriter output, TextWriter errors, TimeProvider clock)
    {
        if ((MistakeIn(request) ?? ClockOption.Mistake(request.Start, request.PourAt, clock.LocalTimeZone)) is { } mistake)
        {
            errors.WriteLine(ProgramWords.Complaint(mistake));
            return ExitCode.Usage;
        }

        return Guarded.Run(errors, () =>
        {
            var settings = SettingsAround.Of(request.Book, clock) with
            {
                Night = string.IsNullOrWhiteSpace(request.Night) ? null : request.Night,
                Clock = ClockOption.Read(request.Start, request.PourAt, clock.LocalTimeZone),
                Hour = ClockOption.Either(request.Start, request.PourAt),
            };
            var explained = BookFile.Explain(request.Book, settings);
            if (request.Cell is not { } name)
            {
                Tell(request, explained, [.. explained.All()], output);
                return ExitCode.Filled;
            }

            var (cell, wrong) = explained.Find(name);
            if (wrong is not null)
            {
                errors.WriteLine(ProgramWords.Complaint(wrong));
                return ExitCode.Usage;
            }

            Tell(request, explained, [explained.Of(cell)], output);
            return ExitCode.Filled;
        });
    }

    private static string? MistakeIn(Request request) =>
        !File.Exists(request.Book) ? SharedWords.NoBook(request.Book)
        : TextFile.Is(request.Book) ? ExplainWords.IsText(request.Book, Path.GetFileName(TextFile.BookBeside(request.Book)))
        : null;

    private static void Tell(Request request, BookExplanation explained, IReadOnlyList<CellExplanation> cells, TextWriter output)
    {
        if (request.Json)
        {
            output.WriteLine(ExplainAnswerJson.Write(explained.IsFilled, cells));
            return;
        }

        if (cells.Count == 0)
        {
            output.WriteLine(ExplainWords.NoNumbers);
            return;
        }

        foreach (var line in request.Cell is null ? cells.Select(ExplanationText.Line) : ExplanationText.Lines(cells[0]))
        {
            output.WriteLine(line);
        }

        if (!explained.IsFilled && cells.Any(c => c.Account is not null))
        {
            output.WriteLine(ExplainWords.NotFilled);
        }
    }

    private sealed record Request(string Book, string? Cell, string? Night, string? Start, string? PourAt, bool Json);
}
