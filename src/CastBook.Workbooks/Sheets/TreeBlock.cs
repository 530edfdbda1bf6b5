using System.Globalization;
using CastBook.Planning;
using CastBook.Planning.Explaining;
using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Columns;
using CastBook.Workbooks.Drawing;
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

    private string[] Headings =>
    [
        "Tree", "Alloy", "Pieces", $"Charge ({units.Metal.Name})", $"Powder ({units.Powder.Name})", $"Metal ({units.Temperature.Name})", $"Flask ({units.Temperature.Name})",
        "Quench after (min)", "Size",
    ];

    // What the columns from D on answer.
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
        var headings = Headings;
        for (var i = 0; i < headings.Length; i++)
        {
            sheet.Set(row, FirstColumn + i, headings[i], i == 0 ? Look.FirstHeading : i is >= 2 and <= 7 ? Look.NumberHeading : Look.Heading);
        }

        sheet.Height(row, 2 * RowPoints);
        WriteCard(++row);
        sheet.Set(++row, FirstColumn, Limit(), Look.Small);
        if (flask.Columns.Count > 0)
        {
            var picture = new TreePicture(flask, numbers);
            sheet.Drawing.Add(picture.FromSide(new Frame(row + 1, FirstColumn, SideMm, PictureMm)));
            sheet.Drawing.Add(picture.FromAbove(new Frame(row + 1, AboveColumn, SideMm, PictureMm)));
            row += PictureRows + 1;
            row = WriteColumns(row, picture);
        }
        else
        {
            sheet.Set(++row, 2, flask.State == FlaskState.Planned ? "Not drawn: the sizes of some of its pieces are not known." : "Not drawn: the tree is built.", Look.Small);
        }

        foreach (var share in flask.Pieces)
        {
            sheet.Set(++row, 2, string.Create(CultureInfo.InvariantCulture, $"no. {numbers[share.PieceId]}"), Look.Text with { Border = Line.None });
            row = WriteLines(row, [Words(share)]);
        }

        return row;
    }

    private void WriteCard(int row)
    {
        sheet.Height(row, LetterPoints);
        sheet.Set(row, FirstColumn, flask.Letter, Look.Mould);
        sheet.Set(row, 3, flask.Alloy, Look.Strong);
        sheet.Set(row, 4, CellValue.Of((double)flask.Pieces.Sum(p => p.Quantity)), Look.Number(Look.Whole));
        sheet.Set(row, 5, CellValue.Of(units.Metal.In(flask.Charge)), Look.Big(units.Metal.Format));
        sheet.Set(row, 6, CellValue.Of(units.Powder.In(flask.Powder)), Look.Big(units.Powder.Format));
        sheet.Set(row, 7, CellValue.Of(units.Temperature.In(flask.MetalTemperature)), Look.Big(Look.Whole));
        sheet.Set(row, 8, CellValue.Of(units.Temperature.In(flask.FlaskTemperature)), Look.Big(Look.Whole));
        sheet.Set(row, 9, flask.NoQuench ? CellValue.Of("no quench") : CellValue.Of(CellNumbers.Minutes(flask.QuenchAfter)), Look.Big(Look.Whole));
        sheet.Set(row, 10, flask.Size.Name, Look.Text);
        for (var i = 0; i < Answers.Length; i++)
        {
            sheet.Answer(row, FirstColumn + 2 + i, Subject.Flask(flask.Letter), Answers[i]);
        }
    }

    private string? Limit() => flask.Limit switch
    {
        FlaskLimit.Nothing => "All pieces that could share this flask are in it.",
        FlaskLimit.HasRoom => "There is room for more here.",
        FlaskLimit.Turn => "Full round the trunk: no piece of another flask finds a place beside these.",
        FlaskLimit.Height => "Full along the trunk: what is left of its length is too short for the pieces of other flasks.",
        FlaskLimit.Crucible => "Full by metal: the crucible takes no more.",
        FlaskLimit.Cup => "Full by metal: the cup takes no larger button.",
        FlaskLimit.Temperature => "The pieces of other flasks need another flask temperature.",
        FlaskLimit.Owned => "A smaller flask would do, but all of them are in use.",
        _ => null,
    };

    private int WriteColumns(int row, TreePicture picture)
    {
        var (right, left) = picture.SideColumns;
        for (var i = 0; i < flask.Columns.Count; i++)
        {
            var column = flask.Columns[i];
            var drawn = i == right ? " (drawn at the right)" : i == left ? " (drawn at the left)" : "";
            sheet.Set(++row, 2, string.Create(CultureInfo.InvariantCulture, $"column {i + 1}"), Look.Text with { Border = Line.None });
            row = WriteLines(row, [.. Runs(column)], drawn);
        }

        return row + 1;
    }

    private int WriteLines(int row, IReadOnlyList<string> runs, string end = "")
    {
        var lines = Lines(runs, end).ToList();
        for (var at = 0; at < lines.Count; at++)
        {
            sheet.Set(row + at, 3, lines[at], Look.Text with { Wrap = false, Border = Line.None });
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
            yield return string.Create(CultureInfo.InvariantCulture, $"no. {numbers[share.PieceId]} ×{share.Quantity}, gates {string.Join(", ", heights)} {units.Length.Name} above the base");
        }
    }

    private string Words(PieceShare share)
    {
        var piece = pieces[share.PieceId];
        var whose = piece.Customer is { Length: > 0 } customer ? $" for {customer}" : "";
        var words = string.Create(CultureInfo.InvariantCulture, $"{(piece.Name.Length == 0 ? "unnamed" : piece.Name)}{whose} ×{share.Quantity}");
        var places = flask.Columns.SelectMany(c => c.Places).Where(p => p.PieceId == share.PieceId).ToList();
        return places.Count == 0 ? words : $"{words}: {WayUp(places[0])}, gate {units.Length.OnTheTree(places[0].Gate)} {units.Length.Name} long, {Degrees(places[0].Tilt)}° to the trunk";
    }

    private static string WayUp(HungPiece piece) =>
        piece.IsRing ? "ring upright in line with the trunk" : piece.OnEdge ? "on its edge" : "flat";

    private static string Degrees(UnitsNet.Angle tilt) => Math.Round(tilt.Degrees).ToString(CultureInfo.InvariantCulture);
}
