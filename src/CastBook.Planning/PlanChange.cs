using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Planning.Words;
using UnitsNet;

namespace CastBook.Planning;

/// <summary>What searching afresh makes of a plan that stands in the book.</summary>
/// <param name="IsKept">Whether every piece was left where it was; otherwise the plan was searched afresh.</param>
/// <param name="Moved">How many pieces the search afresh puts into other flasks than they stood in.</param>
/// <param name="FlasksSaved">How many flasks it saves; less than 0 where it takes more, 0 where pieces move because all would not fit otherwise.</param>
/// <param name="InvestmentSaved">How much investment it saves, by the inside of the flasks; less than 0 where it takes more.</param>
public sealed record PlanChange(bool IsKept, int Moved, int FlasksSaved, Volume InvestmentSaved)
{
    // Less investment than this is not worth a word.
    private const double LeastMl = 1;

    /// <summary>How many kiln loads it saves; less than 0 where it takes more.</summary>
    public int LoadsSaved { get; init; }

    /// <summary>How much shorter the burnouts of all loads are together; less than 0 where they are longer.</summary>
    public Duration BurnoutSaved { get; init; }

    /// <summary>What more it would save to move pieces that do not move, where each of them would save too little to be worthwhile; nothing otherwise.</summary>
    public PlanChange? Left { get; init; }

    /// <summary>Whether pieces moved because all would not fit otherwise, so that there was nothing to choose.</summary>
    public bool IsForced => !IsKept && FlasksSaved == 0 && InvestmentSaved <= Volume.Zero && LoadsSaved == 0 && BurnoutSaved <= Duration.Zero;

    /// <summary>Whether it saves anything that is worth a move.</summary>
    /// <param name="little">As little investment as moves nothing.</param>
    internal bool IsWorthAWord(Volume little) => FlasksSaved > 0 || InvestmentSaved.Milliliters >= Math.Max(LeastMl, little.Milliliters)
        || LoadsSaved > 0 || (LoadsSaved == 0 && BurnoutSaved > Duration.Zero);

    /// <summary>Both in words, such as "3 pieces would move and a flask would be saved".</summary>
    /// <param name="unit">The unit of volumes.</param>
    public string Words(WrittenVolume unit)
    {
        ArgumentNullException.ThrowIfNull(unit);
        var pieces = CountWords.Pieces(Moved);
        var (saved, isOne) = Saved(unit);
        return IsKept ? PlanChangeWords.WouldMove(pieces, saved, Paid(unit))
            : IsForced ? PlanChangeWords.MoveForRoom(Moved == 1, pieces)
            : PlanChangeWords.MoveAndSave(Moved == 1, pieces, !isOne, saved, Paid(unit));
    }

    private (string Saved, bool IsOne) Saved(WrittenVolume unit)
    {
        var saved = new List<(string Saved, bool IsOne)>();
        if (LoadsSaved > 0)
        {
            saved.Add((PlanChangeWords.KilnLoads(LoadsSaved), LoadsSaved == 1));
        }

        if (FlasksSaved > 0)
        {
            saved.Add((PlanChangeWords.Flasks(FlasksSaved), FlasksSaved == 1));
        }
        else if (InvestmentSaved > Volume.Zero)
        {
            saved.Add((PlanChangeWords.OfInvestment(unit.SayFinely(InvestmentSaved)), true));
        }

        if (saved.Count == 0)
        {
            saved.Add((PlanChangeWords.OfBurnout(Say.Hours(BurnoutSaved)), true));
        }

        return (PlanChangeWords.Together(saved.Select(s => s.Saved)), saved is [{ IsOne: true }]);
    }

    // What the order of wishes gives for what it puts first.
    private string Paid(WrittenVolume unit) => FlasksSaved < 0 ? PlanChangeWords.ForMore(PlanChangeWords.Flasks(-FlasksSaved))
        : FlasksSaved == 0 && InvestmentSaved < Volume.Zero ? PlanChangeWords.ForMore(PlanChangeWords.OfInvestment(unit.SayFinely(-InvestmentSaved)))
        : LoadsSaved < 0 ? PlanChangeWords.ForMore(PlanChangeWords.KilnLoads(-LoadsSaved)) : "";
}
