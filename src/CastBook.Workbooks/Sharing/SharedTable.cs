using System.Text.RegularExpressions;
using System.Xml.Linq;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Words;

namespace CastBook.Workbooks.Sharing;

/// <summary>A table that is shared: its place, its headings and its look.</summary>
/// <param name="Name">Its name in formulas.</param>
/// <param name="Columns">Its headings.</param>
/// <param name="Source">Its element in the book.</param>
internal sealed partial record SharedTable(string Name, IReadOnlyList<string> Columns, XElement Source)
{
    private static readonly AllowList Allowed = new(
        """
        table ref headerRowCount totalsRowCount totalsRowShown headerRowDxfId dataDxfId totalsRowDxfId headerRowBorderDxfId tableBorderDxfId totalsRowBorderDxfId
        autoFilter ref
        tableColumns count
        tableColumn id totalsRowFunction headerRowDxfId dataDxfId totalsRowDxfId
        tableStyleInfo showFirstColumn showLastColumn showRowStripes showColumnStripes
        """);

    /// <summary>The table of a part; null where it cannot be shared without what hangs on it, or where its headings are not.</summary>
    /// <param name="package">The book.</param>
    /// <param name="part">The part.</param>
    /// <param name="sheet">The sheet it stands on.</param>
    /// <param name="removed">The texts that go.</param>
    public static SharedTable? Of(BookPackage package, string part, SharedSheet sheet, RemovedTexts removed)
    {
        var source = PartTree.Load(package, part);
        var name = source.Attribute("displayName")?.Value ?? "";
        var isPlain = source.Attribute("tableType")?.Value is null or "worksheet" && source.Attribute("headerRowCount")?.Value != "0"
            && !package.Relationships(part).Any(r => r.Is("queryTable"));
        if (!isPlain || name.Length == 0 || removed.IsInName(name) || !CellRange.TryParse(source.Attribute("ref")?.Value, out var range))
        {
            return null;
        }

        var columns = source.Descendants().Where(e => e.Name.LocalName == "tableColumn").Select(e => StringItems.Unescape(e.Attribute("name")?.Value ?? "")).ToList();
        var headings = Enumerable.Range(range.FirstColumn, range.LastColumn - range.FirstColumn + 1).Select(c => sheet.Value(range.FirstRow, c).Text).ToList();
        return headings.SequenceEqual(columns, StringComparer.OrdinalIgnoreCase) ? new SharedTable(name, columns, source) : null;
    }

    /// <summary>The part to share.</summary>
    /// <param name="id">Its number among the tables of the book.</param>
    /// <param name="judge">Says which formulas may be shared.</param>
    /// <param name="tally">Counts what goes.</param>
    public XElement Shared(int id, FormulaJudge judge, ShareTally tally)
    {
        var copy = Allowed.Copy(Source)!;
        copy.SetAttributeValue("id", id);
        copy.SetAttributeValue("name", Name);
        copy.SetAttributeValue("displayName", Name);
        var from = Source.Descendants().Where(e => e.Name.LocalName == "tableColumn").ToList();
        foreach (var (source, column) in from.Zip(copy.Descendants(AllowList.Main + "tableColumn")))
        {
            column.SetAttributeValue("name", source.Attribute("name")?.Value);
            foreach (var formula in source.Elements().Where(e => e.Name.LocalName is "calculatedColumnFormula" or "totalsRowFormula"))
            {
                if (judge.IsFree(formula.Value))
                {
                    column.Add(new XElement(AllowList.Main + formula.Name.LocalName, formula.Value));
                }
                else
                {
                    tally.Add(LeftBehindWords.QuotingFormulas);
                    column.Attributes("totalsRowFunction").Where(a => a.Value == "custom").Remove();
                }
            }
        }

        var style = Source.Elements().FirstOrDefault(e => e.Name.LocalName == "tableStyleInfo")?.Attribute("name")?.Value;
        copy.Element(AllowList.Main + "tableStyleInfo")?.SetAttributeValue("name", style is not null && BuiltInStyle().IsMatch(style) ? style : null);
        return copy;
    }

    [GeneratedRegex("^TableStyle(Light|Medium|Dark)[0-9]{1,2}$")]
    private static partial Regex BuiltInStyle();
}
