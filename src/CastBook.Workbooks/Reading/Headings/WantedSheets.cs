using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Settings;
using CastBook.Workbooks.Words;

namespace CastBook.Workbooks.Reading.Headings;

/// <summary>The sheets of pieces that the shop wants filled.</summary>
/// <param name="Names">What it says: names, several in one text too, or <c>all</c>.</param>
/// <param name="SaidIn">Where it says so.</param>
/// <param name="Subject">The same as a subject.</param>
internal sealed record WantedSheets(IReadOnlyList<string> Names, string SaidIn, Subject Subject)
{
    private const string Every = "all";

    /// <summary>What the Shop sheet says, else <c>castbook.json</c>; null where neither says anything.</summary>
    /// <param name="shop">The shop's settings.</param>
    /// <param name="settings">What <c>castbook.json</c> says.</param>
    /// <param name="cells">Where the settings of the Shop sheet stand.</param>
    public static WantedSheets? Of(Planning.Shops.Settings shop, BookSettings settings, CellMap cells)
    {
        var subject = Subject.Setting(SettingName.SheetsToFill);
        IReadOnlyList<string> names = shop.SheetsToFill is { } text ? [text] : settings.Sheets;
        return names.Count == 0 ? null
            : shop.SheetsToFill is not null && cells.Find(subject) is not null ? new WantedSheets(names, OriginWords.ShopSheet, subject)
            : new WantedSheets(names, "castbook.json", Subject.Book);
    }

    /// <summary>The sheets that are meant, null for all, and the names that no sheet has.</summary>
    /// <param name="sheets">The sheets there are.</param>
    public (IReadOnlyList<SheetPart>? Sheets, IReadOnlyList<string> Missing) Among(IReadOnlyList<SheetPart> sheets)
    {
        SheetPart? Named(string name) => sheets.FirstOrDefault(s => string.Equals(s.Name.Trim(), name.Trim(), StringComparison.OrdinalIgnoreCase));
        var (meant, missing) = (new List<SheetPart>(), new List<string>());
        // A sheet's own name may have commas in it, so the whole text comes first.
        foreach (var name in Names.SelectMany(n => Named(n) is not null ? [n] : Parts(n)))
        {
            if (Named(name) is { } sheet)
            {
                meant.Add(sheet);
            }
            else if (name.Equals(Every, StringComparison.OrdinalIgnoreCase))
            {
                return (null, []);
            }
            else
            {
                missing.Add(name);
            }
        }

        return ([.. meant.Distinct()], missing);
    }

    private static string[] Parts(string text) =>
        text.Split(text.Contains(';', StringComparison.Ordinal) ? ';' : ',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
}
