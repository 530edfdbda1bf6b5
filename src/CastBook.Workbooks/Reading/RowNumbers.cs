using System.Globalization;
using System.Text;
using CastBook.Workbooks.Words;

namespace CastBook.Workbooks.Reading;

/// <summary>Row numbers as a sentence names them: <c>7, 9–20</c>.</summary>
internal static class RowNumbers
{
    // More than a reader would look up; the rest is counted.
    private const int MostSpans = 12;

    public static string Text(IReadOnlyList<int> rows)
    {
        var text = new StringBuilder();
        var spans = 0;
        for (var at = 0; at < rows.Count;)
        {
            var end = at;
            while (end + 1 < rows.Count && rows[end + 1] == rows[end] + 1)
            {
                end++;
            }

            if (spans++ == MostSpans)
            {
                return text.Append(PlaceWords.More(rows.Count - at)).ToString();
            }

            text.Append(text.Length == 0 ? "" : ", ").Append(CultureInfo.InvariantCulture, $"{rows[at]}");
            if (end > at)
            {
                text.Append(end == at + 1 ? ", " : "–").Append(CultureInfo.InvariantCulture, $"{rows[end]}");
            }

            at = end + 1;
        }

        return text.ToString();
    }
}
