using CastBook.Casting.Metals;
using CastBook.Planning.Rows;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Adopting;

namespace CastBook.Cli.Adopting;

/// <summary>Lines of a shop file for what the list names.</summary>
internal static class NamedLines
{
    /// <summary>Adds a line for each alloy and material that the list names and the shop has no line of.</summary>
    /// <param name="look">What is known.</param>
    /// <param name="answers">Takes the lines.</param>
    public static void Add(BookLook look, ShopAnswers answers)
    {
        var told = answers.Lines.Where(l => l.Sheet == "Materials").Select(l => l.Values.Values.First()).OfType<string>().ToHashSet(StringComparer.OrdinalIgnoreCase);
        var known = look.Shop?.Alloys.Select(a => AlloyWords.Key(a.Alloy.Name)) ?? [];
        foreach (var alloy in look.Alloys.Select(a => MeantBy(a, look, answers)).DistinctBy(AlloyWords.Key).ExceptBy(known, AlloyWords.Key))
        {
            answers.Add("Alloys", new Dictionary<string, object> { ["Alloy"] = alloy });
        }

        foreach (var material in look.Materials.Where(m => !told.Contains(m) && !NamesInUse.IsTakenAs(m, told)))
        {
            answers.Add("Materials", new Dictionary<string, object> { ["Material"] = material });
        }
    }

    // Names of one alloy must share its line: two lines of it would be melted apart.
    private static string MeantBy(string alloy, BookLook look, ShopAnswers answers) =>
        answers.Settings.GetValueOrDefault(SettingName.AlloyMeaning(alloy)) as string ?? look.Said.GetValueOrDefault(SettingName.AlloyMeaning(alloy))?.Value ?? alloy;
}
