namespace CastBook.Cli.Words;

/// <summary>What several commands say.</summary>
internal static class SharedWords
{
    public static string BookOnlyRead => "The workbook (.xlsx or .xlsm). It is only read.";

    public static string Night => "Plan this night, as with fill.";

    public static string NoBook(string path) => $"there is no file '{path}'. Type the workbook's path, in quotes if it has blanks.";

    public static string NoLog(string path) => $"there is no file '{path}'. Type the log's path, in quotes if it has blanks.";

    public static string NoFolder(string path) => $"there is no folder '{path}'. Type the folder's path, in quotes if it has blanks.";

    public static string NoFolderFor(string path, string option) => $"there is no folder for '{path}'. Make the folder first, or type another path after {option}.";
}
