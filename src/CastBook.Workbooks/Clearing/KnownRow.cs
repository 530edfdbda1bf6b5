namespace CastBook.Workbooks.Clearing;

/// <summary>A row as a new book holds it.</summary>
/// <param name="Sheet">The sheet's name.</param>
/// <param name="Values">What stands under each heading: a string, an int, a double or a <see cref="DateOnly"/>. Nothing stands under any other.</param>
public sealed record KnownRow(string Sheet, IReadOnlyDictionary<string, object> Values);
