using System.Diagnostics;
using System.Globalization;
using CastBook.Cli.Tests.Watching;
using CastBook.Templates;
using ClosedXML.Excel;

namespace CastBook.Cli.Tests.Trials;

/// <summary>Ctrl+C during a long search, pressed for real: the signal that a terminal sends.</summary>
public sealed class InterruptTests : IDisposable
{
    // The demo night so many times over is searched for much longer than it takes to press a key.
    private const int Times = 30;

    // Bit 1 of the signals a process catches is SIGINT.
    private const ulong Interrupt = 2;

    private readonly Watched folder = new();

    public void Dispose() => folder.Dispose();

    [LinuxFact]
    public void Fill_CtrlCDuringTheSearch_WritesTheBestPlanSoFarAndSaysSo()
    {
        Multiply(folder.Of("large.xlsx"));
        var before = File.ReadAllBytes(folder.Of("large.xlsx"));
        using var process = CastBookRun.Start(folder.Path, ["fill", "large.xlsx"]);
        var errors = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEndAsync();
        WaitUntilCaught(process);

        using (var kill = Process.Start("kill", ["-INT", process.Id.ToString(CultureInfo.InvariantCulture)]))
        {
            kill.WaitForExit();
        }

        process.WaitForExit();
        process.ExitCode.ShouldBe(0, errors.GetAwaiter().GetResult());
        output.GetAwaiter().GetResult().ShouldContain(
            "The search for flasks was stopped before its end. The flasks are the best found by then; fewer or smaller ones may do. Fill again and let it end.");

        // Written whole, and given back byte for byte.
        using (var book = new XLWorkbook(folder.Of("large.xlsx")))
        {
            book.Worksheet("Trees").RowsUsed().Count().ShouldBeGreaterThan(7);
        }

        CastBookRun.In(folder.Path, ["fill", "large.xlsx", "--undo"]).ExitCode.ShouldBe(0);
        File.ReadAllBytes(folder.Of("large.xlsx")).ShouldBe(before);
    }

    private static void WaitUntilCaught(Process process)
    {
        while (!process.HasExited)
        {
            var caught = File.ReadLines($"/proc/{process.Id}/status").First(l => l.StartsWith("SigCgt:", StringComparison.Ordinal))[7..].Trim();
            if ((ulong.Parse(caught, NumberStyles.HexNumber, CultureInfo.InvariantCulture) & Interrupt) != 0)
            {
                return;
            }

            Thread.Sleep(20);
        }
    }

    private static void Multiply(string path)
    {
        using var demo = new MemoryStream();
        DemoNight.Write(demo);
        demo.Position = 0;
        using var book = new XLWorkbook(demo);
        Multiply(book.Worksheet("Pieces"), "Qty");
        Multiply(book.Worksheet("Flasks"), "Owned");
        book.SaveAs(path);
    }

    private static void Multiply(IXLWorksheet sheet, string heading)
    {
        var head = sheet.CellsUsed(c => c.GetString() == heading).First();
        foreach (var row in sheet.RowsUsed().Where(r => r.RowNumber() > head.Address.RowNumber))
        {
            var cell = row.Cell(head.Address.ColumnNumber);
            if (cell.DataType == XLDataType.Number)
            {
                cell.SetValue(cell.GetDouble() * Times);
            }
        }
    }
}
