namespace CastBook.Workbooks.Words;

/// <summary>What the shop's own sheets say of themselves where they are added to a book that lacks them.</summary>
internal static class QuestionSheetWords
{
    public static string Shop => "Answer in the framed cells, save, and fill the book again.";

    public static string Flasks =>
        "A line for each size of flask you own. Sizes are inside sizes; the base height reaches up to where the first gate may stand; Per tree is for pieces without sizes.";

    public static string Materials => "What your patterns are made of. Type wax or resin, and the density you weighed and measured.";

    public static string Alloys => "Your alloys. Take the temperatures from the maker's data sheet; an empty cell is asked for where it matters.";

    public static string Crucibles =>
        "A line for each crucible. What it holds to the brim is weighed with water: 1 g is 1 ml; dry it well. Or type the maker's rating and the metal it means.";

    public static string Kilns =>
        "A line for each kiln you burn out in. Sizes are those of the floor that flasks can stand on; power stands on its plate; Cools is its fall in an hour with the door shut.";

    public static string Investments => "A line for each powder, from the maker's data sheet. What is left empty is counted as usual, and said.";

    public static string Schedules =>
        "Your burnout schedules, a line a stage: the same name on each of its lines. Without a rate, the way to the target counts as part of the hold.";
}
