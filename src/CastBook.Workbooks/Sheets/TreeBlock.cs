using CastBook.Planning;
using CastBook.Planning.Explaining;
using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Columns;
using CastBook.Workbooks.Drawing;
using CastBook.Workbooks.Words;
using CastBook.Workbooks.Writing;

namespace CastBook.Workbooks.Sheets;

/// <summary>
/// What the bench needs of one flask: its letter and numbers, the drawing of its tree, and the list to wax it up by.
/// Numbers in the drawing are those of the list.
/// </summary>
internal sealed class TreeBlock
{
    private const int LineLength = 92;
    private const int PictureRows = 15;
    private const double RowPoints = 15;
    private const double LetterPoints = 60;
    private const double PictureMm = (PictureRows * RowPoints / 72 * 25.4) - 2;
    private const double SideMm = 76;

    // Column A is that of the letters in the list above: whoever reads the sheet must not take a block for a line of it.
    private const int FirstColumn = 2;
    private const int AboveColumn = 5;

    // What the columns from E on answer.
    private static readonly string[] Answers =
    [
        AnswerField.Pieces, AnswerField.Charge, AnswerField.Powder, AnswerField.MetalTemperature, AnswerField.FlaskTemperature, AnswerField.QuenchAfter,
    ];

    private readonly OwnedSheet sheet;
    private readonly FlaskPlan flask;
    private readonly ShopUnits units;
    private readonly IReadOnlyList<Piece> pieces;
    private readonly Dictionary<int, int> numbers = [];

    private TreeBlock(OwnedSheet sheet, FlaskPlan flask, SheetContext context)
    {
        this.sheet = sheet;
        this.flask = flask;
        units = context.Units;
        pieces = context.Reading.Night.Pieces;
        foreach (var share in flask.Pieces)
        {
            numbers.TryAdd(share.PieceId, numbers.Count + 1);
        }
    }

    /// <summary>How tall the block of a flask is, in points.</summary>
    /// <param name="rows">How many rows it takes.</param>
    /// <remarks>The row of headings is as high as two, and the letter stands in place of one.</remarks>
    public static double Height(int rows) => LetterPoints + (RowPoints * rows);

    /// <summary>Writes the block.</summary>
    /// <param name="sheet">Where.</param>
    /// <param name="row">Its first row.</param>
    /// <param name="flask">The flask.</param>
    /// <param name="context">What the sheet is made from.</param>
    /// <returns>The first row below it.</returns>
    public static int Write(OwnedSheet sheet, int row, FlaskPlan flask, SheetContext context) =>
        new TreeBlock(sheet, flask, context).Write(row) + 2;

    private int Write(int row)
    {
        var headings = TreesSheetWords.BlockHeadings(units.Metal.Name, units.Powder.Name, units.Temperature.Name);
        for (var i = 0; i < headings.Length; i++)
        {
            sheet.Set(row, FirstColumn + i, headings[i], i == 0 ? CellLook.FirstHeading : i >= 3 ? CellLook.NumberHeading : CellLook.Heading);
        }

        sheet.Height(row, 2 * RowPoints);
        WriteCard(++row);
        sheet.Set(++row, FirstColumn, Limit(), CellLook.Small);
        if (flask.Columns.Count > 0)
        {
            var picture = new TreePicture(flask, numbers);
            sheet.Drawing.Add(picture.FromSide(new Frame(row + 1, FirstColumn, SideMm, PictureMm)));
            sheet.Drawing.Add(picture.FromAbove(new Frame(row + 1, AboveColumn, SideMm, PictureMm)));
            row += PictureRows + 1;
            sheet.Set(row, FirstColumn, TreesSheetWords.HowColumnsCount, CellLook.Small);
            row = WriteColumns(row, picture);
        }
        else
        {
            sheet.Set(++row, 2, flask.State == FlaskState.Planned ? TreesSheetWords.NotDrawnSizes : TreesSheetWords.NotDrawnBuilt, CellLook.Small);
        }

        foreach (var share in flask.Pieces)
        {
            sheet.Set(++row, 2, TreesSheetWords.Number(numbers[share.PieceId]), CellLook.Text with { Border = Line.None });
            row = WriteLines(row, [Words(share)], "", "");
        }

        return row;
    }

    private void WriteCard(int row)
    {
        sheet.Height(row, LetterPoints);
        sheet.Set(row, FirstColumn, flask.Letter, CellLook.Mould);
        sheet.Set(row, 3, flask.Alloy, CellLook.Strong);
        sheet.Set(row, 4, flask.Size.Name, CellLook.Strong);
        sheet.Set(row, 5, CellValue.Of((double)flask.Pieces.Sum(p => p.Quantity)), CellLook.Number(CellLook.Whole));
        sheet.Set(row, 6, CellValue.Of(units.Metal.In(flask.Charge)), CellLook.Big(units.Metal.Format));
        sheet.Set(row, 7, CellValue.Of(units.Powder.In(flask.Powder)), CellLook.Big(units.Powder.Format));
        sheet.Set(row, 8, CellValue.Of(units.Temperature.In(flask.MetalTemperature)), CellLook.Big(CellLook.Whole));
        sheet.Set(row, 9, CellValue.Of(units.Temperature.In(flask.FlaskTemperature)), CellLook.Big(CellLook.Whole));
        sheet.Set(row, 10, flask.NoQuench ? CellValue.Of(NightPlanSheetWords.NoQuench) : CellValue.Of(CellNumbers.Minutes(flask.QuenchAfter)), CellLook.Big(CellLook.Whole));
        for (var i = 0; i < Answers.Length; i++)
        {
            sheet.Answer(row, FirstColumn + 3 + i, Subject.Flask(flask.Letter), Answers[i]);
        }
    }

    private string? Limit() => flask.Limit switch
    {
        FlaskLimit.Nothing => TreesSheetWords.AllAreIn,
        FlaskLimit.HasRoom => TreesSheetWords.HasRoom,
        FlaskLimit.Turn => TreesSheetWords.FullRound,
        FlaskLimit.Height => TreesSheetWords.FullAlong,
        FlaskLimit.Crucible => TreesSheetWords.FullByCrucible,
        FlaskLimit.Cup => TreesSheetWords.FullByCup,
        FlaskLimit.Temperature => TreesSheetWords.OtherTemperature,
        FlaskLimit.Owned => TreesSheetWords.SmallerInUse,
        _ => null,
    };

    private int WriteColumns(int row, TreePicture picture)
    {
        var (right, left) = picture.SideColumns;
        for (var i = 0; i < flask.Columns.Count; i++)
        {
            var column = flask.Columns[i];
            var drawn = i == right ? TreesSheetWords.DrawnAtTheRight : i == left ? TreesSheetWords.DrawnAtTheLeft : "";
            sheet.Set(++row, 2, TreesSheetWords.Column(i + 1), CellLook.Text with { Border = Line.None });
            row = WriteLines(row, [.. Runs(column)], TreesSheetWords.At(Math.Round(column.Middle.Degrees)), drawn);
        }

        return row + 1;
    }

    private int WriteLines(int row, IReadOnlyList<string> runs, string start, string end)
    {
        var lines = Lines([start + runs[0], .. runs.Skip(1)], end).ToList();
        for (var at = 0; at < lines.Count; at++)
        {
            sheet.Set(row + at, 3, lines[at], CellLook.Text with { Wrap = false, Border = Line.None });
        }

        return row + lines.Count - 1;
    }

    // As wide as the printed page: a run of places on one line where it fits, else broken between words.
    private static IEnumerable<string> Lines(IReadOnlyList<string> runs, string end)
    {
        var line = "";
        for (var i = 0; i < runs.Count; i++)
        {
            var run = runs[i] + (i < runs.Count - 1 ? ";" : end);
            if (line.Length > 0 && !Fits(run))
            {
                yield return line;
                line = "";
            }

            foreach (var word in run.Split(' '))
            {
                if (line.Length > 0 && !Fits(word))
                {
                    yield return line;
                    line = "";
                }

                line = line.Length == 0 ? word : $"{line} {word}";
            }
        }

        yield return line;

        bool Fits(string more) => line.Length + more.Length < LineLength;
    }

    /// <summary>From the button up, one piece's row after the other, with the height of each gate above the base.</summary>
    private IEnumerable<string> Runs(TreeColumn column)
    {
        var at = 0;
        foreach (var share in column.Pieces)
        {
            var heights = column.Places.Skip(at).Take(share.Quantity).Select(p => units.Length.OnTheTree(p.Height));
            at += share.Quantity;
            yield return TreesSheetWords.Run(numbers[share.PieceId], share.Quantity, heights, units.Length.Name);
        }
    }

    private string Words(PieceShare share)
    {
        var piece = pieces[share.PieceId];
        var words = TreesSheetWords.Piece(piece.Name, piece.Customer ?? "", share.Quantity);
        var places = flask.Columns.SelectMany(c => c.Places).Where(p => p.PieceId == share.PieceId).ToList();
        return places.Count == 0 ? words : TreesSheetWords.Hung(words, WayUp(places[0]), units.Length.OnTheTree(places[0].Gate), units.Length.Name, Math.Round(places[0].Tilt.Degrees));
    }

    private static string WayUp(HungPiece piece) =>
        piece.IsRing ? TreesSheetWords.RingUpright : piece.OnEdge ? TreesSheetWords.OnItsEdge : TreesSheetWords.Flat;
}
