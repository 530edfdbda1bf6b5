using CastBook.Templates.Words;

namespace CastBook.Templates.Sheets;

/// <summary>The list of pieces of a book that has no other sheet.</summary>
internal static class ShortPiecesSheet
{
    private static readonly string[] Kept =
    [
        "Piece", "Qty", "Pattern weight (g)", "Pattern volume (ml)", "Material", "Alloy", "Shape", "Length (mm)", "Width (mm)",
        "Thickness (mm)", "Due", "Leave out",
    ];

    public static SheetSpec Spec { get; } = PiecesSheet.Spec with
    {
        Columns = [.. PiecesSheet.Spec.Columns.Where(c => Kept.Contains(c.Heading, StringComparer.Ordinal)).Select(WithoutSheets), Remarks],
    };

    private static ShopColumn Remarks => new("Remarks", 30, ColumnKind.Words, ShortPiecesWords.Remarks) { Wraps = true };

    // There is no sheet to choose from.
    private static ShopColumn WithoutSheets(ShopColumn column) => column.Heading switch
    {
        "Material" => column with { Meaning = ShortPiecesWords.Material, Choices = null },
        "Alloy" => column with { Meaning = ShortPiecesWords.Alloy, Choices = null },
        _ => column,
    };
}
