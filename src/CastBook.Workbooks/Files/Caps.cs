namespace CastBook.Workbooks.Files;

/// <summary>How much a workbook may ask of the machine. Real workbooks stay far below; a file made to harm does not.</summary>
public sealed record Caps
{
    /// <summary>Nesting of XML elements.</summary>
    internal const int Depth = 256;

    /// <summary>Characters in a cell; the limit of the file format itself.</summary>
    internal const int TextLength = 32_767;

    /// <summary>Below this size the compression ratio says nothing: style sheets of honest books pass 100 to 1.</summary>
    internal const long RatioFrom = 64L << 20;

    /// <summary>What holds where a shop says nothing.</summary>
    public static Caps Usual { get; } = new();

    /// <summary>Entries in the zip.</summary>
    public int Parts { get; init; } = 10_000;

    /// <summary>Megabytes of one part, counted while inflating because headers lie.</summary>
    public int PartMegabytes { get; init; } = 512;

    /// <summary>Megabytes of all parts together, counted while inflating.</summary>
    public int BookMegabytes { get; init; } = 1024;

    /// <summary>Inflated to packed bytes of a part of more than 64 MB.</summary>
    public int TimesPacked { get; init; } = 200;
}
