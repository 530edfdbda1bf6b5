namespace CastBook.Templates;

/// <summary>What a shop is asked.</summary>
/// <param name="Sheets">The sheets on which nothing stands yet.</param>
/// <param name="Settings">The settings that nobody has answered.</param>
public sealed record ShopQuestions(IReadOnlyCollection<string> Sheets, IReadOnlyCollection<string> Settings)
{
    /// <summary>Whether nothing is asked.</summary>
    public bool IsEmpty => Sheets.Count == 0 && Settings.Count == 0;
}
