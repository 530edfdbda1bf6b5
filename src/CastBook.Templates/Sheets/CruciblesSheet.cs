namespace CastBook.Templates.Sheets;

/// <summary>The crucibles that the shop owns.</summary>
internal static class CruciblesSheet
{
    public const string Name = "Crucibles";

    public static SheetSpec Spec { get; } = new(Name, "The crucibles you own.",
    [
        new("Crucible", 22, CellKind.Words, "The name you know it by.") { Needed = true },
        new("Holds (ml)", 11, CellKind.Number, "Volume to the brim, measured with water. Or give the maker's rating.") { Format = Formats.Tenths, Needed = true },
        new("Rated (g)", 11, CellKind.Number, "The maker's rating, where the volume is unknown.") { Format = Formats.Whole },
        new("Rated for", 18, CellKind.Words, "The metal that the rating means. A rating of 1 kg usually means gold.") { Choices = Choices.From(AlloysSheet.Name) },
        new("Alloys", 30, CellKind.Words, "The alloys it may hold, separated by semicolons. Empty: any."),
        new("Made of", 14, CellKind.Words, "Silica, ceramic, graphite: platinum and palladium are never melted in graphite.") { Choices = Choices.Of("graphite", "clay-graphite", "silica", "ceramic") },
        new("Owned", 9, CellKind.Number, "How many you have. Empty: one.") { Format = Formats.Whole },
    ]);
}
