namespace CastBook.Templates.Words;

/// <summary>What the sheet Materials says of itself and what is typed in its columns.</summary>
internal static class MaterialsWords
{
    public static string Purpose => "What your patterns are made of.";

    public static string Material => "The name you use in the list of pieces.";

    public static string Kind => "wax melts out, resin burns out.";

    public static string Density => "Solid and cured. Weigh a solid test cube and divide by its volume, or take it from the maker's data sheet.";

    public static string CubeWeighs => "A solid test cube, washed and cured: its density is learnt from it where none is given.";

    public static string CubeEdge => "The edge of that cube as a caliper reads it; 20 mm or more.";

    public static string PrintAtLeast => "The coldest resin that prints well, from the maker's data sheet.";

    public static string WashAtMost => "The longest wash, all baths together.";

    public static string EachBathAtMost => "The longest time in one bath of the wash.";

    public static string CureEachSide => "The shortest cure of each side.";

    public static string WaterRinse => "no where its maker allows none.";

    public static string Roughen => "yes where the surface is roughened so that sprue wax holds.";
}
