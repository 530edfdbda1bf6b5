namespace CastBook.Planning.Metals;

/// <summary>Clay of metal powder, which evening classes have on one list with castings: it is shaped and fired, and never poured.</summary>
internal static class MetalClay
{
    // Clay in the languages of headings; whole words, so that "clayton bronze" is none.
    private static readonly HashSet<string> Words = new(StringComparer.OrdinalIgnoreCase) { "clay", "argile", "arcilla", "argilla", "argila", "metallclay", "silberclay", "bronzeclay" };

    /// <summary>Whether a name in the place of an alloy means clay.</summary>
    /// <param name="name">The name as typed.</param>
    public static bool IsMeant(string name) => name.Split([' ', '-', '/', ',', '(', ')', '.'], StringSplitOptions.RemoveEmptyEntries).Any(Words.Contains);
}
