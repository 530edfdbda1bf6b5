using CastBook.Planning.Explaining;
using CastBook.Planning.Findings;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Words;
using CastBook.Workbooks.Writing;

namespace CastBook.Workbooks.Explaining;

/// <summary>How the cells of a book come to be when it is filled as it stands.</summary>
public sealed class BookExplanation
{
    private readonly WrittenBook written;
    private readonly NightAccounts accounts;
    private readonly InputPlaces places;
    private readonly ListCells lists;
    private readonly ForeignCells foreign;

    internal BookExplanation(Filling filling, NightAccounts accounts, WrittenBook written)
    {
        this.written = written;
        this.accounts = accounts;
        places = new InputPlaces(filling.Reading);
        lists = new ListCells(written, filling.Typed, accounts, places);
        foreign = new ForeignCells(written, filling.Reading.Cells);
        var own = written.Sheets.Select(s => s.Name);
        Sheets = [.. written.Lists.Select(l => l.List.Sheet.Name).Concat(filling.Reading.Package.AllSheetNames).Concat(own).Distinct(StringComparer.OrdinalIgnoreCase)];
    }

    /// <summary>The sheets of the filled book, those with lists first.</summary>
    public IReadOnlyList<string> Sheets { get; }

    /// <summary>Whether the book stands filled like this already.</summary>
    public bool IsFilled => !written.Changed;

    /// <summary>Reads the name of a cell.</summary>
    /// <param name="name">Such as <c>Pieces!O2</c>; without a sheet it is a cell of the list.</param>
    /// <returns>The cell, or what is wrong with the name.</returns>
    public (CellRef Cell, string? Mistake) Find(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return CellName.Read(name, Sheets);
    }

    /// <summary>Every cell that is worked out and not empty: the lists row by row, then the sheets of ours.</summary>
    public IEnumerable<CellExplanation> All() => lists.Cells().Concat(written.Sheets.SelectMany(OwnCells))
        .Select(Of).Where(e => e.Account is not null);

    /// <summary>How a cell came to be.</summary>
    /// <param name="cell">Any cell of a sheet of the filled book.</param>
    public CellExplanation Of(CellRef cell)
    {
        if (written.Sheets.FirstOrDefault(s => s.Name == cell.Sheet) is not { } sheet)
        {
            return lists.Of(cell) ?? foreign.Of(cell);
        }

        return sheet.Answers.TryGetValue((cell.Row, cell.Column), out var asked) ? OfAnswer(cell, ValueOf(sheet, cell), asked.Subject, asked.Answer)
            : lists.OfComputed(sheet, cell) ?? ForeignCells.OfOwn(sheet, cell);
    }

    private IEnumerable<CellRef> OwnCells(OwnedSheet sheet) =>
        sheet.Answers.Keys.Order().Select(a => new CellRef(sheet.Name, a.Row, a.Column)).Concat(lists.OnComputed(sheet));

    private static CellValue ValueOf(OwnedSheet sheet, CellRef cell) =>
        sheet.Rows.TryGetValue(cell.Row, out var cells) && cells.TryGetValue(cell.Column, out var owned) ? owned.Value : CellValue.Empty;

    private CellExplanation OfAnswer(CellRef cell, CellValue value, Subject subject, string answer)
    {
        var about = subject.Kind switch { SubjectKind.Flask => $"flask {subject.Key}", SubjectKind.Step or SubjectKind.Moment => "", _ => subject.Key };
        var account = value.IsEmpty ? null : accounts.Of(subject, answer);
        return new(cell)
        {
            About = about,
            Number = value.Number,
            Text = value.Text ?? "",
            Account = account,
            Inputs = account is null ? [] : places.Of(account),
            Note = account is not null ? "" : ExplanationWords.NothingToSay,
            Findings = account is not null ? [] : [.. written.Findings.Where(f => f.Severity > Severity.Note && f.Subjects.Any(s => IsAbout(s, subject)))],
        };
    }

    // What a flask lacks is often its alloy's.
    private bool IsAbout(Subject found, Subject subject) => (found.Kind == subject.Kind && found.Key == subject.Key)
        || (found.Kind == SubjectKind.Alloy && subject.Kind == SubjectKind.Flask && accounts.Plan.Flasks.Any(f => f.Letter == subject.Key && f.Alloy == found.Key));
}
