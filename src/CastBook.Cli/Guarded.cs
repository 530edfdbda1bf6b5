using CastBook.Cli.Words;
using CastBook.Workbooks.Files;
using CastBook.Workbooks.Settings;
using CastBook.Workbooks.Verifying;

namespace CastBook.Cli;

/// <summary>Runs what reads or writes a workbook, for every command that does.</summary>
internal static class Guarded
{
    /// <summary>Runs it; what is wrong with the book is said in one line.</summary>
    /// <param name="errors">Where it is said.</param>
    /// <param name="run">What to run.</param>
    /// <returns>The exit code: that of the run, or the one for what went wrong.</returns>
    public static int Run(TextWriter errors, Func<int> run)
    {
        try
        {
            return run();
        }
        catch (AskedHourException e)
        {
            errors.WriteLine(ProgramWords.Complaint(ClockOption.Mistake(e.Hour, e.IsSkipped)));
            return ExitCode.Usage;
        }
        catch (BookRefusedException e)
        {
            errors.WriteLine(ProgramWords.Complaint(e.Message));
            return ExitCode.NotRead;
        }
        catch (Exception e) when (e is BookNotWrittenException or BrokenOutputException)
        {
            errors.WriteLine(ProgramWords.Complaint(e.Message));
            return ExitCode.NotWritten;
        }
    }
}
