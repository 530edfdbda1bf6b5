namespace CastBook.Workbooks.Reading.Package;

/// <summary>A relationship of a part, or of the package itself.</summary>
/// <param name="Id">Its id, such as <c>rId1</c>.</param>
/// <param name="Type">Its type, a URI; Strict books use another family of them.</param>
/// <param name="Target">The part it leads to as the zip names it, or the address where it is external.</param>
/// <param name="IsExternal">Whether it leads out of the package; it is then data and never followed.</param>
public sealed record Relationship(string Id, string Type, string Target, bool IsExternal)
{
    /// <summary>Whether its type ends in this word, in either family: <c>worksheet</c>, <c>table</c>, <c>styles</c>.</summary>
    /// <param name="word">The last segment of the type.</param>
    public bool Is(string word)
    {
        ArgumentNullException.ThrowIfNull(word);
        return Type.Length > word.Length && Type[^(word.Length + 1)] == '/'
            && Type.EndsWith(word, StringComparison.OrdinalIgnoreCase);
    }
}
