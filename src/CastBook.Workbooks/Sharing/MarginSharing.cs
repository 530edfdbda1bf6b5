using System.Xml.Linq;
using CastBook.Workbooks.Words;

namespace CastBook.Workbooks.Sharing;

/// <summary>What stands in the margins of pages: page numbers, the sheet's name and the day are nobody's words.</summary>
internal static class MarginSharing
{
    /// <summary>The margins without words; null where nothing is left.</summary>
    /// <param name="source">A <c>headerFooter</c>.</param>
    /// <param name="tally">Counts what goes.</param>
    public static XElement? Of(XElement source, ShareTally tally)
    {
        var copy = new XElement(AllowList.Main + "headerFooter");
        foreach (var part in source.Elements().Where(e => AllowList.IsMain(e) && e.Value.Length > 0))
        {
            if (!IsPageText(part.Value))
            {
                tally.Add(LeftBehindWords.Margins);
            }
            else if (part.Name.LocalName is "oddHeader" or "oddFooter")
            {
                copy.Add(new XElement(AllowList.Main + part.Name.LocalName, part.Value));
            }
        }

        return copy.HasElements ? copy : null;
    }

    private static bool IsPageText(string text)
    {
        for (var at = 0; at < text.Length; at++)
        {
            if (text[at] == '&' && at + 1 < text.Length && text[at + 1] is 'L' or 'C' or 'R' or 'P' or 'N' or 'A' or 'D' or 'T' or 'B' or 'I')
            {
                at++;
            }
            else if (char.IsLetterOrDigit(text[at]) || text[at] == '&')
            {
                return false;
            }
        }

        return true;
    }
}
