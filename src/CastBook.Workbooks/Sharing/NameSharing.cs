using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Words;

namespace CastBook.Workbooks.Sharing;

/// <summary>The defined names that are shared: seen ones that speak of shared cells, and what the pages of shared sheets repeat and print.</summary>
internal static class NameSharing
{
    private static readonly HashSet<string> OfPages = new(StringComparer.Ordinal) { "_xlnm.Print_Titles", "_xlnm.Print_Area" };

    /// <summary>The names, local ones with the new number of their sheet.</summary>
    /// <param name="package">The book.</param>
    /// <param name="sheets">The sheets that are shared.</param>
    /// <param name="removed">The texts that go.</param>
    /// <param name="tally">Counts what goes.</param>
    public static IReadOnlyList<DefinedName> Of(BookPackage package, IReadOnlyList<SharedSheet> sheets, RemovedTexts removed, ShareTally tally)
    {
        var judge = new FormulaJudge(
            sheets.Select(s => s.Part.Name).ToHashSet(StringComparer.OrdinalIgnoreCase), new HashSet<string>(), new Dictionary<string, IReadOnlySet<string>>());
        var shared = new List<DefinedName>();
        foreach (var name in package.DefinedNames)
        {
            var local = name.LocalSheet is { } index ? sheets.ToList().FindIndex(s => s.Part.Index == index) : -1;
            var isShared = !name.Hidden && (name.LocalSheet is null || local >= 0) && judge.IsFree(name.Text)
                && (OfPages.Contains(name.Name) ? local >= 0 : IsPlainName(name.Name) && !removed.IsInName(name.Name));
            if (isShared)
            {
                shared.Add(name with { LocalSheet = local >= 0 ? local : null });
            }
            else if (!name.Name.StartsWith(OwnName.Prefix, StringComparison.Ordinal))
            {
                tally.Add(name.Hidden ? LeftBehindWords.HiddenNames : LeftBehindWords.NamesOfCells);
            }
        }

        return shared;
    }

    // Other names with a prefix belong to programs.
    private static bool IsPlainName(string name) => !name.StartsWith("_xl", StringComparison.OrdinalIgnoreCase) && name.All(c => char.IsLetterOrDigit(c) || c is '_' or '.');
}
