using CastBook.Planning;
using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Headings;

namespace CastBook.Workbooks.Settings;

/// <summary>The shop as its sheets and settings say.</summary>
/// <param name="Shop">What it owns and has decided.</param>
/// <param name="Trees">Trees in hand.</param>
/// <param name="Sheets">The sheets found, by their usual name.</param>
/// <param name="Origins">Who said which setting, by its name.</param>
/// <param name="Findings">What was found.</param>
internal sealed record ShopReading(
    Shop Shop, IReadOnlyList<TreeInHand> Trees, IReadOnlyDictionary<string, SheetPart> Sheets,
    IReadOnlyDictionary<string, SettingOrigin> Origins, IReadOnlyList<Finding> Findings)
{
    /// <summary>The columns of the shop's sheets, in the book and in the shop file.</summary>
    public required IReadOnlyList<FieldColumn> Columns { get; init; }
}
