using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Planning.Words;
using UnitsNet;

namespace CastBook.Planning;

/// <summary>What searching afresh makes of a plan that stands in the book.</summary>
/// <param name="IsKept">Whether every piece was left where it was; otherwise the plan was searched afresh.</param>
/// <param name="Moved">How many pieces the search afresh puts into other flasks than they stood in.</param>
/// <param name="FlasksSaved">How many flasks it saves; 0 where pieces move because all would not fit otherwise.</param>
/// <param name="InvestmentSaved">How much investment it saves, by the inside of the flasks.</param>
public sealed record PlanChange(bool IsKept, int Moved, int FlasksSaved, Volume InvestmentSaved)
{
    /// <summary>Whether pieces moved because all would not fit otherwise, so that there was nothing to choose.</summary>
    public bool IsForced => !IsKept && FlasksSaved == 0 && InvestmentSaved <= Volume.Zero;

    /// <summary>Both in words, such as "3 pieces would move and a flask would be saved".</summary>
    /// <param name="unit">The unit of volumes.</param>
    public string Words(WrittenVolume unit)
    {
        ArgumentNullException.ThrowIfNull(unit);
        var pieces = CountWords.Pieces(Moved);
        var saved = FlasksSaved > 0 ? PlanChangeWords.Flasks(FlasksSaved, Say.Count(FlasksSaved)) : PlanChangeWords.OfInvestment(unit.SayFinely(InvestmentSaved));
        return IsKept ? PlanChangeWords.WouldMove(pieces, saved)
            : IsForced ? PlanChangeWords.MoveForRoom(Moved == 1, pieces)
            : PlanChangeWords.MoveAndSave(Moved == 1, pieces, FlasksSaved > 1, saved);
    }
}
