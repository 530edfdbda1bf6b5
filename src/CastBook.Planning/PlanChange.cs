using System.Globalization;
using CastBook.Planning.Shops;
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
        var pieces = Moved == 1 ? "1 piece" : string.Create(CultureInfo.InvariantCulture, $"{Moved:#,##0} pieces");
        var saved = FlasksSaved == 1 ? "a flask" : FlasksSaved > 1 ? string.Create(CultureInfo.InvariantCulture, $"{FlasksSaved} flasks") : unit.SayFinely(InvestmentSaved) + " of investment";
        return IsKept ? $"{pieces} would move and {saved} would be saved"
            : IsForced ? $"{pieces} {(Moved == 1 ? "moves" : "move")} so that everything finds room"
            : $"{pieces} {(Moved == 1 ? "moves" : "move")} and {saved} {(FlasksSaved > 1 ? "are" : "is")} saved";
    }
}
