namespace CastBook.Workbooks.Tests.Fidelity;

/// <summary>Formats: ours are appended, so that none of the shop's gets another number.</summary>
internal sealed class StylesRule : PartRule
{
    public override bool IsOurs(RawNode parentBefore, RawNode parent, RawNode child) => (parent.LocalName, child.LocalName) switch
    {
        ("styleSheet", "numFmts" or "fonts" or "fills" or "borders" or "cellXfs" or "dxfs") => parentBefore.Element(child.LocalName) is null,
        ("numFmts", "numFmt") or ("fonts", "font") or ("fills", "fill") or ("borders", "border") or ("cellXfs", "xf") or ("dxfs", "dxf") =>
            IsAppended(parentBefore, parent, child),
        _ => false,
    };

    public override bool MayChange(RawNode element, string attribute, string? before, string? after) =>
        attribute == "count" && element.LocalName is "numFmts" or "fonts" or "fills" or "borders" or "cellXfs" or "dxfs";
}
