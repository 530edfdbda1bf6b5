using CastBook.Planning;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Columns;
using CastBook.Workbooks.Writing;

namespace CastBook.Workbooks.Reports;

/// <summary>Turns what filling answered into the answer for machines: units in the names, no more digits than a scale shows.</summary>
internal static class AnswerMaker
{
    /// <summary>The answer.</summary>
    /// <param name="result">What filling answered.</param>
    public static FillAnswer Make(FillResult result) => new(
        [.. result.Plan.Pieces.Select(p => Piece(p, result))],
        [.. result.Plan.Flasks.Select(Flask)],
        [.. result.Plan.Mixes.Select(Mix)],
        [.. (result.Plan.Clock?.Loads ?? []).Select(ClockAnswers.Load)],
        result.Plan.Clock is { } clock ? ClockAnswers.Make(clock) : null,
        [.. result.Plan.Metal.Select(Metal)],
        new BoundAnswer(
            result.Plan.Bound.LeastFlasks, result.Plan.Bound.ProvedFewest, result.Plan.Bound.ProvedLeastInvestment,
            CellNumbers.Millilitres(result.Plan.Bound.ProvedLeastInvestment ? UnitsNet.Volume.Zero : result.Plan.Bound.InvestmentOver)),
        result.Plan.Change is { } change ? Change(change, ShopUnits.Of(result.Night.Shop.Settings).Water) : null,
        [.. result.Findings.Zip(result.Places).Select(f => new FindingAnswer(
            f.First.Id, MarkRules.WordOf(f.First.Severity), f.Second.Cell?.Sheet, f.Second.Cell?.Address, f.Second.Text, f.First.Seen, f.First.Why, f.First.Remedy))]);

    private static PieceAnswer Piece(PiecePlan plan, FillResult result)
    {
        var piece = result.Night.Pieces[plan.Id];
        var (sheet, row) = result.Pieces[plan.Id];
        return new PieceAnswer(
            sheet,
            row,
            piece.Name,
            piece.Quantity,
            StatusOf(plan.Status),
            CellNumbers.Grams(plan.MetalEach),
            CellNumbers.Grams(plan.MetalEach * piece.Quantity),
            [.. plan.Flasks.Select(s => new ShareAnswer(s.Flask, s.Quantity))]);
    }

    private static ChangeAnswer Change(PlanChange change, WrittenVolume unit) =>
        new(change.IsKept, change.Moved, change.FlasksSaved, CellNumbers.Millilitres(change.InvestmentSaved)!.Value, change.Words(unit));

    private static FlaskAnswer Flask(FlaskPlan flask) => new(
        flask.Letter,
        flask.Size.Name,
        flask.Alloy,
        StateOf(flask.State),
        flask.Pieces.Sum(p => p.Quantity),
        CellNumbers.Grams(flask.PiecesMetal)!.Value,
        CellNumbers.Grams(flask.TreeMetal)!.Value,
        CellNumbers.Grams(flask.Button)!.Value,
        CellNumbers.Grams(flask.Charge)!.Value,
        flask.Weighed,
        CellNumbers.Grams(flask.Powder),
        CellNumbers.Millilitres(flask.Water),
        flask.Mix,
        CellNumbers.Hours(flask.Burnout),
        CellNumbers.Celsius(flask.FlaskTemperature),
        CellNumbers.Celsius(flask.MetalTemperature),
        CellNumbers.Minutes(flask.QuenchAfter),
        flask.NoQuench,
        flask.Limit is { } limit ? LimitOf(limit) : null);

    private static MixAnswer Mix(MixPlan mix) => new(
        mix.Number,
        mix.Flasks,
        CellNumbers.Grams(mix.Powder)!.Value,
        CellNumbers.Millilitres(mix.Water)!.Value,
        CellNumbers.Millilitres(mix.Slurry)!.Value,
        CellNumbers.TenthsOfMinutes(mix.Takes)!.Value,
        CellNumbers.TenthsOfMinutes(mix.PourDoneBy)!.Value,
        CellNumbers.TenthsOfMinutes(mix.GlossOff)!.Value);

    private static MetalAnswer Metal(MetalPlan metal) => new(
        metal.Alloy,
        CellNumbers.Grams(metal.Pieces),
        CellNumbers.Grams(metal.PiecesLeast),
        CellNumbers.Grams(metal.PiecesMost),
        CellNumbers.Grams(metal.PiecesIfFinished),
        CellNumbers.Grams(metal.Charges),
        CellNumbers.Grams(metal.Fresh),
        CellNumbers.Grams(metal.Remelt),
        CellNumbers.Grams(metal.Buy),
        [.. metal.Portions.Select(p => new MeltAnswer(
            p.Flask, CellNumbers.Grams(p.Charge)!.Value, CellNumbers.Grams(p.Fresh), CellNumbers.Grams(p.Remelt),
            [.. p.MadeUp.Select(m => new MadeUpAnswer(m.Metal, CellNumbers.Grams(m.Mass)!.Value))]))]);

    private static string StatusOf(PieceStatus status) => status switch
    {
        PieceStatus.Planned => "planned",
        PieceStatus.PartlyPlanned => "planned in part",
        PieceStatus.LeftOut => "left out",
        PieceStatus.OtherNight => "other night",
        PieceStatus.Done => "done",
        _ => "not planned",
    };

    private static string LimitOf(FlaskLimit limit) => limit switch
    {
        FlaskLimit.HasRoom => "has room",
        FlaskLimit.Turn => "turn",
        FlaskLimit.Height => "height",
        FlaskLimit.Crucible => "crucible",
        FlaskLimit.Cup => "cup",
        FlaskLimit.Temperature => "temperature",
        FlaskLimit.Owned => "owned",
        _ => "nothing",
    };

    private static string StateOf(FlaskState state) => state switch
    {
        FlaskState.Waxed => "waxed",
        FlaskState.Invested => "invested",
        FlaskState.InKiln => "in kiln",
        FlaskState.Poured => "poured",
        _ => "planned",
    };
}
