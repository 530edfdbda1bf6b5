namespace CastBook.Templates.Tests;

/// <summary>Finds the folders of the source tree that the tests run from.</summary>
internal static class RepositoryFolder
{
    private static readonly string Root = Find();

    public static string Templates => Path.Combine(Root, "templates");

    public static string Source => Path.Combine(Root, "src", "CastBook.Templates");

    private static string Find()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "CastBook.sln")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new DirectoryNotFoundException("The tests must run inside the source tree.");
    }
}
