using System.CommandLine;
using CastBook.Cli.Words;
using CastBook.Templates;
using CastBook.Workbooks.Settings;

namespace CastBook.Cli;

/// <summary><c>castbook new [KIND] [PATH]</c>: a workbook to start from.</summary>
internal static class NewCommand
{
    private const string Metric = "metric";
    private const string Us = "us";
    private const string Extension = ".xlsx";

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
            Description = NewWords.Kind,
            HelpName = "KIND",
            DefaultValueFactory = _ => "night",
        };
        kind.CompletionSources.Add([.. Kinds.Keys]);
        var path = new Argument<string?>("PATH") { Description = NewWords.Book, Arity = ArgumentArity.ZeroOrOne };
        var units = new Option<string>("--units") { Description = NewWords.Units, HelpName = "UNITS", DefaultValueFactory = _ => Metric };
        units.AcceptOnlyFromAmong(Metric, Us);
        var empty = new Option<bool>("--empty") { Description = NewWords.Empty };
        var command = new Command("new", NewWords.Command) { kind, path, units, empty };
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
            errors.WriteLine(ProgramWords.Complaint(mistake));
            return ExitCode.Usage;
        }

        var (kind, usual) = Kinds[word];
        var target = path ?? usual;
        try
        {
            using var made = new MemoryStream();
            StarterBooks.Write(made, kind, units, withExamples);
            WriteNew(target, made.ToArray());
            output.WriteLine(NewWords.Made(target));
            if (kind == StarterKind.Shop)
            {
                output.WriteLine(Name(target));
            }

            return ExitCode.Filled;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            errors.WriteLine(ProgramWords.Complaint(File.Exists(target) ? NewWords.Exists(target) : NewWords.NotWritten(target, e.Message)));
            return ExitCode.NotWritten;
        }
    }

    private static string? MistakeIn(string word, string? path) =>
        !Kinds.ContainsKey(word) ? NewWords.NoKind(word, Kinds.Keys)
        : path is not null && !IsBook(path) ? NewWords.MustEndIn(path, Extension)
        : null;

    private static bool IsBook(string path) => path.EndsWith(Extension, StringComparison.OrdinalIgnoreCase);

    /// <summary>Makes the books of the folder use a shop file, unless something is said there already.</summary>
    private static string Name(string shop)
    {
        var settings = Path.Combine(Path.GetDirectoryName(Path.GetFullPath(shop))!, SettingsFile.Name);
        if (File.Exists(settings))
        {
            return NewWords.PutIntoSettings(Path.GetFileName(shop), SettingsFile.Name);
        }

        WriteNew(settings, SettingsFile.NamingShop(Path.GetFileName(shop)));
        return NewWords.SettingsMade(SettingsFile.Name);
    }

    private static void WriteNew(string path, byte[] bytes)
    {
        using var file = new FileStream(path, FileMode.CreateNew, FileAccess.Write);
        file.Write(bytes);
    }
}
