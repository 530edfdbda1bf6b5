using System.Globalization;
using System.Security;
using System.Text;

namespace CastBook.Benchmarks;

/// <summary>The shared strings of a book, each once.</summary>
internal sealed class StringTable
{
    private readonly Dictionary<string, int> indexes = new(StringComparer.Ordinal);
    private readonly List<string> texts = [];
    private int uses;

    /// <summary>The index of a text.</summary>
    public int Of(string text)
    {
        uses++;
        if (!indexes.TryGetValue(text, out var index))
        {
            index = texts.Count;
            indexes.Add(text, index);
            texts.Add(text);
        }

        return index;
    }

    /// <summary>The part.</summary>
    public string ToXml()
    {
        var xml = new StringBuilder(PackageXml.Declaration)
            .Append(CultureInfo.InvariantCulture, $"<sst xmlns=\"{PackageXml.Main}\" count=\"{uses}\" uniqueCount=\"{texts.Count}\">");
        foreach (var text in texts)
        {
            xml.Append("<si><t>").Append(SecurityElement.Escape(text)).Append("</t></si>");
        }

        return xml.Append("</sst>").ToString();
    }
}
