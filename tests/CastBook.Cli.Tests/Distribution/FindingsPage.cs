using System.Text;
using System.Text.RegularExpressions;
using CastBook.Planning.Findings;

namespace CastBook.Cli.Tests.Distribution;

/// <summary>The page that tells of every finding what to do, made of the catalogue.</summary>
internal static partial class FindingsPage
{
    private static readonly (Severity Severity, string Heading, string Text)[] Parts =
    [
        (Severity.Stop, "Stop", "Something cannot be worked out or would go wrong. What it concerns is not planned, or nothing was written."),
        (Severity.Check, "Check", "It was worked out, and may be wrong: look before you cast."),
        (Severity.Note, "Note", "Good to know; nothing need be done."),
    ];

    /// <summary>Where the page stands.</summary>
    public static string Path { get; } = System.IO.Path.Combine(ReadmeTests.Repository, "templates", "findings.md");

    /// <summary>The page as it should be.</summary>
    public static string Make()
    {
        var page = new StringBuilder(
            """
            # Everything CastBook may say, and what to do

            Each line of the sheet Checks, and each mark in your list, is one of these. In `--json` it bears its id. "…" stands for a name, a
            number or a cell of your book. This page is made from the program's own catalogue.

            """.ReplaceLineEndings("\n"));
        foreach (var (severity, heading, text) in Parts)
        {
            page.Append(System.Globalization.CultureInfo.InvariantCulture, $"\n## {heading}\n\n{text}\n\n| id | what was seen, and why it matters | what to do |\n| --- | --- | --- |\n");
            foreach (var kind in Catalogue.All.Where(k => k.Severity == severity))
            {
                page.Append(System.Globalization.CultureInfo.InvariantCulture, $"| `{kind.Id}` | {Plain($"{kind.Seen} {kind.Why}".Trim())} | {Plain(kind.Remedy)} |\n");
            }
        }

        return page.ToString();
    }

    // What a value is put in is shown as dots.
    private static string Plain(string text) => Place().Replace(text, "…").Replace("{{", "{", StringComparison.Ordinal).Replace("}}", "}", StringComparison.Ordinal)
        .Replace("|", "\\|", StringComparison.Ordinal).Replace('\n', ' ');

    [GeneratedRegex("\\{[0-9][^}]*\\}")]
    private static partial Regex Place();
}
