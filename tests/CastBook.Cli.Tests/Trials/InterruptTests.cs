using System.Diagnostics;
using System.Text;
using CastBook.Cli.Tests.Watching;
using CastBook.Templates;
using ClosedXML.Excel;

namespace CastBook.Cli.Tests.Trials;

/// <summary>Ctrl+C during a long search, typed into a real terminal.</summary>
public sealed class InterruptTests : IDisposable
{
    // The demo night so many times over is searched for much longer than it takes to press a key.
    private const int Times = 12;

    private readonly Watched folder = new();

    public void Dispose() => folder.Dispose();

    [TerminalFact]
    public async Task Fill_CtrlCDuringTheSearch_WritesTheBestPlanSoFarAndSaysSo()
    {
        Multiply(folder.Of("large.xlsx"));
        var before = await File.ReadAllBytesAsync(folder.Of("large.xlsx"));
        var (exitCode, output) = await InTerminal(["fill", "large.xlsx"]);

        exitCode.ShouldBe(0, output);
        output.ShouldMatch(@"1,932 pieces in \d+ flasks \(search stopped, the best so far; no plan needs fewer than \d+\)");

        // Written whole, and given back byte for byte.
        using (var book = new XLWorkbook(folder.Of("large.xlsx")))
        {
            book.Worksheet("Trees").RowsUsed().Count().ShouldBeGreaterThan(7);
            book.Worksheet("Checks").CellsUsed().Select(c => c.GetString()).ShouldContain(
                t => t.Contains("The search for flasks was stopped before its end.", StringComparison.Ordinal));
        }

        CastBookRun.In(folder.Path, ["fill", "large.xlsx", "--undo"]).ExitCode.ShouldBe(0);
        (await File.ReadAllBytesAsync(folder.Of("large.xlsx"))).ShouldBe(before);
    }

    // A terminal of its own, in which Ctrl+C is typed as soon as the program says that it may be.
    // The shell gives way to the program: a shell that waits for it would hear Ctrl+C too, and some then end with 130 whatever the program says.
    private async Task<(int ExitCode, string Output)> InTerminal(string[] arguments)
    {
        var start = new ProcessStartInfo("script", ["-qec", $"exec {string.Join(' ', CastBookRun.Typed.Select(w => $"'{w}'"))} {string.Join(' ', arguments)}", "/dev/null"])
        {
            WorkingDirectory = folder.Path,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
        };
        start.Environment["XDG_CONFIG_HOME"] = folder.Path;
        using var process = Process.Start(start)!;
        var said = new StringBuilder();
        var typed = false;
        var buffer = new char[4096];
        using var tooLong = new CancellationTokenSource(TimeSpan.FromMinutes(2));
        tooLong.Token.Register(() => process.Kill(entireProcessTree: true));
        while (await process.StandardOutput.ReadAsync(buffer) is > 0 and var read)
        {
            said.Append(buffer, 0, read);
            if (!typed && said.ToString().Contains("Ctrl+C takes the best plan so far", StringComparison.Ordinal))
            {
                typed = true;
                await process.StandardInput.WriteAsync('\x03');
                await process.StandardInput.FlushAsync();
            }
        }

        await process.WaitForExitAsync();
        typed.ShouldBeTrue(said.ToString());
        return (process.ExitCode, said.ToString());
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
