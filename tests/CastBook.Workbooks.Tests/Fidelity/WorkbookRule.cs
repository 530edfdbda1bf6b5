namespace CastBook.Workbooks.Tests.Fidelity;

/// <summary>The workbook part: sheets at the end, our hidden names, the titles of our sheets, a wider filter, recalculation.</summary>
internal sealed class WorkbookRule : PartRule
{
    private const string Titles = "_xlnm.Print_Titles";
    private readonly HashSet<string> sheets = [];

    public override bool IsOurs(RawNode parentBefore, RawNode parent, RawNode child) => (parent.LocalName, child.LocalName) switch
    {
        ("sheets", "sheet") => IsAppended(parentBefore, parent, child),
        ("workbook", "definedNames" or "calcPr") => parentBefore.Element(child.LocalName) is null,
        ("definedNames", "definedName") => child["name"]!.StartsWith("CastBook_", StringComparison.Ordinal)
            || (child["name"] == Titles && int.Parse(child["localSheetId"]!, System.Globalization.CultureInfo.InvariantCulture) >= sheets.Count),
        _ => false,
    };

    public override bool MayChange(RawNode element, string attribute, string? before, string? after) =>
        (element.LocalName, attribute, after) is ("calcPr", "fullCalcOnLoad", "1");

    public override bool MayChangeText(RawNode element, string before, string after)
    {
        if (element["name"] != "_xlnm._FilterDatabase")
        {
            return false;
        }

        (before, after) = (System.Net.WebUtility.HtmlDecode(before), System.Net.WebUtility.HtmlDecode(after));
        var (was, now) = (before.LastIndexOf('!'), after.LastIndexOf('!'));
        return before[..was].Trim('\'') == after[..now].Trim('\'') && IsWidened(before[(was + 1)..], after[(now + 1)..]);
    }

    public override IReadOnlyList<string>? Compare(RawNode before, RawNode after)
    {
        if (before.LocalName == "sheets")
        {
            sheets.UnionWith(before.Elements.Select(s => s["name"]!));
        }

        return null;
    }
}
