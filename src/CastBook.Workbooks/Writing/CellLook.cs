using System.Globalization;

namespace CastBook.Workbooks.Writing;

/// <summary>How a cell of our own sheets looks.</summary>
/// <param name="Size">Size in points.</param>
/// <param name="Bold">Bold.</param>
/// <param name="Horizontal">Side to align to, as the file format names it.</param>
/// <param name="NumberFormat">Number format, where it holds numbers.</param>
/// <param name="Fill">Fill colour, where it has one.</param>
/// <param name="Border">Which lines it has.</param>
/// <param name="Wrap">Whether long text runs over several lines.</param>
/// <param name="Padded">Whether it stands off the line at its side, where that is not so by itself.</param>
/// <param name="Color">Colour of the text.</param>
internal sealed record CellLook(
    int Size = 11,
    bool Bold = false,
    string Horizontal = CellLook.Left,
    string? NumberFormat = null,
    string? Fill = null,
    Line Border = Line.None,
    bool Wrap = false,
    bool Padded = false,
    string Color = CellLook.Ink)
{
    /// <summary>Aligned to the left.</summary>
    public const string Left = "left";

    /// <summary>Aligned to the middle.</summary>
    public const string Centre = "center";

    /// <summary>Aligned to the right.</summary>
    public const string Right = "right";

    /// <summary>Ink.</summary>
    public const string Ink = "FF1F2A30";

    /// <summary>The one quiet band, behind headings.</summary>
    public const string Band = "FFE7ECEE";

    /// <summary>The one accent.</summary>
    public const string Accent = "FF2F6F73";

    /// <summary>Metal: a tenth of a gram under 100 g, else whole grams.</summary>
    public const string Grams = "[<99.95]0.0;#,##0";

    /// <summary>Whole numbers, thousands separated.</summary>
    public const string Whole = "#,##0";

    /// <summary>The sheet's title.</summary>
    public static CellLook Title { get; } = new(14, Bold: true);

    /// <summary>A line under the title, or where a number comes from.</summary>
    public static CellLook Small { get; } = new(9, Color: "FF4A575E");

    /// <summary>A heading over words.</summary>
    public static CellLook Heading { get; } = new(11, Bold: true, Fill: Band, Wrap: true);

    /// <summary>The first heading of a list, with our line at its left.</summary>
    public static CellLook FirstHeading { get; } = Heading with { Border = Line.Accent };

    /// <summary>A heading over numbers.</summary>
    public static CellLook NumberHeading { get; } = Heading with { Horizontal = Right };

    /// <summary>Words in a list.</summary>
    public static CellLook Text { get; } = new(Border: Line.Under, Wrap: true);

    /// <summary>A link in a list.</summary>
    public static CellLook Link { get; } = Text with { Color = Accent };

    /// <summary>Bold words in a list.</summary>
    public static CellLook Strong { get; } = Text with { Bold = true };

    /// <summary>A number in a list, in a format.</summary>
    /// <param name="format">The number format.</param>
    public static CellLook Number(string format) => new(Horizontal: Right, NumberFormat: format, Border: Line.Under);

    /// <summary>A number that is weighed or dialled.</summary>
    /// <param name="format">The number format.</param>
    public static CellLook Big(string format) => new(14, Bold: true, Horizontal: Right, NumberFormat: format, Border: Line.Under);

    /// <summary>The letter of a flask.</summary>
    public static CellLook Letter { get; } = new(16, Bold: true, Horizontal: Centre, Border: Line.Under);

    /// <summary>The letter to scratch into a mould.</summary>
    public static CellLook Mould { get; } = new(48, Bold: true, Horizontal: Centre);

    /// <summary>A framed cell for the shop to write in.</summary>
    public static CellLook Box { get; } = new(Border: Line.Frame);

    /// <summary>A framed cell for a weighing.</summary>
    public static CellLook BoxNumber { get; } = new(14, Horizontal: Right, NumberFormat: "0.0#", Border: Line.Frame);

    /// <summary>Where text stands in its row.</summary>
    public string Vertical => Fill is not null ? "bottom" : "center";

    /// <summary>Words stand a little off what is left of them, and off a line.</summary>
    public int Indent => Padded || (Horizontal == Left && (Fill is not null || Border != Line.None)) ? 1 : 0;

    /// <summary>The font element, <c>~</c> where the prefix belongs.</summary>
    public string FontXml
    {
        get
        {
            var size = Size.ToString(CultureInfo.InvariantCulture);
            return $"""<~font>{(Bold ? "<~b/>" : "")}<~sz val="{size}"/><~color rgb="{Color}"/><~name val="Calibri"/><~family val="2"/></~font>""";
        }
    }

    /// <summary>The border element, <c>~</c> where the prefix belongs.</summary>
    public string BorderXml => Border switch
    {
        Line.Accent => Lines(Accent, null, null, null, "thin"),
        Line.Under => Lines(null, null, null, "FFC9D2D6", "hair"),
        Line.Frame => Lines(Accent, Accent, Accent, Accent, "thin"),
        _ => Lines(null, null, null, null, "thin"),
    };

    private static string Lines(string? left, string? right, string? top, string? bottom, string style) =>
        $"<~border>{Side("left", left, style)}{Side("right", right, style)}{Side("top", top, style)}{Side("bottom", bottom, style)}<~diagonal/></~border>";

    private static string Side(string name, string? color, string style) =>
        color is null ? $"<~{name}/>" : $"""<~{name} style="{style}"><~color rgb="{color}"/></~{name}>""";
}

/// <summary>Which lines a cell of our own sheets has.</summary>
internal enum Line
{
    /// <summary>None.</summary>
    None,

    /// <summary>Our thin line at the left.</summary>
    Accent,

    /// <summary>A hair line below, between the rows of a list.</summary>
    Under,

    /// <summary>A frame: write here.</summary>
    Frame,
}
