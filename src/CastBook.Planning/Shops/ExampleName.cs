namespace CastBook.Planning.Shops;

/// <summary>The names of example rows: a new book's, whose numbers are an invented shop's.</summary>
public static class ExampleName
{
    /// <summary>What they begin with.</summary>
    public const string Start = "Example: ";

    /// <summary>Whether a name is that of an example.</summary>
    /// <param name="name">The name.</param>
    public static bool Is(string? name) => name is not null && name.StartsWith(Start, StringComparison.OrdinalIgnoreCase);
}
