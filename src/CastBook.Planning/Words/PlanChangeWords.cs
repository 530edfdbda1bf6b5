using CastBook.Planning.Findings;

namespace CastBook.Planning.Words;

/// <summary>What moves and what is saved where a plan is searched afresh.</summary>
internal static class PlanChangeWords
{
    public static string Flasks(int count) => count == 1 ? "a flask" : $"{Say.Count(count)} flasks";

    public static string KilnLoads(int count) => count == 1 ? "a kiln load" : $"{Say.Count(count)} kiln loads";

    public static string OfInvestment(string volume) => $"{volume} of investment";

    public static string OfBurnout(string hours) => $"{hours} of burnout";

    public static string Together(IEnumerable<string> saved) => string.Join(" and ", saved);

    public static string ForMore(string paid) => $", for {paid} more";

    public static string WouldMove(string pieces, string saved, string paid) => $"{pieces} would move and {saved} would be saved{paid}";

    public static string MoveForRoom(bool isOne, string pieces) => $"{pieces} {(isOne ? "moves" : "move")} so that everything finds room";

    public static string MoveAndSave(bool isOne, string pieces, bool savesSeveral, string saved, string paid) =>
        $"{pieces} {(isOne ? "moves" : "move")} and {saved} {(savesSeveral ? "are" : "is")} saved{paid}";
}
