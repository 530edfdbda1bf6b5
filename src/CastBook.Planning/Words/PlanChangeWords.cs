namespace CastBook.Planning.Words;

/// <summary>What moves and what is saved where a plan is searched afresh.</summary>
internal static class PlanChangeWords
{
    public static string Flasks(int count, string number) => count == 1 ? "a flask" : $"{number} flasks";

    public static string OfInvestment(string volume) => $"{volume} of investment";

    public static string WouldMove(string pieces, string saved) => $"{pieces} would move and {saved} would be saved";

    public static string MoveForRoom(bool isOne, string pieces) => $"{pieces} {(isOne ? "moves" : "move")} so that everything finds room";

    public static string MoveAndSave(bool isOne, string pieces, bool savesSeveral, string saved) =>
        $"{pieces} {(isOne ? "moves" : "move")} and {saved} {(savesSeveral ? "are" : "is")} saved";
}
