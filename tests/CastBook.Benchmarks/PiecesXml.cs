using System.Globalization;

namespace CastBook.Benchmarks;

/// <summary>The list of pieces of the large book.</summary>
internal static class PiecesXml
{
    private const uint Seed = 20_261u;
    private const int FirstDay = 46_357; // 1 December 2026 as an office program counts days

    private static readonly string[] Headings =
    [
        "Piece", "Customer", "Qty", "Pattern weight (g)", "Material", "Alloy", "Shape", "Length (mm)", "Width (mm)", "Thickness (mm)",
        "Finest section (mm)", "Heaviest section (mm)", "Gates", "Order", "Bench", "Price each", "Price", "Taken in", "Due", "Remark",
    ];

    private static readonly string[] Kinds = ["band", "stud", "pendant", "charm", "signet", "drop", "clasp", "buckle"];
    private static readonly string[] Customers = ["shop window", "harbour fair", "stock", "repair counter", "order book"];
    private static readonly string[] Remarks = ["polish inside first", "pair, keep together", "seal is cut later", "weigh again"];

    /// <summary>The sheet.</summary>
    /// <param name="rows">How many pieces.</param>
    /// <param name="strings">The book's strings.</param>
    public static string Make(int rows, StringTable strings)
    {
        var numbers = new Numbers(Seed);
        var sheet = new SheetText(strings, Headings.Length).Row();
        foreach (var heading in Headings)
        {
            sheet.Words(heading, style: 1);
        }

        for (var i = 0; i < rows; i++)
        {
            Piece(sheet.Row(), i + 2, numbers);
        }

        return sheet.ToXml();
    }

    private static void Piece(SheetText sheet, int row, Numbers numbers)
    {
        var kind = Kinds[numbers.Next(Kinds.Length)];
        var ring = kind is "band" or "signet";
        var quantity = numbers.Next(1, 5);
        var price = numbers.Next(500, 9_000) / 100.0;
        sheet.Words(Text($"{kind} {row - 1:00000}"))
            .Words(Customers[numbers.Next(Customers.Length)])
            .Number(quantity, style: 2)
            .Number(numbers.Next(8, 250) / 100.0, style: 3)
            .Words(numbers.Next(3) == 0 ? ShopRows.Wax : ShopRows.Resin)
            .Words(ShopRows.AlloyNames[numbers.Next(ShopRows.AlloyNames.Count)])
            .Words(ring ? "ring" : "other")
            .Number(ring ? numbers.Next(190, 240) / 10.0 : numbers.Next(80, 240) / 10.0, style: 5)
            .Number(ring ? numbers.Next(20, 70) / 10.0 : numbers.Next(60, 180) / 10.0, style: 5)
            .Number(numbers.Next(15, 40) / 10.0, style: 5);
        Sections(sheet, numbers);
        sheet.Words(Text($"W-{numbers.Next(1_000, 9_999)}"))
            .Words(Text($"bench {numbers.Next(1, 7)}"))
            .Number(price, style: 3)
            .Formula(Text($"C{row}*P{row}"), Math.Round(quantity * price, 2), style: 3)
            .Number(FirstDay - numbers.Next(1, 40), style: 4)
            .Number(FirstDay + numbers.Next(2, 30), style: 4);
        Remark(sheet, numbers);
    }

    private static void Sections(SheetText sheet, Numbers numbers)
    {
        if (numbers.Next(4) == 0)
        {
            sheet.Number(numbers.Next(12, 20) / 10.0, style: 5).Number(numbers.Next(20, 45) / 10.0, style: 5).Number(numbers.Next(1, 3), style: 2);
        }
        else
        {
            sheet.Nothing().Nothing().Nothing();
        }
    }

    private static void Remark(SheetText sheet, Numbers numbers)
    {
        if (numbers.Next(5) == 0)
        {
            sheet.Words(Remarks[numbers.Next(Remarks.Length)]);
        }
        else
        {
            sheet.Nothing();
        }
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
