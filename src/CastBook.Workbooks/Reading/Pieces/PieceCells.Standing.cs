using CastBook.Planning.Findings;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Headings;
using CastBook.Workbooks.Reading.Values;

namespace CastBook.Workbooks.Reading.Pieces;

/// <content>Yes and no, done, and left out.</content>
internal sealed partial class PieceCells
{
    /// <summary>A yes or no; no where the cell says nothing.</summary>
    public bool YesOrNo(string field, Func<FindingKind> otherwise)
    {
        if (!fields.TryGetValue(field, out var known))
        {
            return false;
        }

        // Stones that somebody is not sure of are no "no": their flask could be quenched.
        var cell = Cell(known.Column);
        if (CellValues.YesOrNo(cell) is { } said && !(field == PieceField.StonesIn && CellValues.SaysNotKnown(cell)))
        {
            return said;
        }

        Fail(otherwise(), field, values.Shown(cell), known.Column.Heading.Text);
        return false;
    }

    /// <summary>Whether the row is marked done, by a word or by the day it was done, or to be left out.</summary>
    public (bool Done, bool LeaveOut) Standing()
    {
        var leaveOut = YesOrNo(PieceField.LeaveOut, static () => Catalogue.YesNoUnreadable);
        if (!fields.TryGetValue(PieceField.Done, out var known))
        {
            return (false, leaveOut);
        }

        var cell = Cell(known.Column);
        if (SaysDone(cell, known.Habits))
        {
            return (true, leaveOut);
        }

        return known.Column.Word.IsStatus
            ? (false, leaveOut || StatusLeavesOut(cell, known.Column))
            : (YesOrNo(PieceField.Done, static () => Catalogue.YesNoUnreadable), leaveOut);
    }

    private bool StatusLeavesOut(GridCell cell, FieldColumn column)
    {
        if (CellValues.IsBlank(cell))
        {
            return false;
        }

        var said = values.Shown(cell);
        var leavesOut = CellWords.LeftOut.Contains(said);
        if (!leavesOut && statuses.Add(said))
        {
            found.Add(Catalogue.StatusStillToCast.At(Subject.Column(PieceField.Done), said, column.Heading.Text));
        }

        return leavesOut;
    }

    private bool SaysDone(GridCell cell, ColumnHabits habits) => cell.Kind == CellKind.Text
        ? CellWords.Done.Contains(CellValues.Clean(cell.Text)) || values.Day(cell, habits.Days) is { Day: not null } or { First: not null }
        : values.IsDate(cell);
}
