using ClosedXML.Excel;

namespace CastBook.Benchmarks;

/// <summary>The two metal columns through a general library.</summary>
internal static class LibraryEdit
{
    private const int QuantityColumn = 3;

    /// <summary>Loads a book, sets the columns, and saves it.</summary>
    /// <param name="book">The book.</param>
    /// <param name="metal">The metal of each row.</param>
    public static byte[] Run(byte[] book, IReadOnlyList<(int Row, double MetalEachGrams)> metal)
    {
        using var input = new MemoryStream(book);
        using var output = new MemoryStream(book.Length * 2);
        using var workbook = new XLWorkbook(input);
        var sheet = workbook.Worksheet(1);
        sheet.Cell(1, LargeBook.Columns + 1).Value = "Metal each (g)";
        sheet.Cell(1, LargeBook.Columns + 2).Value = "Metal (g)";
        foreach (var (row, grams) in metal)
        {
            sheet.Cell(row, LargeBook.Columns + 1).Value = grams;
            sheet.Cell(row, LargeBook.Columns + 2).Value = grams * sheet.Cell(row, QuantityColumn).GetDouble();
        }

        workbook.SaveAs(output);
        return output.ToArray();
    }
}
