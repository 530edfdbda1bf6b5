namespace CastBook.Templates.Words;

/// <summary>What the sheet Kilns says of itself and what is typed in its columns.</summary>
internal static class KilnsWords
{
    public static string Purpose => "The kilns you burn out in.";

    public static string Kiln => "The name you know it by.";

    public static string Shape => "Shape of the floor: square (any rectangle) or round.";

    public static string InsideWidth => "Usable width of the floor.";

    public static string InsideDepth => "Usable depth of the floor.";

    public static string InsideDiameter => "Usable diameter of a round floor.";

    public static string Power => "Electrical power, from the plate.";

    public static string Cools => "How fast it cools with the door shut, as you have timed it.";

    public static string ReadsHighBy => "By how much its controller shows more than a second thermometer. Minus where it shows less.";
}
