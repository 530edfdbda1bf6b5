using System.Text.Json;

namespace CastBook.Workbooks.Tests.Witnesses;

/// <summary>Two libraries for Node.js that read and write workbooks.</summary>
internal static class NodeLibraries
{
    /// <summary>The cells of books as SheetJS reads them: by book, sheet and address; null for a book it cannot read.</summary>
    public static Dictionary<string, Dictionary<string, Dictionary<string, string>>?> Cells(IEnumerable<(string Name, byte[] Book)> books) =>
        Tools.InFolder(books, (_, paths) => JsonSerializer.Deserialize<Dictionary<string, Dictionary<string, Dictionary<string, string>>?>>(
            Tools.Run("node", [Path.Combine(Tools.WitnessFolder, "cells.js"), .. paths]))!);

    /// <summary>A book as a library saves it: <c>exceljs</c> or <c>xlsx</c>.</summary>
    public static byte[] Resave(string library, byte[] book) => Tools.InFolder([("book.xlsx", book)], (folder, paths) =>
    {
        var target = Directory.CreateDirectory(Path.Combine(folder, "out")).FullName;
        Tools.Run("node", [Path.Combine(Tools.WitnessFolder, "resave.js"), library, target, .. paths]);
        return File.ReadAllBytes(Path.Combine(target, "book.xlsx"));
    });
}
