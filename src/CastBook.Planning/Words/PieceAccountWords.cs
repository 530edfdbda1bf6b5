using CastBook.Planning.Findings;
using CastBook.Planning.Shops;

namespace CastBook.Planning.Words;

/// <summary>The accounts of a row of the list: its metal, its flask, its mix, its burnout.</summary>
internal static class PieceAccountWords
{
    // The metal of one piece.
    public static string MetalEach => "Metal each";

    public static string AsAPersonTyped => "as a person typed it into the cell";

    public static string WeightOrVolumeComesTo => "weight or volume comes to";

    public static string WorkedOut => "worked out";

    public static string FinishedAsTyped => "the weight of the finished metal as typed";

    public static string ByVolume(bool learnt) => $"pattern volume × alloy density{ByLearnt(learnt)}";

    public static string ByWeight(bool supports, bool learnt) =>
        $"pattern weight{(supports ? " × (1 − supports share)" : "")} ÷ pattern density × alloy density{ByLearnt(learnt)}";

    public static string EqualVolumes =>
        "solid patterns without stones; about 3 % above the finished casting, because metal shrinks as it cools. Tree, button and melt loss are apart";

    // What it is worked out from.
    public static string PatternVolume => "pattern volume";

    public static string Weight => "weight";

    public static string WeightsAreOf => "weights are of";

    public static string FinishedMetal => "finished metal";

    public static string Pattern => "pattern";

    public static string HeadingOfWeights => "the heading of the weights";

    public static string SupportsShare => "supports share";

    public static string PatternDensity => "pattern density";

    public static string FromCube => "from the cube that was weighed";

    public static string LearntFromCastings => "learnt from castings";

    public static string LinesTyped(int lines) => $"{Say.Count(lines, "line", "lines")} in which Metal each was typed";

    // The metal of the row.
    public static string Metal => "Metal";

    public static string EachTimesQuantity => "metal each × quantity";

    public static string MetalOfOne => "metal each";

    public static string Quantity => "quantity";

    public static string PiecesAlone => "the pieces alone; tree, button and melt loss are in the charge of the flask";

    // Its flask.
    public static string Flask => "Flask";

    public static string FlaskRule =>
        "one alloy and one range of flask temperature to a flask, stones apart; trees under way, wishes for a flask and what is due first, then the best by the order of wishes that the search found";

    public static string InOrder(IEnumerable<Shops.Wish> wishes) => string.Join("; ", wishes.Select(Wish));

    public static string AsUsual => "the usual order; nothing is typed";

    private static string Wish(Shops.Wish wish) => wish switch
    {
        Shops.Wish.Flasks => "flasks",
        Shops.Wish.Investment => "investment",
        Shops.Wish.KilnLoads => "kiln loads",
        Shops.Wish.Metal => "metal",
        _ => "like thicknesses",
    };

    // Both answers, where leaving every piece and planning afresh differ.
    public static string Choice(Stability choice) => choice switch
    {
        Stability.Keep => "keep",
        Stability.Worthwhile => "worthwhile",
        _ => "best",
    };

    public static string NothingMoves => "nothing moves";

    public static string EveryPieceStays => "every piece stays in the flask it was planned for";

    public static string With(Stability choice) => $"with \"{Choice(choice)}\"";

    public static string PlannedAfresh => "planned afresh, with as few moves as the search found";

    public static string WhatFits => "what fits on the tree with the shop's clearances, its crucible and its cup";

    public static string Alloy => "alloy";

    public static string KeepInFlask => "keep in flask";

    public static string Size => "size";

    // Its mix and its burnout.
    public static string SeveralFlasks => "the row is in several flasks: see their powder and water on the Night plan";

    public static string MixOf(string flask, string powder, string water) => $"powder of flask {flask}: {powder}; water: {water}";

    public static string BurnoutOf(string flask, string formula) => $"flask {flask}: {formula}";

    private static string ByLearnt(bool learnt) => learnt ? " × learnt from castings" : "";
}
