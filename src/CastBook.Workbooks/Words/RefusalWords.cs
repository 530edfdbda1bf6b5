using System.Globalization;

namespace CastBook.Workbooks.Words;

/// <summary>What a file that is refused has in it, as it stands inside the sentences of the catalogue.</summary>
internal static class RefusalWords
{
    // "The workbook is damaged and cannot be read (at …)."
    public static string EndOfZip => "the end of the zip; it may have been copied only in part";

    public static string Zip => "the zip";

    public static string Sheet(string sheet) => $"sheet {sheet}";

    public static string Fault(string fault) => $"this: {fault.TrimEnd('.')}";

    public static string Changed(string part) => $"the part {part}, which is not what it was when it was packed";

    public static string NotWellFormed(string part) => $"the part {part}, which is not well formed";

    public static string Twice(string part) => $"{part}, which is in it twice";

    public static string Missing(string part) => $"{part}, which is missing";

    public static string RowOutOfOrder(string row) => $"row {row}, which is out of order";

    public static string RowBeyondLast => "row beyond the last, which is out of order";

    public static string RowTooWide(int row) => string.Create(CultureInfo.InvariantCulture, $"row {row}, which is wider than a sheet");

    public static string CellOutOfOrder(string cell, int row) => string.Create(CultureInfo.InvariantCulture, $"cell {cell} in row {row}, which is out of order");

    public static string ColumnsOutOfOrder(int first, int last) => string.Create(CultureInfo.InvariantCulture, $"columns {first} to {last}, which is no range");

    public static string NoNumber(string attribute, string element) => $"{attribute} of {element}, which is no number";

    public static string NotClosed => "an element that is not closed";

    public static string EndsInTag => "a part that ends inside a tag";

    public static string EndsInComment => "a part that ends inside a comment or a text block";

    public static string EndsInElement => "a part that ends before its elements do";

    public static string TagsDoNotMatch => "a part whose tags do not match";

    public static string NoRoot => "a part that has no root element";

    public static string ElementsInText => "an element that holds text and elements";

    public static string DocumentType => "a part that declares a document type";

    public static string NoSheets => "the workbook part, which lists no sheets";

    // "The file holds …."
    public static string TextTooLong => "a text longer than a cell may hold";

    public static string NestedTooDeep => "elements nested deeper than any workbook nests them";

    public static string ListTooLong => "a text of more than 64 MB";

    public static string Parts(int count) => string.Create(CultureInfo.InvariantCulture, $"{count} parts");

    public static string PartTooLarge(int megabytes) => string.Create(CultureInfo.InvariantCulture, $"a part of more than {megabytes} MB");

    public static string PartSwells(int times) => string.Create(CultureInfo.InvariantCulture, $"a part that swells to more than {times} times what it takes in the file");

    public static string BookTooLarge(int megabytes) => string.Create(CultureInfo.InvariantCulture, $"more than {megabytes} MB in all");

    // "The file is …, not an .xlsx workbook."
    public static string OpenDocument => "an OpenDocument (.ods) file";

    public static string XmlSpreadsheet => "an XML spreadsheet of 2003";

    public static string WebPage => "a web page (HTML), whatever its name says";

    // "The file is an .xlsx workbook, but its name ends in …."
    public static string NoEnding => "nothing";

    // "night.xlsx is open; … has it."
    public static string AnotherProgram => "another program";

    // "template.xlsx cannot take the list: …."
    public static string TemplateHeadings => "its headings stand in two rows";

    public static string ListHeadings => "the list's headings stand in two rows";

    public static string TemplateTotals => "its table ends in a row of totals";

    public static string TemplateFilled => "its table is filled from elsewhere";

    public static string TemplateOccupied(int row) => string.Create(CultureInfo.InvariantCulture, $"row {row} below its headings is not empty");
}
