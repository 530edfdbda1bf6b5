using System.Globalization;

namespace CastBook.Workbooks.Words;

/// <summary>What the sheet Trees says: its lines, the block of each flask and the drawings in it.</summary>
internal static class TreesSheetWords
{
    public static string Sheet => "Trees";

    public static string Title(string book) => $"Trees: {book}";

    public static string Under => "Weigh the sprue base alone, then with the tree on it, and type both; State from waxed on keeps the tree as it is.";

    // Headings; those of the cells that are the shop's are known again by these words.
    public static string State => "State";

    public static string[] Weighings(string unit) => [$"Base ({unit})", $"Tree on base ({unit})", $"Of it wax ({unit})"];

    public static string[] Headings(string weighedIn, string metal) => ["Flask", "Size", "Alloy", "Pieces", .. Weighings(weighedIn), State, $"Charge ({metal})", "from"];

    public static string SeeChecks => "see Checks";

    // The block of a flask.
    public static string[] BlockHeadings(string metal, string powder, string degrees) =>
    [
        "Tree", "Alloy", "Size", "Pieces", $"Charge ({metal})", $"Powder ({powder})", $"Metal ({degrees})", $"Flask ({degrees})", "Quench after (min)",
    ];

    public static string NotDrawnSizes => "Not drawn: the sizes of some of its pieces are not known.";

    public static string NotDrawnBuilt => "Not drawn: the tree is built.";

    // What keeps more out of a flask.
    public static string AllAreIn => "All pieces that could share this flask are in it.";

    public static string HasRoom => "There is room for more here.";

    public static string FullRound => "Full round the trunk: no piece of another flask finds a place beside these.";

    public static string FullAlong => "Full along the trunk: what is left of its length is too short for the pieces of other flasks.";

    public static string FullByCrucible => "Full by metal: the crucible takes no more.";

    public static string FullByCup => "Full by metal: the cup takes no larger button.";

    public static string OtherTemperature => "The pieces of other flasks need another flask temperature.";

    public static string SmallerInUse => "A smaller flask would do, but all of them are in use.";

    // What hangs on the tree.
    public static string Number(int number) => string.Create(CultureInfo.InvariantCulture, $"no. {number}");

    public static string Column(int number) => string.Create(CultureInfo.InvariantCulture, $"column {number}");

    public static string HowColumnsCount => "Columns count clockwise, seen from above with the base below; degrees are from the middle of column 1.";

    public static string At(double degrees) => string.Create(CultureInfo.InvariantCulture, $"at {degrees:0}°: ");

    public static string DrawnAtTheRight => " (drawn at the right)";

    public static string DrawnAtTheLeft => " (drawn at the left)";

    public static string Run(int number, int quantity, IEnumerable<string> gates, string unit) =>
        string.Create(CultureInfo.InvariantCulture, $"no. {number} ×{quantity}, {(quantity == 1 ? "gate" : "gates")} {string.Join(", ", gates)} {unit} above the base");

    public static string Piece(string name, string customer, int quantity) => string.Create(
        CultureInfo.InvariantCulture, $"{(name.Length == 0 ? "unnamed" : name)}{(customer.Length == 0 ? "" : $" for {customer}")} ×{quantity}");

    public static string Hung(string piece, string wayUp, string gate, string unit, double toTrunkDegrees) =>
        string.Create(CultureInfo.InvariantCulture, $"{piece}: {wayUp}, gate {gate} {unit} long, {toTrunkDegrees:0}° to the trunk");

    public static string RingUpright => "ring upright in line with the trunk";

    public static string OnItsEdge => "on its edge";

    public static string Flat => "flat";

    // The drawings.
    public static string FromSide(string flask) => $"tree {flask} from the side";

    public static string FromSideTells(string flask, int right) =>
        string.Create(CultureInfo.InvariantCulture, $"Tree {flask} from the side, the button below: column {right} at the right.");

    public static string FromSideTells(string flask, int right, int left) =>
        string.Create(CultureInfo.InvariantCulture, $"Tree {flask} from the side, the button below: column {right} at the right, column {left} at the left.");

    public static string FromAbove(string flask) => $"tree {flask} from above";

    public static string FromAboveTells(string flask, int columns) =>
        string.Create(CultureInfo.InvariantCulture, $"Tree {flask} from above: {columns} columns round the trunk, numbered clockwise from the right.");
}
