using ClosedXML.Excel;

namespace CastBook.Templates.Writing;

/// <summary>Makes a workbook of a content.</summary>
internal static class NewBookWriter
{
    private const string ReadMeName = "Read me";
    private const string Maker = "CastBook";

    /// <summary>A day long past: a book made twice is the same book.</summary>
    private static readonly DateTime NoDay = new(2000, 1, 1, 0, 0, 0, DateTimeKind.Utc);

    /// <summary>Writes the book. The same content gives the same parts and bytes.</summary>
    /// <param name="content">What it shows.</param>
    /// <param name="output">Where to; left open.</param>
    public static void Write(BookContent content, Stream output)
    {
        using var book = new XLWorkbook();
        Sign(book.Properties, content.Title);
        if (content.ReadMe.Count > 0)
        {
            ReadMe(book.AddWorksheet(ReadMeName), content);
        }

        foreach (var sheet in content.Sheets)
        {
            SheetWriter.Write(book.AddWorksheet(sheet.Spec.Name), sheet, content.IsOnLetter);
        }

        book.Worksheets.First().SetTabActive();
        using var raw = new MemoryStream();
        book.SaveAs(raw);
        raw.Position = 0;
        StableParts.Copy(raw, output);
    }

    private static void Sign(XLWorkbookProperties properties, string title)
    {
        properties.Title = title;
        properties.Author = Maker;
        properties.LastModifiedBy = Maker;
        properties.Created = NoDay;
        properties.Modified = NoDay;
    }

    private static void ReadMe(IXLWorksheet sheet, BookContent content)
    {
        var lines = content.ReadMe;
        NewBookLook.Everywhere(sheet.Column(1).Style);
        sheet.Column(1).Width = 98;
        for (var i = 0; i < lines.Count; i++)
        {
            var cell = sheet.Cell(i + 1, 1);
            CellWriter.Write(cell, lines[i]);
            cell.Style.Alignment.WrapText = true;
            cell.Style.Alignment.Vertical = XLAlignmentVerticalValues.Top;
            sheet.Row(i + 1).Height = lines[i].Length > 112 ? 33 : 19;
        }

        NewBookLook.Title(sheet.Cell(1, 1), first: true);
        sheet.ShowGridLines = false;
        NewBookLook.Print(sheet, headingRow: 0, landscape: false, content.IsOnLetter);
    }
}
