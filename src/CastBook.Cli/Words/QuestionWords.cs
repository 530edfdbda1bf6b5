using System.Globalization;

namespace CastBook.Cli.Words;

/// <summary>The questions of <c>castbook adopt</c>. What an answer is offered as, and the colon, come after a question by themselves.</summary>
internal static class QuestionWords
{
    // Before the first one.
    public static string Begins => "What only you know. Enter alone leaves a question open; filling the book asks again.";

    public static string BeginsAgain => "What only you know. Enter alone keeps what stands in [ ]; another answer takes its place.";

    // The list.
    public static string WhichColumn(string meaning) => $"Which column holds {meaning}? Its letter";

    public static string WhichColumn(string meaning, string near) => $"Which column holds {meaning}? Its letter; {near} comes near";

    public static string Weights => "What does the weight column weigh";

    public static string WeightsInclude => "Are pieces weighed alone, or with their gates and sprue on";

    public static string Supports => "How much of that weight is supports that are cut off later, in % (0 for none)";

    public static string QuantityWhereNone => "How many of each piece, where the list does not say (1 for one of each)";

    public static string AlloyWhereNone => "What all of it is cast in, where the list does not say";

    // The alloys.
    public static string AlloyIs(string name) => $"Your \"{name}\" is";

    // The pattern material.
    public static string Material => "Your usual pattern material, by the name you know it by";

    public static string MaterialKind => "  Is it";

    public static string MaterialDensity => "  Its density, solid and cured, in g/cm³ (open: by a test cube)";

    public static string CubeWeighs => "  A solid test cube of it weighs, in g";

    public static string CubeEdge => "  Its edge as a caliper reads it, in mm";

    // How it is cast, and in what.
    public static string CastingMethod => "How do you cast";

    /// <summary>The letter by which a flask is changed.</summary>
    public static string ChangeIt => "c";

    public static string KeepFlask(string flask) => $"Flask {flask}: Enter keeps it, {ChangeIt} changes it";

    public static string KeepFlask(string flask, int owned) => string.Create(CultureInfo.InvariantCulture, $"Flask {flask}, {owned} owned: Enter keeps it, {ChangeIt} changes it");

    public static string FirstFlask(string unit) => $"A flask you own: inside diameter in {Word(unit)}, or such as {Other(unit)} (Enter: no more)";

    public static string NextFlask(string unit) => $"Another flask you own: inside diameter in {Word(unit)}, or such as {Other(unit)} (Enter: no more)";

    public static string FlaskDiameter(string unit) => $"  Its inside diameter, in {Word(unit)}";

    public static string FlaskHeight(string unit) => $"  Its height, in {Word(unit)}";

    public static string FlasksOwned => "  How many you own";

    public static string SprueDiameter(string unit) => $"  Diameter of the trunk that pieces hang on, in {Word(unit)}";

    public static string BaseHeight(string unit) => $"  From the rim to where the first gate may stand, in {Word(unit)}";

    // Crucible and kiln; a line of the shop file is called so until the shop gives it a name.
    public static string CrucibleHolds => "What your crucible holds to the brim, in ml (weigh water: 1 g is 1 ml; dry it well)";

    public static string CrucibleName => "crucible";

    public static string KilnFloor => "Is the floor of your kiln";

    public static string KilnDiameter(string unit) => $"  Its usable diameter, in {Word(unit)}";

    public static string KilnWidth(string unit) => $"  Its usable width, in {Word(unit)}";

    public static string KilnDepth(string unit) => $"  Its usable depth, in {Word(unit)}";

    public static string KilnName => "kiln";

    // After an answer that is none.
    public static string TypeLetter(IEnumerable<string> letters, bool isOpen) => $"  Type one of {string.Join(", ", letters)}. {EnterAlone(isOpen)}";

    public static string TypeWord(string offered, bool isOpen) => $"  Type one of the words or its number: {offered}. {EnterAlone(isOpen)}";

    public static string TypeCount(bool isOpen) => $"  Type the number in digits, such as 4. {EnterAlone(isOpen)}";

    public static string TypeNumber(string unit, bool isOpen) => $"  Type the number in digits, such as 12.4 or 1500, in {Word(unit)}. {EnterAlone(isOpen)}";

    public static string NotLikely(double number, double least, double most, string unit) => string.Create(
        CultureInfo.InvariantCulture, $"  {number:0.###} {unit} is not likely here: between {least:0.###} and {most:0.###} is usual.{InAnother(unit)}");

    // "in in" reads like a slip.
    private static string Word(string unit) => unit == "in" ? "inches" : unit;

    // Only lengths are typed in another unit by mistake.
    private static string InAnother(string unit) => unit is "mm" or "in" ? $" Type another unit with the number, such as {Other(unit)}." : "";

    private static string Other(string unit) => unit == "in" ? "89 mm" : "3 1/2 in";

    private static string EnterAlone(bool isOpen) => isOpen ? "Enter alone leaves it open." : "Enter alone keeps it as it was.";
}
