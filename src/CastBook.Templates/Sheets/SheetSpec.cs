namespace CastBook.Templates.Sheets;

/// <summary>A sheet that the shop fills in.</summary>
/// <param name="Name">The sheet's name.</param>
/// <param name="Purpose">What it is for, in one sentence.</param>
/// <param name="Columns">Its columns, in order.</param>
internal sealed record SheetSpec(string Name, string Purpose, IReadOnlyList<ShopColumn> Columns)
{
    /// <summary>Whether it grows night by night: a table with filter buttons, prepared for many lines.</summary>
    public bool IsList { get; init; }
}
