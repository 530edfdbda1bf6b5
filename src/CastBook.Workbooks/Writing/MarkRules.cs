using System.Globalization;
using System.Text;
using CastBook.Planning.Findings;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Xml;

namespace CastBook.Workbooks.Writing;

/// <summary>
/// Marks as an overlay: conditional formats of ours, known again by <c>N("castbook:…")</c> in their formula, so that the
/// shop's own formats stay.
/// </summary>
internal static class MarkRules
{
    /// <summary>By what a rule of ours is known.</summary>
    private const string Marker = "castbook:";

    /// <summary>The word of a severity, as Checks cells and formulas write it.</summary>
    /// <param name="severity">The severity.</param>
    public static string WordOf(Severity severity) => severity switch
    {
        Severity.Stop => "stop",
        Severity.Check => "check",
        _ => "note",
    };

    /// <summary>A rule that always marks: for headings, settings and cells of our own sheets.</summary>
    /// <param name="cells">The cells, addresses with blanks between.</param>
    /// <param name="severity">The severity.</param>
    /// <param name="format">Index of its differential format.</param>
    /// <param name="priority">Its priority on the sheet.</param>
    /// <returns>The element, <c>~</c> where the prefix belongs.</returns>
    public static string Always(string cells, Severity severity, int format, int priority) =>
        Rule(cells, $"N(\"{Marker}{WordOf(severity)}\")=0", format, priority);

    /// <summary>A rule for a column of the list: it marks the rows whose Checks cell names the field, so it travels when rows are sorted.</summary>
    /// <param name="column">The rows of the column.</param>
    /// <param name="checksColumn">The column of the Checks cells.</param>
    /// <param name="words">What the Checks cell says, such as <c>stop: weight</c>.</param>
    /// <param name="severity">The severity.</param>
    /// <param name="format">Index of its differential format.</param>
    /// <param name="priority">Its priority on the sheet.</param>
    /// <returns>The element, <c>~</c> where the prefix belongs.</returns>
    public static string WhereChecksSay(CellRange column, int checksColumn, string words, Severity severity, int format, int priority)
    {
        var checks = $"${CellRef.ColumnName(checksColumn)}{column.FirstRow.ToString(CultureInfo.InvariantCulture)}";
        return Rule(column.ToString(), $"(N(\"{Marker}{WordOf(severity)}\")=0)*ISNUMBER(SEARCH(\"{words}\",{checks}))", format, priority);
    }

    /// <summary>Whether a sheet has rules of ours.</summary>
    /// <param name="package">The book.</param>
    /// <param name="sheet">The sheet.</param>
    public static bool IsIn(BookPackage package, SheetPart sheet) =>
        XmlEncoding.ToUtf8(package.Read(sheet.PartName)).AsSpan().IndexOf(Encoding.UTF8.GetBytes(Marker)) >= 0;

    /// <summary>A conditional-formatting element without our rules; null where none is left.</summary>
    /// <param name="element">The element's bytes.</param>
    public static byte[]? WithoutOurs(byte[] element)
    {
        if (element.AsSpan().IndexOf(Encoding.UTF8.GetBytes(Marker)) < 0)
        {
            return element;
        }

        var part = new XmlPart(element);
        var rules = part.Children(part.Root).Where(c => c.LocalName == "cfRule").ToList();
        var ours = rules.Where(r => part.Text(r).Contains(Marker, StringComparison.Ordinal)).ToList();
        if (ours.Count == rules.Count)
        {
            return null;
        }

        ours.ForEach(rule => part.Replace(rule, ""));
        return part.ToBytes();
    }

    private static string Rule(string cells, string formula, int format, int priority) => string.Create(
        CultureInfo.InvariantCulture,
        $"""<~conditionalFormatting sqref="{cells}"><~cfRule type="expression" dxfId="{format}" priority="{priority}"><~formula>{XmlText.EscapeText(formula)}</~formula></~cfRule></~conditionalFormatting>""");
}
