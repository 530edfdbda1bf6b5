namespace CastBook.Workbooks.Words;

/// <summary>Where a setting was said, as accounts and findings name it.</summary>
internal static class OriginWords
{
    public static string CommandLine => "the command line";

    public static string ShopSheet => "the Shop sheet";

    public static string ShopFile(string name, string place) => $"the shop file {name}, {place}";

    public static string InYourFolder(string file) => $"{file} in your own folder";

    public static string BesideTheBook(string file) => $"{file} beside the book";

    public static string Variable(string name) => $"the variable {name}";

    // Where a unit of answers comes from that nobody asked for.
    public static string UnitOfWeights(string unit) => $"{unit}, in which the weights of the list stand";

    public static string UnitOfPowder(string unit) => $"{unit}, in which the shop's powder stands";

    public static string UnitOfSizes(string unit) => $"{unit}, in which the sizes of the list stand";

    public static string UnitAsSizes(string unit) => $"{unit}, as the sizes of the list stand in inches";

    public static string UnitOfTemperatures(string unit) => $"{unit}, in which the temperatures of the book stand";
}
