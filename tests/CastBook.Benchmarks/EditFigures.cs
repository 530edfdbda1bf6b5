using System.Globalization;
using CastBook.Planning;
using CastBook.Planning.Shops;

namespace CastBook.Benchmarks;

/// <summary>Prints what becomes of a plan when little changes: how many pieces move, what that costs, and whether filling again changes nothing.</summary>
internal static class EditFigures
{
    /// <summary>Prints the answers: that which moves nothing, that which moves what is worthwhile, and that which is as cheap as planning afresh.</summary>
    /// <param name="pieces">How many pieces a night has.</param>
    /// <param name="nights">How many nights.</param>
    public static void Print(int pieces, int nights)
    {
        Print(pieces, nights, Stability.Keep);
        Print(pieces, nights, Stability.Worthwhile);
        Print(pieces, nights, Stability.Best);
    }

    /// <summary>What a plan costs: a flask counts as much as a litre of investment.</summary>
    /// <param name="plan">The plan.</param>
    public static double Cost(NightPlan plan) => plan.Flasks.Sum(f =>
        1000 + (Math.PI / 4 * Math.Pow(f.Size.InsideDiameter!.Value.Centimeters, 2) * f.Size.Height!.Value.Centimeters));

    private static void Print(int pieces, int nights, Stability choice)
    {
        var (moved, cost, afresh, same) = (new List<int>(), 0.0, 0.0, 0);
        using var again = new SearchTime();
        using var fresh = new SearchTime();
        for (var seed = 1; seed <= nights; seed++)
        {
            var night = InventedNight.Mixed(pieces, seed);
            night = night with { Shop = night.Shop with { Settings = night.Shop.Settings with { WhenLittleChanged = choice } } };
            var edited = InventedNight.Edited(night, NightPlanner.Plan(night), seed);
            var plan = NightPlanner.Plan(edited, new PlanSearch(CancellationToken.None, again));
            moved.Add(edited.Pieces.Sum(p => Moved(p, plan.Pieces[p.Id].Flasks)));
            cost += Cost(plan);
            afresh += Cost(NightPlanner.Plan(edited with { Trees = [] }, new PlanSearch(CancellationToken.None, fresh)));
            same += Written(NightPlanner.Plan(InventedNight.Standing(edited, plan))) == Written(plan) ? 1 : 0;
        }

        if (nights > 0)
        {
            Console.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"{pieces} pieces, 2 cancelled and 3 more, {choice.ToString().ToUpperInvariant()}: {moved.Average():0.0} others moved on average ({string.Join(' ', moved)}), cost {100 * ((cost / afresh) - 1):+0.00;-0.00} % beside planning afresh, the same when filled again {same} of {nights}, {again.Milliseconds / nights:#,##0} ms each beside {fresh.Milliseconds / nights:#,##0} ms afresh"));
        }
    }

    private static int Moved(Piece piece, IReadOnlyList<FlaskShare> now) =>
        Math.Min(piece.Quantity!.Value, piece.LastFlasks.Sum(s => s.Quantity))
        - Math.Min(piece.Quantity.Value, piece.LastFlasks.Sum(s => Math.Min(s.Quantity, now.FirstOrDefault(f => f.Flask == s.Flask).Quantity)));

    private static string Written(NightPlan plan) => string.Join('\n', plan.Flasks.Select(f =>
        $"{f.Letter} {f.Size.Name} {string.Join(' ', f.Columns.Select(c => string.Join(',', c.Pieces.Select(p => $"{p.PieceId}x{p.Quantity}"))))}"));
}
