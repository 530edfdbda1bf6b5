namespace CastBook.Templates;

/// <summary>What a shop has said of itself, to be written into a new shop file.</summary>
public sealed class ShopAnswers
{
    private readonly List<(string Sheet, IReadOnlyDictionary<string, object> Values)> rows = [];

    /// <summary>Answers to settings, words or numbers, by the setting's name.</summary>
    public Dictionary<string, object> Settings { get; } = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>Whether nothing was said.</summary>
    public bool IsEmpty => Settings.Count == 0 && rows.Count == 0;

    /// <summary>Adds a line.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="values">Words or numbers by the heading of their column.</param>
    public void Add(string sheet, IReadOnlyDictionary<string, object> values) => rows.Add((sheet, values));

    /// <summary>The lines of a sheet.</summary>
    /// <param name="sheet">The sheet.</param>
    internal IEnumerable<IReadOnlyDictionary<string, object>> Of(string sheet) => rows.Where(r => r.Sheet == sheet).Select(r => r.Values);
}
