namespace CastBook.Templates.Words;

/// <summary>What the sheet Alloys says of itself and what is typed in its columns.</summary>
internal static class AlloysWords
{
    public static string Purpose => "The alloys you cast and what you have of them. Your supplier's data sheet comes first.";

    public static string Alloy => "The name you use in the list of pieces.";

    public static string Composition => "Parts per thousand, such as Ag 925 Cu 75.";

    public static string Density => "From the supplier's data sheet. Metal weights depend on it.";

    public static string Solidus => "Where melting begins.";

    public static string Liquidus => "Where melting ends.";

    public static string MetalTemp => "The temperature you pour at.";

    public static string FlaskTempFine => "Flask temperature for fine sections.";

    public static string FlaskTempOrdinary => "Flask temperature for ordinary work.";

    public static string FlaskTempHeavy => "Flask temperature for heavy sections.";

    public static string QuenchAfter => "Wait between pour and quench: one number, or small/medium/large flasks such as 8/15/20.";

    public static string Loss => "Lost in melting, where it differs from the Shop sheet.";

    public static string Fresh => "Fresh metal in the drawer.";

    public static string ReMelt => "Clean re-melt of this alloy in the drawer.";

    public static string Price => "In your own currency.";
}
