namespace CastBook.Workbooks.Files;

/// <summary>How much a workbook may ask of the machine. Real workbooks stay far below; a file made to harm does not.</summary>
internal static class Caps
{
    /// <summary>Entries in the zip.</summary>
    public const int Entries = 10_000;

    /// <summary>Bytes of one part, counted while inflating because headers lie.</summary>
    public const long PartBytes = 512L << 20;

    /// <summary>Bytes of all parts together, counted while inflating.</summary>
    public const long BookBytes = 1L << 30;

    /// <summary>Below this size the compression ratio says nothing: style sheets of honest books pass 100 to 1.</summary>
    public const long RatioFrom = 64L << 20;

    /// <summary>Inflated to packed bytes, above <see cref="RatioFrom"/>.</summary>
    public const long Ratio = 200;

    /// <summary>Nesting of XML elements.</summary>
    public const int Depth = 256;

    /// <summary>Characters in a cell; the limit of the file format itself.</summary>
    public const int TextLength = 32_767;
}
