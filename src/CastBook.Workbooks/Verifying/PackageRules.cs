namespace CastBook.Workbooks.Verifying;

/// <summary>All the rules, run on every book CastBook writes.</summary>
internal static class PackageRules
{
    /// <summary>The rules.</summary>
    public static IReadOnlyList<PackageRule> All { get; } =
    [
        new ContentTypesRule(),
        new RelationshipsRule(),
        new SheetsRule(),
        new DefinedNamesRule(),
        new CellOrderRule(),
        new ElementOrderRule(),
        new IndexRule(),
        new TableRule(),
        new MergeRule(),
        new NotesRule(),
        new NoteShapesRule(),
        new TablesTogetherRule(),
        new TableFormatsRule(),
        new StylesRule(),
        new SectionsRule(),
        new SheetRelationsRule(),
        new SheetFilterRule(),
        new ColumnsRule(),
        new SheetListsRule(),
        new CellContentsRule(),
    ];

    /// <summary>Everything that breaks a rule.</summary>
    /// <param name="book">The book.</param>
    public static IReadOnlyList<string> Faults(BookFacts book) => [.. All.SelectMany(r => r.Faults(book))];
}
