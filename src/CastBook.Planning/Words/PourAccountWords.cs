namespace CastBook.Planning.Words;

/// <summary>The accounts of a flask's temperatures and of its wait before the quench.</summary>
internal static class PourAccountWords
{
    public static string OfAlloy(string alloy, string input) => $"{alloy} {input}";

    // The metal.
    public static string Metal => "Metal temperature";

    public static string MetalRule => "the alloy's own";

    public static string MetalInput => "metal temperature";

    public static string MetalHolds => "this alloy as its maker made it; a data sheet that says otherwise comes first";

    // The flask.
    public static string Flask => "Flask temperature";

    public static string Fine => "fine";

    public static string Ordinary => "ordinary";

    public static string Heavy => "heavy";

    public static string FlaskRule(string sections) => $"the alloy's own for {sections} sections";

    public static string FlaskInput(string sections) => $"flask temp {sections}";

    public static string FlaskHolds(string sections) => $"{sections} sections, as the finest and heaviest sections of its pieces say";

    // The quench.
    public static string Quench => "Quench after";

    public static string NoQuench => "not at all: stones are in it";

    public static string Small => "small";

    public static string Medium => "medium";

    public static string Large => "large";

    public static string QuenchRule(string flasks) => $"the alloy's own in {flasks} flasks";

    public static string QuenchInput => "quench after";

    public static string QuenchHolds(string flasks) => $"{flasks} flasks, and only once the button shows no red in shade, whatever the clock says";
}
