namespace CastBook.Workbooks.Tests.Fidelity;

/// <summary>Relationships and content types: what leads to our parts is added; nothing else changes.</summary>
internal sealed class RelationshipsRule : PartRule
{
    public override bool IsOurs(RawNode parentBefore, RawNode parent, RawNode child) => child.LocalName switch
    {
        "Relationship" => parentBefore.Elements.All(e => e["Id"] != child["Id"]),
        "Default" => parentBefore.Elements.All(e => e["Extension"] != child["Extension"]),
        "Override" => parentBefore.Elements.All(e => e["PartName"] != child["PartName"]),
        _ => false,
    };
}
