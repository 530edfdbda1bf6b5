using System.CommandLine;
using CastBook.Templates;
using CastBook.Workbooks.Settings;

namespace CastBook.Cli;

/// <summary><c>castbook new [KIND] [PATH]</c>: a workbook to start from.</summary>
internal static class NewCommand
{
    private const string Metric = "metric";
    private const string Us = "us";

    private static readonly Dictionary<string, (StarterKind Kind, string Path)> Kinds = new(StringComparer.OrdinalIgnoreCase)
    {
        ["night"] = (StarterKind.Night, "casting-night.xlsx"),
        ["list"] = (StarterKind.List, "pieces.xlsx"),
        ["shop"] = (StarterKind.Shop, "shop.xlsx"),
        ["results"] = (StarterKind.Results, "results.xlsx"),
    };

    /// <summary>The command.</summary>
    /// <param name="output">Where answers go.</param>
    /// <param name="errors">Where everything else goes.</param>
    public static Command Make(TextWriter output, TextWriter errors)
    {
        var kind = new Argument<string>("KIND")
        {
            Description = "night (pieces and all sheets of a shop), list (pieces only), shop (what many books share) or results (a log).",
            HelpName = "KIND",
            DefaultValueFactory = _ => "night",
        };
        kind.CompletionSources.Add([.. Kinds.Keys]);
        var path = new Argument<string?>("PATH") { Description = "The workbook to make; left out, one named for its kind.", Arity = ArgumentArity.ZeroOrOne };
        var units = new Option<string>("--units") { Description = "Units of the headings: metric or us.", HelpName = "UNITS", DefaultValueFactory = _ => Metric };
        units.AcceptOnlyFromAmong(Metric, Us);
        var empty = new Option<bool>("--empty") { Description = "Leave the example rows out." };
        var command = new Command("new", "Make a workbook to start from.\nNothing that exists is written over.\n\nExample: castbook new night harbour-night.xlsx") { kind, path, units, empty };
        command.SetAction(parsed => Run(
            parsed.GetValue(kind)!, parsed.GetValue(path), parsed.GetValue(units) == Us ? UnitHabit.Us : UnitHabit.Metric, !parsed.GetValue(empty), output, errors));
        return command;
    }

    private static int Run(string word, string? path, UnitHabit units, bool withExamples, TextWriter output, TextWriter errors)
    {
        // One word alone may be the book's name.
        if (path is null && !Kinds.ContainsKey(word) && IsBook(word))
        {
            (word, path) = ("night", word);
        }

        if (MistakeIn(word, path) is { } mistake)
        {
            errors.WriteLine($"castbook: {mistake}");
            return ExitCode.Usage;
        }

        var (kind, usual) = Kinds[word];
        var target = path ?? usual;
        try
        {
            using var made = new MemoryStream();
            StarterBooks.Write(made, kind, units, withExamples);
            WriteNew(target, made.ToArray());
            output.WriteLine($"{target}: made. Its first sheet says how to use it.");
            if (kind == StarterKind.Shop)
            {
                output.WriteLine(Name(target));
            }

            return ExitCode.Filled;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            errors.WriteLine(File.Exists(target)
                ? $"castbook: '{target}' exists and was left as it is. Name another file."
                : $"castbook: '{target}' could not be written: {e.Message}");
            return ExitCode.NotWritten;
        }
    }

    private static string? MistakeIn(string word, string? path) =>
        !Kinds.ContainsKey(word) ? $"'{word}' is no kind of book; the kinds are {string.Join(", ", Kinds.Keys)}."
        : path is not null && !IsBook(path) ? $"'{path}' must end in .xlsx."
        : null;

    private static bool IsBook(string path) => path.EndsWith(".xlsx", StringComparison.OrdinalIgnoreCase);

    /// <summary>Makes the books of the folder use a shop file, unless something is said there already.</summary>
    private static string Name(string shop)
    {
        var settings = Path.Combine(Path.GetDirectoryName(Path.GetFullPath(shop))!, SettingsFile.Name);
        if (File.Exists(settings))
        {
            return $"To have the books beside it use it, put \"shop\": \"{Path.GetFileName(shop)}\" into {SettingsFile.Name}.";
        }

        WriteNew(settings, SettingsFile.NamingShop(Path.GetFileName(shop)));
        return $"{SettingsFile.Name}: made. The books beside it use the shop file from now on.";
    }

    private static void WriteNew(string path, byte[] bytes)
    {
        using var file = new FileStream(path, FileMode.CreateNew, FileAccess.Write);
        file.Write(bytes);
    }
}
