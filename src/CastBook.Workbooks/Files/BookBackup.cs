namespace CastBook.Workbooks.Files;

/// <summary>A dated copy of a book.</summary>
/// <param name="Path">Where it lies.</param>
/// <param name="Made">When it was made, by the clock of the computer that made it.</param>
/// <param name="Length">Its bytes.</param>
public sealed record BookBackup(string Path, DateTime Made, long Length);
