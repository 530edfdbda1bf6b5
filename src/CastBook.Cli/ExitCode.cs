namespace CastBook.Cli;

/// <summary>How a run ended. In 2 to 4 the file is as it was.</summary>
internal static class ExitCode
{
    /// <summary>Filled; what was found is in the book and in the summary.</summary>
    public const int Filled = 0;

    /// <summary>Only with <c>--strict</c>: filled, and at least one finding says stop.</summary>
    public const int Stops = 1;

    /// <summary>The command was wrong.</summary>
    public const int Usage = 2;

    /// <summary>The workbook could not be read.</summary>
    public const int NotRead = 3;

    /// <summary>The workbook could not be written.</summary>
    public const int NotWritten = 4;
}
