using System.Text;
using System.Text.Json;
using System.Xml.Linq;

namespace CastBook.Cli.Tests.Distribution;

/// <summary>The packages inside the built program, and the file that names them with their licences.</summary>
internal static class ThirdPartyNotices
{
    // Of two licences on offer, the one taken.
    private static readonly Dictionary<string, string> Taken = new() { ["MS-PL OR Apache-2.0"] = "Apache-2.0" };

    /// <summary>Where the file stands.</summary>
    public static string Path { get; } = System.IO.Path.Combine(ReadmeTests.Repository, "src", "CastBook.Cli", "THIRD-PARTY-NOTICES.txt");

    /// <summary>Name and version of each package whose files are inside the program.</summary>
    public static IReadOnlyList<(string Name, string Version)> Shipped()
    {
        using var json = JsonDocument.Parse(File.ReadAllText(System.IO.Path.Combine(AppContext.BaseDirectory, "castbook.deps.json")));
        var libraries = json.RootElement.GetProperty("libraries");
        return
        [
            .. json.RootElement.GetProperty("targets").EnumerateObject().First().Value.EnumerateObject()
                .Where(l => libraries.GetProperty(l.Name).GetProperty("type").GetString() == "package")
                .Where(l => l.Value.TryGetProperty("runtime", out _) || l.Value.TryGetProperty("runtimeTargets", out _))
                .Select(l => (l.Name.Split('/')[0], l.Name.Split('/')[1])).OrderBy(l => l.Item1, StringComparer.OrdinalIgnoreCase),
        ];
    }

    /// <summary>The file as it should be.</summary>
    /// <param name="packages">The folder of packages.</param>
    public static string Make(string packages)
    {
        var text = new StringBuilder("Inside the program castbook are these libraries, each under the licence named. The texts of the licences stand below.\n");
        var licences = new SortedSet<string>(StringComparer.Ordinal);
        foreach (var (name, version) in Shipped())
        {
            var about = XDocument.Load(System.IO.Path.Combine(packages, name.ToLowerInvariant(), version, name.ToLowerInvariant() + ".nuspec"));
            string Of(string element) => about.Descendants().FirstOrDefault(e => e.Name.LocalName == element)?.Value.Trim() ?? "";
            var licence = Of("license");
            licences.Add(licence = Taken.GetValueOrDefault(licence, licence));
            var copyright = Of("copyright") is { Length: > 5 } said ? said : $"Copyright {Of("authors")}";
            text.Append(System.Globalization.CultureInfo.InvariantCulture, $"\n{name} {version}\n  {licence}\n  {copyright}\n  {Of("projectUrl")}\n");
        }

        text.Append("\nThe programs for one system hold the .NET runtime too; its licences lie beside them as dotnet-LICENSE.txt and dotnet-THIRD-PARTY-NOTICES.txt.\n");
        foreach (var licence in licences)
        {
            text.Append(System.Globalization.CultureInfo.InvariantCulture, $"\n{new string('-', 100)}\n{licence}\n\n");
            text.Append(File.ReadAllText(System.IO.Path.Combine(AppContext.BaseDirectory, "Licences", licence + ".txt")).ReplaceLineEndings("\n").TrimEnd()).Append('\n');
        }

        return text.ToString();
    }
}
