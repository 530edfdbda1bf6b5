using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Tests.Filling;

namespace CastBook.Workbooks.Tests.Fidelity.RandomBooks;

/// <summary>What random books have, by looking at them and at what filling made of them.</summary>
internal static class Features
{
    private static readonly (string Name, string Text)[] InParts =
    [
        ("absolute target", "Target=\"/xl"), ("alternate content", "AlternateContent"), ("array formula", "t=\"array\""), ("calc chain", "calcChain "),
        ("cell without reference", "c><"), ("chart", "chartSpace"), ("comment", "<!--"), ("conditional format", "cfRule"), ("extension", "sparklineGroup"),
        ("filter", "_FilterDatabase"), ("hyperlink", "hyperlinks"), ("instruction", "<?shop"), ("line end in an attribute", "&#10;"), ("merge", "mergeCell"),
        ("note", "commentList"), ("outline", "outlineLevel="), ("phonetics", "phoneticPr"), ("prefix", "<x:worksheet"), ("print settings", "pageSetup"),
        ("protection", "sheetProtection"), ("shared formula", "t=\"shared\""), ("single quotes", "='"), ("strict", "purl.oclc.org"), ("table", "tableColumn"),
        ("thread", "threadedComment "), ("totals row", "totalsRowCount"), ("validation", "dataValidation"), ("carriage return", "&#13;"),
    ];

    public static IReadOnlyList<string> All =>
    [
        .. InParts.Select(f => f.Name), "wide encoding", "byte order mark", "no styles", "several sheets", "columns beside the list",
        "no room beside the list", "table widened", "note added to the shop's", "note on a book without", "lines added to Shop", "recalculation asked",
    ];

    public static IEnumerable<string> Of(byte[] book, Filled filled)
    {
        using var before = BookPackage.Open(new MemoryStream(book));
        using var after = BookPackage.Open(new MemoryStream(filled.Bytes));
        var parts = before.Parts.Where(p => !p.EndsWith(".bin", StringComparison.Ordinal)).Select(p => (Name: p, Bytes: before.Read(p), Text: RawXml.TextOf(before.Read(p)))).ToList();
        string Now(string part) => RawXml.TextOf(after.Read(part));
        bool Grew(string word, string text) => parts.Any(p => p.Name.Contains(word, StringComparison.Ordinal) && Times(Now(p.Name), text) > Times(p.Text, text));
        var notes = parts.Any(p => p.Text.Contains("commentList", StringComparison.Ordinal));
        (string Name, bool Has)[] others =
        [
            ("wide encoding", parts.Any(p => p.Bytes[0] >= 0xFE)), ("byte order mark", parts.Any(p => p.Bytes[0] == 0xEF)), ("no styles", before.StylesPart is null),
            ("several sheets", before.Sheets.Count > 1), ("columns beside the list", after.DefinedNames.Any(n => n.Name == "CastBook_Checks")),
            ("no room beside the list", filled.Ids.Contains("columns-no-room")), ("table widened", Grew("tables/", "tableColumn ")),
            ("note added to the shop's", notes && Grew("comments", "CastBook stop")), ("note on a book without", !notes && after.Parts.Any(p => p.Contains("comments", StringComparison.Ordinal))),
            ("lines added to Shop", before.Sheets.FirstOrDefault(s => s.Name == "Shop") is { } shop && Times(Now(shop.PartName), "row r") > Times(RawXml.TextOf(before.Read(shop.PartName)), "row r")),
            ("recalculation asked", Now(after.WorkbookPart).Contains("fullCalcOnLoad", StringComparison.Ordinal)),
        ];
        return InParts.Where(f => parts.Any(p => p.Text.Contains(f.Text, StringComparison.Ordinal))).Select(f => f.Name)
            .Concat(others.Where(o => o.Has).Select(o => o.Name)).ToList();
    }

    private static int Times(string text, string part) => text.Split(part).Length - 1;
}
