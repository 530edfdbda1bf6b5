namespace CastBook.Workbooks.Adopting;

/// <summary>What a shop has said of itself, to be written into a shop file.</summary>
public sealed class ShopAnswers
{
    private readonly List<ShopLine> lines = [];

    /// <summary>Answers to settings, words or numbers in the setting's own unit, by the setting's name.</summary>
    public Dictionary<string, object> Settings { get; } = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>Answers about what the shop owns and uses, in the order given.</summary>
    public IReadOnlyList<ShopLine> Lines => lines;

    /// <summary>Whether nothing was said.</summary>
    public bool IsEmpty => Settings.Count == 0 && lines.Count == 0;

    /// <summary>Adds a line.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="values">Words or numbers by the heading of their column in a new shop file.</param>
    public void Add(string sheet, IReadOnlyDictionary<string, object> values) => lines.Add(new ShopLine(sheet, null, values));

    /// <summary>Changes cells of a line that stands in the shop file.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="name">The line's name as it stands.</param>
    /// <param name="values">The cells that change, by the heading of their column in a new shop file.</param>
    public void Change(string sheet, string name, IReadOnlyDictionary<string, object> values)
    {
        ArgumentNullException.ThrowIfNull(values);
        if (values.Count > 0)
        {
            lines.Add(new ShopLine(sheet, name, values));
        }
    }
}

/// <summary>A line of a shop file, or what changes in one.</summary>
/// <param name="Sheet">The sheet.</param>
/// <param name="Was">The name under which it stands; missing for a new line.</param>
/// <param name="Values">Words or numbers by the heading of their column in a new shop file.</param>
public sealed record ShopLine(string Sheet, string? Was, IReadOnlyDictionary<string, object> Values);
