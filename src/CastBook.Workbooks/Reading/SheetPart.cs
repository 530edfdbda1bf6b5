namespace CastBook.Workbooks.Reading;

/// <summary>A sheet of the workbook.</summary>
/// <param name="Name">Its name on the tab.</param>
/// <param name="PartName">Its part in the package, such as <c>xl/worksheets/sheet1.xml</c>.</param>
/// <param name="Index">Its place among the sheets, from 0.</param>
/// <param name="IsHidden">Whether it is hidden.</param>
public sealed record SheetPart(string Name, string PartName, int Index, bool IsHidden);
