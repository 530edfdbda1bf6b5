using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Words;

namespace CastBook.Workbooks.Sharing;

/// <summary>Which kind of thing a part is that is left behind.</summary>
internal static class PartKinds
{
    // The first that is found in the type of the content or in the part's name counts.
    private static readonly (string In, Func<int, string> Kind)[] Kinds =
    [
        ("threadedcomment", LeftBehindWords.ThreadedComments), ("/persons/", LeftBehindWords.ListsOfPeople), ("comments", LeftBehindWords.SheetsWithNotes),
        ("vmldrawing", LeftBehindWords.DrawingsWithNotes), ("core-properties", LeftBehindWords.DocumentProperties),
        ("extended-properties", LeftBehindWords.DocumentProperties), ("custom-properties", LeftBehindWords.DocumentProperties),
        ("vbaproject", LeftBehindWords.Macros), ("macro", LeftBehindWords.Macros), ("activex", LeftBehindWords.EmbeddedControls),
        ("ctrlprop", LeftBehindWords.EmbeddedControls), ("oleobject", LeftBehindWords.EmbeddedFiles), ("embeddings", LeftBehindWords.EmbeddedFiles),
        ("printersettings", LeftBehindWords.PrinterSettings), ("externallink", LeftBehindWords.LinksToBooks), ("connections", LeftBehindWords.Connections),
        ("querytable", LeftBehindWords.Queries), ("pivotcache", LeftBehindWords.PivotCaches), ("pivottable", LeftBehindWords.PivotTables),
        ("slicer", LeftBehindWords.Slicers), ("timeline", LeftBehindWords.Timelines), ("revision", LeftBehindWords.LogsOfChanges),
        ("userNames", LeftBehindWords.LogsOfChanges), ("chart", LeftBehindWords.Charts), ("diagram", LeftBehindWords.Diagrams),
        ("drawing", LeftBehindWords.Drawings), ("image/", LeftBehindWords.Pictures), ("/media/", LeftBehindWords.Pictures),
        ("thumbnail", LeftBehindWords.Thumbnails), ("customxml", LeftBehindWords.CustomXml), ("richdata", LeftBehindWords.RichValues),
    ];

    private static readonly string[] Carried =
    [
        "sheet.main+xml", "macroEnabled.main+xml", "template.main+xml", "worksheet+xml", "styles+xml", "theme+xml", "sharedStrings+xml", "table+xml", "relationships+xml", "calcChain+xml",
    ];

    /// <summary>Counts the parts that are left behind.</summary>
    /// <param name="package">The book.</param>
    /// <param name="tally">Counts.</param>
    public static void Count(BookPackage package, ShareTally tally)
    {
        foreach (var part in package.Parts.Where(p => !p.EndsWith(".rels", StringComparison.OrdinalIgnoreCase) && p != "[Content_Types].xml"))
        {
            var type = package.ContentType(part);
            if (Array.Exists(Carried, c => type.EndsWith(c, StringComparison.OrdinalIgnoreCase)))
            {
                continue;
            }

            var kind = Array.Find(Kinds, k => type.Contains(k.In, StringComparison.OrdinalIgnoreCase) || $"/{part}".Contains(k.In, StringComparison.OrdinalIgnoreCase)).Kind;
            tally.Add(kind ?? LeftBehindWords.UnknownParts);
        }

        if (package.ContentType(package.WorkbookPart).Contains("macroEnabled", StringComparison.OrdinalIgnoreCase)
            && !package.Parts.Any(p => p.EndsWith("vbaProject.bin", StringComparison.OrdinalIgnoreCase)))
        {
            tally.Add(LeftBehindWords.MarksOfMacros);
        }
    }
}
