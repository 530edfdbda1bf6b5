namespace CastBook.Templates.Sheets;

/// <summary>Every sheet that a shop fills in, in the order they stand in a book.</summary>
internal static class ShopSheets
{
    /// <summary>The list of pieces first, then what the shop owns and has decided.</summary>
    public static IReadOnlyList<SheetSpec> All { get; } =
    [
        PiecesSheet.Spec, FlasksSheet.Spec, CruciblesSheet.Spec, KilnsSheet.Spec, AlloysSheet.Spec,
        MaterialsSheet.Spec, InvestmentsSheet.Spec, SchedulesSheet.Spec, SettingsSheet.Spec,
    ];
}
