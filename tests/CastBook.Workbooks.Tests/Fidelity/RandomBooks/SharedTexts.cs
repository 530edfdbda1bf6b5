using System.Security;

namespace CastBook.Workbooks.Tests.Fidelity.RandomBooks;

/// <summary>The shared strings of a book, some of them in runs or with phonetics.</summary>
internal sealed class SharedTexts
{
    private readonly List<string> items = [];

    /// <summary>The index of a text.</summary>
    public int Add(string text)
    {
        var escaped = SecurityElement.Escape(text).Replace("\r", "&#13;", StringComparison.Ordinal);
        items.Add((items.Count % 5) switch
        {
            3 => $"<~si><~r><~rPr><~b/></~rPr><~t xml:space=\"preserve\">{escaped}</~t></~r></~si>",
            4 => $"<~si><~t xml:space=\"preserve\">{escaped}</~t><~phoneticPr fontId=\"0\"/></~si>",
            _ => $"<~si><~t xml:space=\"preserve\">{escaped}</~t></~si>",
        });
        return items.Count - 1;
    }

    public string ToXml() => $"<~sst {{xmlns}} count=\"{items.Count}\" uniqueCount=\"{items.Count}\">{string.Concat(items)}</~sst>";
}
