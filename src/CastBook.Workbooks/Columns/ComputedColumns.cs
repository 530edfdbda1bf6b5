namespace CastBook.Workbooks.Columns;

/// <summary>The columns CastBook fills, in the order in which new ones are set beside the list.</summary>
internal static class ComputedColumns
{
    /// <summary>All of them; Checks is last.</summary>
    public static IReadOnlyList<ComputedColumn> All { get; } =
    [
        new MetalEachColumn(),
        new MetalColumn(),
        new FlaskColumn(),
        new MixColumn(),
        new BurnoutColumn(),
        new ChecksColumn(),
    ];
}
