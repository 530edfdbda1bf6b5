using System.Globalization;
using System.Security;
using CastBook.Workbooks.Reading;

namespace CastBook.Workbooks.Tests.Fidelity.RandomBooks;

/// <summary>Cells of a random sheet, each in one of the ways cells are written.</summary>
internal sealed class RandomCells(RandomBook book, int sheet)
{
    private static readonly string[] Needed = ["Piece", "Qty", "Pattern weight (g)", "Material", "Alloy"];
    private static readonly string[] Extras = ["Customer", "Bench\nnote", "Price", "Due", "Polished", "Bin"];
    private static readonly string[] Names = ["Otter ring", "=Bell clapper", "_x000D_ clasp", " Gull stud ", "Fern & moth <2>", "Röhre\r\nlang", "Tide bell"];

    private string? shared;

    public List<string> Headings { get; } = [];

    /// <summary>Whether cells are counted instead of addressed; only where none is left out.</summary>
    public bool AreCounted { get; set; }

    public void ChooseHeadings()
    {
        Headings.AddRange(Needed);
        foreach (var extra in Extras.Where(_ => book.Chance(40)))
        {
            Headings.Insert(book.Random.Next(Headings.Count + 1), extra);
        }
    }

    public string Text(int row, int column, string text) => book.Random.Next(3) switch
    {
        0 => Cell(row, column, " t=\"s\"", $"<~v>{book.Texts.Add(text)}</~v>"),
        1 => Cell(row, column, " t=\"str\"", $"<~v>{Escape(text)}</~v>"),
        _ => Cell(row, column, " t=\"inlineStr\"", $"<~is><~t xml:space=\"preserve\">{Escape(text)}</~t></~is>"),
    };

    public string Number(int row, int column, double number) =>
        Cell(row, column, "", $"<~v>{number.ToString(book.Chance(20) ? "E16" : "R", CultureInfo.InvariantCulture)}</~v>");

    public string Any(int row, int column) => book.Random.Next(6) switch
    {
        0 => Cell(row, column, " t=\"e\"", "<~v>#N/A</~v>"),
        1 => Cell(row, column, " t=\"b\"", "<~v>1</~v>"),
        2 => Formula(row, column, "1+1", 2),
        3 => Cell(row, column, "", ""),
        4 => Text(row, column, " a  b "),
        _ => Number(row, column, 12.5),
    };

    /// <summary>An array formula over a range.</summary>
    public string Array(int row, int column, string range)
    {
        book.Formulas.Add((sheet, CellRef.AddressOf(row, column)));
        return Cell(row, column, "", $"<~f t=\"array\" ref=\"{CellRef.AddressOf(row, column)}\">COUNTA({range})</~f><~v>3</~v>");
    }

    public string Of(string heading, int row, int column, int firstRow, int lastRow) => heading switch
    {
        "Piece" => Text(row, column, Names[book.Random.Next(Names.Length)]),
        "Qty" => Number(row, column, book.Random.Next(1, 20)),
        "Pattern weight (g)" when book.Chance(15) => Text(row, column, "3.1"),
        "Pattern weight (g)" => Number(row, column, book.Random.Next(20, 900) / 100d),
        "Material" => Text(row, column, book.Chance(70) ? "castable wax" : "harbour resin"),
        "Alloy" => Text(row, column, book.Chance(60) ? "sterling" : "house bronze"),
        "Price" => SharedFormula(row, column, $"{CellRef.AddressOf(firstRow, column)}:{CellRef.AddressOf(lastRow, column)}"),
        "Due" => Cell(row, column, book.HasStyles ? " s=\"1\"" : "", "<~v>46084</~v>"),
        "Polished" => Cell(row, column, " t=\"b\"", "<~v>0</~v>"),
        _ => book.Chance(40) ? Cell(row, column, "", "") : Any(row, column),
    };

    private static string Escape(string text) => SecurityElement.Escape(text).Replace("\r", "&#13;", StringComparison.Ordinal);

    private string SharedFormula(int row, int column, string range)
    {
        book.Formulas.Add((sheet, CellRef.AddressOf(row, column)));
        var formula = shared is null ? $"<~f t=\"shared\" ref=\"{range}\" si=\"0\">ROW()*2</~f>" : "<~f t=\"shared\" si=\"0\"/>";
        shared = range;
        return Cell(row, column, "", $"{formula}<~v>{row * 2}</~v>");
    }

    private string Formula(int row, int column, string formula, double value)
    {
        book.Formulas.Add((sheet, CellRef.AddressOf(row, column)));
        return Cell(row, column, "", $"<~f>{Escape(formula)}</~f><~v>{value.ToString(CultureInfo.InvariantCulture)}</~v>");
    }

    private string Cell(int row, int column, string attributes, string content)
    {
        var style = attributes.Contains(" s=", StringComparison.Ordinal) || book.Chance(70) ? "" : $" s=\"{book.Random.Next(5)}\"";
        var place = AreCounted ? "" : $" r=\"{CellRef.AddressOf(row, column)}\"";
        var tag = $"<~c{place}{(book.HasStyles ? style : "")}{attributes}";
        return content.Length == 0 ? tag + "/>" : $"{tag}>{content}</~c>";
    }
}
