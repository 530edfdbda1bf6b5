namespace CastBook.Cli.Words;

/// <summary>What the program says of itself and of command lines that it does not understand.</summary>
internal static class ProgramWords
{
    // The help of the program; the texts of a command stand in the class of its name.
    public static string Program => "CastBook fills a casting shop's workbook: metal, flasks, powder and water,\nburnout, and what to check.";

    public static string Example => "Example: castbook fill harbour-night.xlsx";

    public static string HelpOfCommands => "Each command has a page of its own, such as castbook fill --help.";

    // Lines that say that something went wrong bear the program's name.
    public static string Complaint(string words) => $"castbook: {words}";

    public static string Bug(string what) => $"Bug in CastBook, please report it: {what}";

    // What was typed.
    public static string NoCommand(string typed, IEnumerable<string> commands) => $"there is no command '{typed}', and no file of that name. The commands are {string.Join(", ", commands)}.";

    public static string NoOption(string typed) => $"there is no option '{typed}' here.";

    public static string TooMany(string typed) => $"'{typed}' is a word too many.";

    public static string TooManyWithoutQuotes(string typed, string path) => $"'{typed}' is a word too many. A path with blanks stands in quotes: \"{path}\".";

    public static string Missing(string name, string description) => $"{name} is missing. {description}";

    public static string NothingAfter(string option, string description) => $"nothing stands after {option}. {description}";

    public static string GivenTwice(string option) => $"{option} stands there more than once; give it once.";

    public static string NoWholeNumber(string typed) => $"'{typed}' is no whole number.";

    public static string NoneOf(string typed, IEnumerable<string> words) => $"'{typed}' is none of the words that may stand there; type one of {string.Join(", ", words)}.";

    public static string SeeHelp(string command) => $"see castbook {command} --help";

    // castbook completion, castbook make-templates: for whoever works at a shell.
    public static string Completion => "Print a script by which a shell completes words at Tab.\n\nExample: castbook completion bash >> ~/.bashrc";

    public static string CompletionShell => "bash, zsh, fish or pwsh.";

    public static string Templates => "Write the templates anew.";

    public static string TemplatesFolder => "The folder templates.";

    public static string TemplatesWritten(string folder) => $"templates written to {folder}";
}
