namespace CastBook.Templates.Words;

/// <summary>What the sheet Flasks says of itself and what is typed in its columns.</summary>
internal static class FlasksWords
{
    public static string Purpose => "The flask sizes you own, a line a size.";

    public static string Size => "The name you know it by, such as 75 × 100.";

    public static string InsideDiameter => "Measured inside: nominal sizes are often outside.";

    public static string Height => "Height of the flask.";

    public static string Owned => "How many you have. Nothing is planned into a flask that nobody owns.";

    public static string Method => "How this size is cast. Empty: the method of the Shop sheet.";

    public static string Holds => "Inside volume measured with water. It wins over diameter and height.";

    public static string Powder => "Powder by your own chart. It wins over the computed weight.";

    public static string Water => "Water by your own chart.";

    public static string SprueDiameter => "Diameter of the trunk that pieces hang on.";

    public static string BaseHeight => "From the flask's rim to where the first gate may stand on the trunk.";

    public static string Cup => "Volume of the pouring cup that the sprue base forms. The button must fit in it.";

    public static string AboveTree => "Investment left above the tree. Empty: the usual clearance for the method, never under 12 mm.";

    public static string ToWall => "Investment left between pieces and wall. Empty: the usual clearance.";

    public static string PerTree => "How many pieces of unknown size a tree of this size takes. Used where a line has neither sizes nor its own Per tree.";
}
