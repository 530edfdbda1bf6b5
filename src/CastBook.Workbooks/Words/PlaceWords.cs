using System.Globalization;

namespace CastBook.Workbooks.Words;

/// <summary>How a place in the book is called.</summary>
internal static class PlaceWords
{
    public static string Book => "the book";

    public static string Piece => "a piece";

    public static string List => "the list";

    public static string Flask(string letter) => $"flask {letter}";

    public static string Rows(int count, string rows) => $" and {(count == 1 ? "row" : "rows")} {rows}";

    public static string OfSheet(string sheet) => $" of {sheet}";

    public static string More(int more) => string.Create(CultureInfo.InvariantCulture, $" and {more} more");
}
