using CastBook.Planning.Explaining;
using CastBook.Planning.Findings;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Sheets;
using CastBook.Workbooks.Words;

namespace CastBook.Workbooks.Explaining;

/// <summary>Says where the inputs of an account come from: the cell, else the file or the variable.</summary>
/// <param name="reading">The book.</param>
internal sealed class InputPlaces(BookReading reading)
{
    /// <summary>The inputs with their places.</summary>
    /// <param name="account">An account.</param>
    public IReadOnlyList<ExplainedInput> Of(Account account) => [.. account.Inputs.Select(i => new ExplainedInput(i.Name, i.Value, From(i)))];

    private string From(AccountInput input)
    {
        var place = input.Typed is { } typed ? PlaceOf(typed) : "";
        return place.Length > 0 && input.Source.Length > 0 ? $"{place}, {input.Source}" : place + input.Source;
    }

    // A setting may stand on the Shop sheet and still have its value from somewhere else: who said it last was noted on reading.
    private string PlaceOf(Subject subject) =>
        subject.Kind == SubjectKind.Setting && reading.Origins.TryGetValue(subject.Key, out var origin) ? origin.From
        : reading.Cells.InFile(subject) is { } place ? place
        : (OfTypedFlask(subject) ?? reading.Cells.Find(subject)) is { } cell ? cell.ToString()
        : ExplanationWords.OnSheet(Places.SheetOf(subject.Kind));

    // A wish for a flask that was typed into our own column.
    private CellRef? OfTypedFlask(Subject subject)
    {
        if (subject is not { Kind: SubjectKind.Piece, Field: PieceField.KeepInFlask })
        {
            return null;
        }

        var id = int.Parse(subject.Key, System.Globalization.CultureInfo.InvariantCulture);
        var list = reading.ListOf(id);
        return !list.Columns.ContainsKey(PieceField.KeepInFlask) && list.OwnColumns.TryGetValue(OwnName.Flask, out var column)
            ? new CellRef(list.Sheet.Name, list.RowOf(id), column)
            : null;
    }
}
