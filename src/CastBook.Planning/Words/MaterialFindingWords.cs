namespace CastBook.Planning.Words;

/// <summary>What findings about pattern materials say beside their numbers.</summary>
internal static class MaterialFindingWords
{
    // A material that has no name.
    public static string Unnamed => "the pattern material";

    public static string SprueWax => "the sprue wax";

    // Where an answer is typed.
    public static string PatternDensityOnShop => "\"Pattern density\" on the Shop sheet";

    public static string DensityOnMaterials(string material) => $"the density of {material} on the Materials sheet";

    public static string SprueWaxDensityOnShop => "\"Sprue wax density\" on the Shop sheet";

    public static string PatternMaterialOnShop => "as \"Pattern material\" on the Shop sheet";

    public static string KindOnMaterials => "under Kind on the Materials sheet";

    // What a material wants before it hangs on the tree.
    public static string NoRinse => "no rinse in water";

    public static string Roughened => "a roughened surface where sprue wax is to hold";

    // What follows from a density that is open.
    public static string RunsAndMetalFollows(string least, string most) => $"{Runs(least, most)}, and the metal follows from it.";

    public static string RunsAndRowsTake(string least, string most, string rowsTake, string low, string high) =>
        $"{Runs(least, most)}: {rowsTake} from {low} to {high} of metal.";

    private static string Runs(string least, string most) => $"Such material runs from {least} to {most}";
}
