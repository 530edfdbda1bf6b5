namespace CastBook.Workbooks.Tests.Fidelity;

/// <summary>Notes: ours are known by how they begin.</summary>
internal sealed class NotesRule : PartRule
{
    public override bool IsOurs(RawNode parentBefore, RawNode parent, RawNode child) => (parent.LocalName, child.LocalName) switch
    {
        ("commentList", "comment") => IsNoteOfOurs(child),
        ("authors", "author") => IsAppended(parentBefore, parent, child) && child.InnerText == "CastBook",
        _ => false,
    };

    public static bool IsNoteOfOurs(RawNode comment) =>
        comment.InnerText.StartsWith("CastBook stop: ", StringComparison.Ordinal) || comment.InnerText.StartsWith("CastBook check: ", StringComparison.Ordinal);
}
