using System.Globalization;
using CsvHelper;
using CsvHelper.Configuration;

namespace CastBook.Workbooks.Text;

/// <summary>The rows of comma-, semicolon-, tab- or bar-separated text, every cell as typed.</summary>
internal static class TextTable
{
    private const int LinesLookedAt = 30;
    private const string SeparatorLine = "sep=";

    private static readonly char[] Separators = [';', '\t', ',', '|'];

    /// <summary>Reads the rows; blank lines stay rows without cells.</summary>
    /// <param name="text">The text.</param>
    public static IReadOnlyList<string[]> Read(string text)
    {
        var separator = '\0';
        if (text.StartsWith(SeparatorLine, StringComparison.OrdinalIgnoreCase) && text.Length > SeparatorLine.Length)
        {
            separator = text[SeparatorLine.Length];
            var end = text.IndexOf('\n', StringComparison.Ordinal);
            text = end < 0 ? "" : text[(end + 1)..];
        }

        return Rows(text, separator == '\0' ? SeparatorOf(text) : separator);
    }

    /// <summary>The separator under which most rows have the same number of cells, more than one: a decimal comma parts fewer rows alike.</summary>
    private static char SeparatorOf(string text)
    {
        var (best, most) = (',', 0);
        foreach (var separator in Separators)
        {
            var widths = Rows(text, separator, LinesLookedAt).Select(r => r.Length).Where(w => w > 1).GroupBy(w => w).ToList();
            var alike = widths.Count == 0 ? 0 : widths.Max(g => (g.Count() * 100) + g.Key);
            if (alike > most)
            {
                (best, most) = (separator, alike);
            }
        }

        return best;
    }

    private static List<string[]> Rows(string text, char separator, int most = int.MaxValue)
    {
        using var reader = new StringReader(text);
        using var parser = new CsvParser(reader, new CsvConfiguration(CultureInfo.InvariantCulture)
        {
            Delimiter = separator.ToString(),
            HasHeaderRecord = false,
            IgnoreBlankLines = false,
            BadDataFound = null,
        });
        var rows = new List<string[]>();
        while (rows.Count < most && parser.Read())
        {
            rows.Add(parser.Record ?? []);
        }

        return rows;
    }
}
