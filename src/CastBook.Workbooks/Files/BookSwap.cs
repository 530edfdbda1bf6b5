using CastBook.Planning.Findings;

namespace CastBook.Workbooks.Files;

/// <summary>The last step: the file that was made takes the book's place.</summary>
public static class BookSwap
{
    /// <summary>In the name of a book that was made and could not take the old one's place.</summary>
    public const string BesideMark = ".castbook";

    private static readonly TimeSpan[] Waits = [TimeSpan.FromMilliseconds(200), TimeSpan.FromMilliseconds(500), TimeSpan.FromSeconds(1)];

    /// <summary>Moves in one step; a virus scanner or an indexer may hold the target for a moment, so it is tried again.</summary>
    /// <param name="temporary">What was made.</param>
    /// <param name="target">Full path of the book.</param>
    internal static void Move(string temporary, string target) => Move(temporary, target, (from, to) => File.Move(from, to, overwrite: true), Thread.Sleep);

    /// <summary>As the other, with what moves and what waits handed in.</summary>
    internal static void Move(string temporary, string target, Action<string, string> move, Action<TimeSpan> wait)
    {
        foreach (var pause in Waits)
        {
            try
            {
                move(temporary, target);
                return;
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException)
            {
                wait(pause);
            }
        }

        try
        {
            move(temporary, target);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException && File.Exists(target))
        {
            var beside = Path.Combine(Path.GetDirectoryName(target)!, $"{Path.GetFileNameWithoutExtension(target)}{BesideMark}{Path.GetExtension(target)}");
            File.Move(temporary, beside, overwrite: true);
            throw BookNotWrittenException.For(Catalogue.BookLiesBeside, e, Path.GetFileName(target), e.Message, Path.GetFileName(beside));
        }
    }
}
