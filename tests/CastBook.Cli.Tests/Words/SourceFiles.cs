namespace CastBook.Cli.Tests.Words;

/// <summary>The C# sources of a project, those under Words left out.</summary>
internal static class SourceFiles
{
    /// <summary>All of them, by their paths inside the project, with slashes.</summary>
    /// <param name="project">The project.</param>
    public static IReadOnlyDictionary<string, string> Of(string project)
    {
        var root = Path.Combine(ReadmeTests.Repository, "src", project);
        return Directory.EnumerateFiles(root, "*.cs", SearchOption.AllDirectories)
            .Select(f => Path.GetRelativePath(root, f).Replace(Path.DirectorySeparatorChar, '/'))
            .Where(f => f.Split('/')[0] is not ("bin" or "obj" or "Words"))
            .ToDictionary(f => f, f => File.ReadAllText(Path.Combine(root, f)), StringComparer.Ordinal);
    }

    /// <summary>The sources of all tests.</summary>
    public static IEnumerable<string> OfTests()
    {
        var root = Path.Combine(ReadmeTests.Repository, "tests");
        return Directory.EnumerateFiles(root, "*.cs", SearchOption.AllDirectories)
            .Where(f => !Path.GetRelativePath(root, f).Split(Path.DirectorySeparatorChar).Any(folder => folder is "bin" or "obj"))
            .Select(File.ReadAllText);
    }

    /// <summary>The folder of a source inside its project; empty for those that lie beside the project.</summary>
    /// <param name="path">Its path inside the project.</param>
    public static string FolderOf(string path) => path.Contains('/', StringComparison.Ordinal) ? path[..path.LastIndexOf('/')] : "";
}
