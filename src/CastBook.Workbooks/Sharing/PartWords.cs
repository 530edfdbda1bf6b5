using CastBook.Workbooks.Reading.Package;

namespace CastBook.Workbooks.Sharing;

/// <summary>What a part that is left behind is called.</summary>
internal static class PartWords
{
    // The first that is found in the type of the content or in the part's name counts.
    private static readonly (string In, string Words)[] Kinds =
    [
        ("threadedcomment", "threaded comment sheet"), ("/persons/", "list of people"), ("comments", "sheet with notes"), ("vmldrawing", "drawing with notes"),
        ("core-properties", "document property sheet"), ("extended-properties", "document property sheet"), ("custom-properties", "document property sheet"),
        ("vbaproject", "macro"), ("macro", "macro"), ("activex", "embedded control"), ("ctrlprop", "embedded control"), ("oleobject", "embedded file"), ("embeddings", "embedded file"),
        ("printersettings", "printer setting"), ("externallink", "link to another book"), ("connections", "connection"), ("querytable", "query"),
        ("pivotcache", "pivot cache"), ("pivottable", "pivot table"), ("slicer", "slicer"), ("timeline", "timeline"),
        ("revision", "log of changes"), ("userNames", "log of changes"), ("chart", "chart"), ("diagram", "diagram"), ("drawing", "drawing"),
        ("image/", "picture"), ("/media/", "picture"), ("thumbnail", "thumbnail"), ("customxml", "custom XML part"), ("richdata", "rich value part"),
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

            var words = Array.Find(Kinds, k => type.Contains(k.In, StringComparison.OrdinalIgnoreCase) || $"/{part}".Contains(k.In, StringComparison.OrdinalIgnoreCase)).Words;
            tally.Add(words ?? "part of unknown kind");
        }

        if (package.ContentType(package.WorkbookPart).Contains("macroEnabled", StringComparison.OrdinalIgnoreCase) && !package.Parts.Any(p => p.EndsWith("vbaProject.bin", StringComparison.OrdinalIgnoreCase)))
        {
            tally.Add("mark of a book with macros");
        }
    }
}
