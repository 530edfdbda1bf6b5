namespace CastBook.Workbooks.Settings;

/// <summary>What a setting says and who said it.</summary>
/// <param name="Value">The value as it was typed.</param>
/// <param name="From">Where: a cell such as <c>Shop!B9</c>, <c>castbook.json beside the book</c>, a variable, the shop file.</param>
/// <param name="OfShopFile">Whether the shop file says it.</param>
public sealed record SettingOrigin(string Value, string From, bool OfShopFile = false);
