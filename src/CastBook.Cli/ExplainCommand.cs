using System.CommandLine;
using CastBook.Workbooks.Explaining;
using CastBook.Workbooks.Files;

namespace CastBook.Cli;

/// <summary><c>castbook explain BOOK CELL</c>: how a number came to be.</summary>
internal static class ExplainCommand
{
    private const string NotFilled = "The book is not filled like this: it was changed since, or never filled. These are the numbers that filling it now gives.";

    private const string Nothing = "No number is worked out in this book as it stands. Fill it: its sheet Checks then asks for what is missing.";

    /// <summary>The command.</summary>
    /// <param name="output">Where answers go.</param>
    /// <param name="errors">Where everything else goes.</param>
    /// <param name="clock">The clock.</param>
    public static Command Make(TextWriter output, TextWriter errors, TimeProvider clock)
    {
        var book = new Argument<string>("BOOK") { Description = "The workbook (.xlsx or .xlsm). It is only read." };
        var cell = new Argument<string?>("CELL") { Description = "One cell; left out, every number is told in a line. Without a sheet it is a cell of the list.", Arity = ArgumentArity.ZeroOrOne };
        var night = new Option<string?>("--night") { Description = "Plan this night, as with fill.", HelpName = "NIGHT" };
        var start = new Option<string?>("--start") { Description = "Give every step its hour from this one, as with fill.", HelpName = "HOUR" };
        var pourAt = new Option<string?>("--pour-at") { Description = "Count every step back from this hour, as with fill.", HelpName = "HOUR" };
        var json = new Option<bool>("--json") { Description = "Print the explanation as JSON." };
        var command = new Command(
            "explain",
            "Tell how a number came to be.\nIts formula, what it was worked out from, and where each of that comes from.\n\nExample: castbook explain harbour-night.xlsx \"Night plan!E5\"")
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
            errors.WriteLine($"castbook: {mistake}");
            return ExitCode.Usage;
        }

        return FillCommand.Guarded(errors, () =>
        {
            var settings = SettingsAround.Of(request.Book, clock) with
            {
                Night = string.IsNullOrWhiteSpace(request.Night) ? null : request.Night,
                Clock = ClockOption.Read(request.Start, request.PourAt, clock.LocalTimeZone),
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
                errors.WriteLine($"castbook: {wrong}");
                return ExitCode.Usage;
            }

            Tell(request, explained, [explained.Of(cell)], output);
            return ExitCode.Filled;
        });
    }

    private static string? MistakeIn(Request request) =>
        !File.Exists(request.Book) ? $"there is no file '{request.Book}'. Type the workbook's path, in quotes if it has blanks."
        : TextFile.Is(request.Book) ? $"'{request.Book}' is a list as text and has no cells. Fill it, then ask about {Path.GetFileName(TextFile.BookBeside(request.Book))}."
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
            output.WriteLine(Nothing);
            return;
        }

        foreach (var line in request.Cell is null ? cells.Select(ExplanationText.Line) : ExplanationText.Lines(cells[0]))
        {
            output.WriteLine(line);
        }

        if (!explained.IsFilled && cells.Any(c => c.Account is not null))
        {
            output.WriteLine(NotFilled);
        }
    }

    private sealed record Request(string Book, string? Cell, string? Night, string? Start, string? PourAt, bool Json);
}
