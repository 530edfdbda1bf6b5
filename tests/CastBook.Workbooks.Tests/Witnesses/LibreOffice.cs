using System.Globalization;
using CastBook.Workbooks.Reading;
using CsvHelper;
using CsvHelper.Configuration;

namespace CastBook.Workbooks.Tests.Witnesses;

/// <summary>LibreOffice without a window, once for many books.</summary>
internal static class LibreOffice
{
    // Comma, double quote, UTF-8, values and not as shown, all sheets.
    private const string Csv = "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,false,false,false,false,-1";

    /// <summary>The cells of books as LibreOffice reads them: by book, sheet and address; empty ones are left out.</summary>
    public static Dictionary<string, Dictionary<string, Dictionary<string, string>>> Cells(IEnumerable<(string Name, byte[] Book)> books) =>
        Tools.InFolder(books, (folder, paths) =>
        {
            Convert(folder, Csv, paths);
            return paths.ToDictionary(p => Path.GetFileName(p), p => SheetsOf(folder, Path.GetFileNameWithoutExtension(p)));
        });

    /// <summary>Books as LibreOffice saves them.</summary>
    public static IReadOnlyList<byte[]> Resave(IEnumerable<(string Name, byte[] Book)> books) => Tools.InFolder(books, (folder, paths) =>
    {
        Convert(folder, "xlsx:Calc MS Excel 2007 XML", paths);
        return paths.Select(p => File.ReadAllBytes(Path.Combine(folder, "out", Path.GetFileName(p)))).ToList();
    });

    private static void Convert(string folder, string to, string[] paths) => Tools.Run(
        "soffice", ["--headless", $"-env:UserInstallation=file://{folder}/profile", "--convert-to", to, "--outdir", Path.Combine(folder, "out"), .. paths]);

    private static Dictionary<string, Dictionary<string, string>> SheetsOf(string folder, string book) =>
        Directory.GetFiles(Path.Combine(folder, "out"), book + "-*.csv").ToDictionary(p => Path.GetFileNameWithoutExtension(p)[(book.Length + 1)..], CellsOf);

    private static Dictionary<string, string> CellsOf(string path)
    {
        var cells = new Dictionary<string, string>();
        // Of a sheet with one column an empty row is an empty line.
        using var parser = new CsvParser(new StreamReader(path), new CsvConfiguration(CultureInfo.InvariantCulture) { IgnoreBlankLines = false });
        for (var row = 1; parser.Read(); row++)
        {
            for (var column = 1; column <= parser.Count; column++)
            {
                if (parser[column - 1].Length > 0)
                {
                    cells[CellRef.AddressOf(row, column)] = parser[column - 1];
                }
            }
        }

        return cells;
    }
}
