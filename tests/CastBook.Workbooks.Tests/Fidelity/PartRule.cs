namespace CastBook.Workbooks.Tests.Fidelity;

/// <summary>What CastBook may do to parts of one kind. Whatever a rule does not name must stay as it was.</summary>
internal abstract class PartRule
{
    /// <summary>Whether an element is ours, so that it may come, go and change.</summary>
    /// <param name="parentBefore">Its parent as it was.</param>
    /// <param name="parent">Its parent in the book that is looked at, before or after.</param>
    /// <param name="child">The element.</param>
    public virtual bool IsOurs(RawNode parentBefore, RawNode parent, RawNode child) => false;

    /// <summary>Whether an attribute of the shop's element may differ.</summary>
    /// <param name="element">The element as it was.</param>
    /// <param name="attribute">The attribute's name.</param>
    /// <param name="before">Its value as it was; null where it is new.</param>
    /// <param name="after">Its value now; null where it is gone.</param>
    public virtual bool MayChange(RawNode element, string attribute, string? before, string? after) => false;

    /// <summary>Whether the text in the shop's element may differ.</summary>
    public virtual bool MayChangeText(RawNode element, string before, string after) => false;

    /// <summary>Says what is wrong with an element that needs a comparison of its own; null where it is compared as all others.</summary>
    public virtual IReadOnlyList<string>? Compare(RawNode before, RawNode after) => null;

    /// <summary>Whether a child stands beyond the children that its parent had before.</summary>
    protected static bool IsAppended(RawNode parentBefore, RawNode parent, RawNode child) =>
        parent.Elements.TakeWhile(e => e != child).Count() >= parentBefore.Elements.Count();

    /// <summary>Whether every range of a list lies in the same place of another list, only wider to the right.</summary>
    protected static bool IsWidened(string? before, string? after) =>
        CastBook.Workbooks.Reading.CellRange.TryParse(before, out var was) && CastBook.Workbooks.Reading.CellRange.TryParse(after, out var now)
        && was with { LastColumn = now.LastColumn } == now && now.LastColumn >= was.LastColumn;
}
