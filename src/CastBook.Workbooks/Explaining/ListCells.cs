using CastBook.Planning.Explaining;
using CastBook.Planning.Findings;
using CastBook.Workbooks.Columns;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Words;
using CastBook.Workbooks.Writing;

namespace CastBook.Workbooks.Explaining;

/// <summary>The cells of the shop's lists, and of the sheet that takes the computed values of lists without room.</summary>
/// <param name="written">The book as written.</param>
/// <param name="typed">Cells of computed columns in which a person typed.</param>
/// <param name="accounts">How the numbers came to be.</param>
/// <param name="places">Where inputs come from.</param>
internal sealed class ListCells(WrittenBook written, TypedCells typed, NightAccounts accounts, InputPlaces places)
{
    /// <summary>All cells of computed columns, list by list and row by row.</summary>
    public IEnumerable<CellRef> Cells() =>
        from list in written.Lists
        from row in list.List.Rows
        from standing in list.Standing
        select new CellRef(list.List.Sheet.Name, row, standing.At);

    /// <summary>All cells with values of pieces on the sheet of computed values; none on other sheets.</summary>
    /// <param name="sheet">A sheet of ours.</param>
    public IEnumerable<CellRef> OnComputed(OwnedSheet sheet) => !IsComputed(sheet) ? [] :
        from link in sheet.Links
        from column in sheet.Rows[link.Row].Keys
        select new CellRef(sheet.Name, link.Row, column);

    /// <summary>How a cell of a list came to be, or whose it is; nothing where it is in no row of a list.</summary>
    /// <param name="cell">A cell of a sheet of the shop's.</param>
    public CellExplanation? Of(CellRef cell)
    {
        if (written.Lists.FirstOrDefault(l => l.List.Sheet.Name == cell.Sheet) is not { } list || IdOf(list, cell.Row) is not { } id)
        {
            return null;
        }

        var line = written.Lines[id];
        var (column, at) = list.Standing.FirstOrDefault(s => s.At == cell.Column);
        if (column is null)
        {
            return new(cell) { About = line.Piece.Name, Note = Whose(list, cell) };
        }

        var standing = at > list.List.LastColumn ? default : list.List.Grid.Cell(cell.Row, at);
        return Of(cell, column, line, standing);
    }

    /// <summary>How a cell of the sheet of computed values came to be; nothing on other sheets and in their other cells.</summary>
    /// <param name="sheet">A sheet of ours.</param>
    /// <param name="cell">A cell of it.</param>
    public CellExplanation? OfComputed(OwnedSheet sheet, CellRef cell)
    {
        if (!IsComputed(sheet) || sheet.Links.FirstOrDefault(l => l.Row == cell.Row).Target is not { Row: > 0 } piece)
        {
            return null;
        }

        var heading = sheet.Rows[sheet.HeadingRow].TryGetValue(cell.Column, out var owned) ? owned.Value.Text : null;
        var list = written.Lists.First(l => l.List.Sheet.Name == piece.Sheet);
        return list.Elsewhere.FirstOrDefault(c => c.Heading == heading) is { } column
            ? Of(cell, column, written.Lines[IdOf(list, piece.Row)!.Value], default)
            : null;
    }

    private bool IsComputed(OwnedSheet sheet) => ReferenceEquals(sheet, written.Computed);

    private static int? IdOf(ListColumns list, int row)
    {
        for (var i = 0; i < list.List.Rows.Count; i++)
        {
            if (list.List.Rows[i] == row)
            {
                return list.List.FirstId + i;
            }
        }

        return null;
    }

    private static string AnswerOf(ComputedColumn column) => column.OwnName switch
    {
        OwnName.MetalEach => AnswerField.MetalEach,
        OwnName.Metal => AnswerField.Metal,
        OwnName.Flask => AnswerField.Flask,
        OwnName.Mix => AnswerField.Mix,
        OwnName.Burnout => AnswerField.Burnout,
        _ => "",
    };

    private static string Whose(ListColumns list, CellRef cell)
    {
        var field = list.List.Columns.FirstOrDefault(c => c.Value == cell.Column).Key;
        var use = field is null ? ExplanationWords.NotRead : field == PieceField.Piece ? ExplanationWords.ReadAsName : ExplanationWords.ReadAs(FieldWords.Of(field));
        var computed = list.Standing.Select(s => $"{CellRef.AddressOf(cell.Row, s.At)} {s.Column.Heading}");
        return ExplanationWords.YoursInRow(use) + (list.Standing.Length == 0 ? "" : ExplanationWords.WorkedOutInRow(computed));
    }

    private CellExplanation Of(CellRef cell, ComputedColumn column, PieceLine line, GridCell standing)
    {
        var explanation = new CellExplanation(cell) { About = line.Piece.Name };
        if (line.IsLeftAlone)
        {
            var note = line.IsStale(column) ? ExplanationWords.OfAnotherNight : ExplanationWords.LeftAlone;
            return explanation with { Note = note };
        }

        if (column is ChecksColumn)
        {
            return explanation with
            {
                Text = column.Show(line).Text ?? "",
                Note = line.Findings.Count == 0 ? ExplanationWords.NothingFound : ExplanationWords.WhatWasFound,
                Findings = [.. line.Findings.Select(f => f.Finding)],
            };
        }

        var value = column.Show(line);
        var account = value.IsEmpty ? null : accounts.Of(Subject.Piece(line.Piece.Id), AnswerOf(column));
        return explanation with
        {
            Number = value.Number,
            Text = value.Text ?? "",
            Account = account,
            Inputs = account is null ? [] : places.Of(account),
            Note = NoteOf(column, line, standing, value),
            Findings = value.IsEmpty ? [.. line.Findings.Select(f => f.Finding).Where(f => f.Severity > Severity.Note)] : [],
        };
    }

    private string NoteOf(ComputedColumn column, PieceLine line, GridCell standing, CellValue value)
    {
        var isFormula = standing.HasFormula;
        if ((isFormula || typed.Contains(line.Piece.Id, column.OwnName)) && !ListRowEdits.Same(standing, value))
        {
            var ours = value.IsEmpty ? ExplanationWords.Nothing : FillRecord.TextOf(value);
            return ExplanationWords.Kept(isFormula ? ExplanationWords.FormulaOfYours : ExplanationWords.TypedByAPerson(FillRecord.TextOf(standing)), ours);
        }

        return !value.IsEmpty ? ""
            : line.Findings.Count > 0 ? ExplanationWords.EmptyBecause
            : ExplanationWords.EmptyAs(StatusWords(line));
    }

    private static string StatusWords(PieceLine line) => line.Plan.Status == Planning.PieceStatus.LeftOut ? ExplanationWords.LeftOutAsAsked : ExplanationWords.InNoFlask;
}
