namespace CastBook.Workbooks.Settings;

/// <summary>Fields that were found together: where the book says something else of the first ones, what the shop file says of the others holds no longer.</summary>
/// <param name="Keys">What decides.</param>
/// <param name="Fields">What is not taken from the shop file then.</param>
internal sealed record FieldBond(IReadOnlyList<string> Keys, IReadOnlyList<string> Fields)
{
    /// <summary>Whether it is enough that the book says one of the keys, as a test cube weighed anew does.</summary>
    public bool BySayingAny { get; init; }

    /// <summary>Whether the book's line leaves nothing of what the shop file says of the fields.</summary>
    /// <param name="book">The book's line.</param>
    /// <param name="file">The shop file's.</param>
    public bool IsBroken(ShopRow book, ShopRow file) => Keys.Any(key => BySayingAny ? book.Says(key) : book.Contradicts(file, key));
}
