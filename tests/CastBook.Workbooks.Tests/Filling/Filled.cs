using CastBook.Planning;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Settings;
using CastBook.Workbooks.Writing;

namespace CastBook.Workbooks.Tests.Filling;

/// <summary>A filled book: the answer, its bytes, and its cells by sheet and address.</summary>
internal sealed class Filled
{
    private readonly BookSettings settings;

    private Filled(FillResult result, byte[] bytes, BookSettings settings) => (Result, Bytes, this.settings) = (result, bytes, settings);

    public FillResult Result { get; }

    public byte[] Bytes { get; }

    public NightPlan Plan => Result.Plan;

    public IReadOnlyList<string> Ids => [.. Result.Findings.Select(f => f.Id)];

    public IReadOnlyList<string> Sheets
    {
        get
        {
            using var package = BookPackage.Open(new MemoryStream(Bytes));
            return package.AllSheetNames;
        }
    }

    public static Filled From(Stream book, string name = "night.xlsx", BookSettings? settings = null)
    {
        using var output = new MemoryStream();
        var result = BookFiller.Fill(book, output, name, settings ?? BookSettings.None);
        return new Filled(result, output.ToArray(), settings ?? BookSettings.None);
    }

    public static Filled From(byte[] book, string name = "night.xlsx", BookSettings? settings = null) => From(new MemoryStream(book), name, settings);

    /// <summary>Fills the filled book once more.</summary>
    public Filled Again() => From(Bytes, settings: settings);

    /// <summary>The filled book with something typed into cells, as an office program would save it, filled once more.</summary>
    public Filled AfterTyping(params (string Sheet, string Address, object? Value)[] cells) => From(Typed.Into(Bytes, cells), settings: settings);

    /// <summary>A cell: a number, text, or null.</summary>
    public object? this[string sheet, string address]
    {
        get
        {
            CellRef.TryParse(address, out var row, out var column).ShouldBeTrue();
            var cell = Grid(sheet).Cell(row, column);
            return cell.Kind switch
            {
                CellKind.Number or CellKind.Date or CellKind.Boolean => cell.Number,
                CellKind.Text => cell.Text,
                _ => null,
            };
        }
    }

    public SheetGrid Grid(string sheet)
    {
        using var package = BookPackage.Open(new MemoryStream(Bytes));
        return SheetReader.Read(package, package.Sheets.Single(s => s.Name == sheet), SharedStrings.Read(package));
    }

    /// <summary>The texts of a row, empty cells left out.</summary>
    public IReadOnlyList<string> Row(string sheet, int row)
    {
        var grid = Grid(sheet);
        return [.. Enumerable.Range(1, grid.LastColumnOf(row)).Select(c => FillRecord.TextOf(grid.Cell(row, c))).Where(t => t.Length > 0)];
    }

    /// <summary>A part as text.</summary>
    public string Part(string name)
    {
        using var package = BookPackage.Open(new MemoryStream(Bytes));
        return System.Text.Encoding.UTF8.GetString(package.Read(name));
    }

    /// <summary>The part of a sheet as text.</summary>
    public string SheetXml(string sheet) => Text(Bytes, sheet);

    /// <summary>The part of a sheet of any book as text.</summary>
    public static string Text(byte[] book, string sheet)
    {
        using var package = BookPackage.Open(new MemoryStream(book));
        return System.Text.Encoding.UTF8.GetString(package.Read(package.Sheets.Single(s => s.Name == sheet).PartName));
    }
}

/// <summary>Types values into cells of a book.</summary>
internal static class Typed
{
    public static byte[] Into(byte[] book, params (string Sheet, string Address, object? Value)[] cells)
    {
        using var package = BookPackage.Open(new MemoryStream(book));
        var edits = new BookEdits(package);
        foreach (var (sheet, address, value) in cells)
        {
            CellRef.TryParse(address, out var row, out var column).ShouldBeTrue();
            edits.Sheet(package.Sheets.Single(s => s.Name == sheet).PartName).Set(
                row, column, value is string text ? CellValue.Of(text) : CellValue.Of(value is null ? null : Convert.ToDouble(value, System.Globalization.CultureInfo.InvariantCulture)), null);
        }

        using var output = new MemoryStream();
        PackageWriter.Write(package, edits, output);
        return output.ToArray();
    }
}
