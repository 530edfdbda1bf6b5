namespace CastBook.Workbooks.Tests.Fidelity;

/// <summary>A table: wider at the right by our columns.</summary>
internal sealed class TablePartRule : PartRule
{
    public override bool IsOurs(RawNode parentBefore, RawNode parent, RawNode child) =>
        (parent.LocalName, child.LocalName) is ("tableColumns", "tableColumn") && IsAppended(parentBefore, parent, child);

    public override bool MayChange(RawNode element, string attribute, string? before, string? after) => (element.LocalName, attribute) switch
    {
        ("table" or "autoFilter", "ref") => IsWidened(before, after),
        ("tableColumns", "count") => true,
        _ => false,
    };
}
