using CastBook.Templates.Demo;
using CastBook.Templates.Sheets;
using CastBook.Templates.Writing;

namespace CastBook.Templates;

/// <summary>A casting night of the Wrenmoor Foundry, an invented shop: a book as a shop really keeps one, with its slips.</summary>
public static class DemoNight
{
    private static readonly string[] TitleLines =
    [
        "Wrenmoor Foundry – casting night",
        "Tuesday 1 December 2037. Weighed as they go on the tree, supports off.",
    ];

    /// <summary>Writes the book.</summary>
    /// <param name="output">Where the .xlsx goes; left open.</param>
    /// <exception cref="ArgumentNullException"><paramref name="output"/> is null.</exception>
    public static void Write(Stream output)
    {
        ArgumentNullException.ThrowIfNull(output);
        NewBookWriter.Write(Content(), output);
    }

    private static BookContent Content() => new("Wrenmoor Foundry, casting night", [],
    [
        new SheetContent(WrenmoorPieces.Spec, WrenmoorPieces.Rows) { TitleLines = TitleLines },
        .. ShopSheets.All.Skip(1).Select(spec => new SheetContent(spec, WrenmoorShop.Rows(spec))),
    ]);
}
