namespace CastBook.Cli.Watching;

/// <summary>A workbook as it lies in a watched folder.</summary>
/// <param name="Path">Its path.</param>
/// <param name="Length">Its bytes.</param>
/// <param name="Written">When it was written, UTC.</param>
internal sealed record SeenBook(string Path, long Length, DateTime Written)
{
    /// <summary>Its name.</summary>
    public string Name => System.IO.Path.GetFileName(Path);
}
