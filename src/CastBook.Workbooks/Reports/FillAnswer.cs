using System.Text.Json;
using System.Text.Json.Serialization;

namespace CastBook.Workbooks.Reports;

#pragma warning disable CS1591 // Missing XML comment: the schema beside the program documents every member.

/// <summary>The whole answer for machines; its JSON Schema is <c>fill-answer.schema.json</c>.</summary>
public sealed record FillAnswer(
    IReadOnlyList<PieceAnswer> Pieces,
    IReadOnlyList<FlaskAnswer> Flasks,
    IReadOnlyList<MixAnswer> Mixes,
    IReadOnlyList<LoadAnswer> KilnLoads,
    ClockAnswer? Clock,
    IReadOnlyList<MetalAnswer> Metal,
    BoundAnswer Bound,
    ChangeAnswer? Change,
    IReadOnlyList<FindingAnswer> Findings);

/// <summary>A row of a list.</summary>
public sealed record PieceAnswer(
    string Sheet, int Row, string Piece, int? Qty, string Status, double? MetalEachG, double? MetalG, IReadOnlyList<ShareAnswer> Flasks);

/// <summary>So many pieces in a flask.</summary>
public sealed record ShareAnswer(string Flask, int Qty);

/// <summary>A flask.</summary>
public sealed record FlaskAnswer(
    string Flask, string Size, string Alloy, string State, int Pieces, double PiecesMetalG, double TreeMetalG, double ButtonG, double ChargeG,
    bool Weighed, double? PowderG, double? WaterMl, int? Mix, double? BurnoutH, double? FlaskTempC, double? MetalTempC, double? QuenchMin, bool NoQuench,
    string? Limit);

/// <summary>A mix of investment; minutes count from the first powder in the water.</summary>
public sealed record MixAnswer(
    int Mix, IReadOnlyList<string> Flasks, double PowderG, double WaterMl, double SlurryMl, double TakesMin, double PourDoneByMin, double GlossOffMin);

/// <summary>A kiln load: one kiln, one schedule.</summary>
public sealed record LoadAnswer(
    int Load, string Kiln, IReadOnlyList<string> Flasks, string Schedule, double? LoadAtC, IReadOnlyList<StageAnswer> Stages, double ToFirstPourH,
    IReadOnlyList<PourAnswer> Pours, string CoreOfFlask);

/// <summary>A stage of a burnout.</summary>
public sealed record StageAnswer(double TargetC, double? RateCPerH, double HoldH, double? CoreSlowC, double? CoreFastC);

/// <summary>Flasks that are poured from one kiln temperature.</summary>
public sealed record PourAnswer(double? FlaskTempC, IReadOnlyList<string> Flasks);

/// <summary>The night hour by hour.</summary>
public sealed record ClockAnswer(string? Start, double TakesH, IReadOnlyList<StepAnswer> Steps);

/// <summary>A step of the night; minutes count from the first one.</summary>
public sealed record StepAnswer(
    string Kind, string Step, double BeginsMin, double EndsMin, string? BeginsAt, string? EndsAt, bool Hands, bool Outside, bool Done,
    IReadOnlyList<string> Flasks, int? Mix, int? Load, double? TargetC);

/// <summary>Metal of an alloy.</summary>
public sealed record MetalAnswer(
    string Alloy, double? PiecesG, double? PiecesLeastG, double? PiecesMostG, double? PiecesIfFinishedG, double? NeededG, double? FreshG, double? RemeltG, double? BuyG,
    IReadOnlyList<MeltAnswer> Melts);

/// <summary>What to weigh out for a flask.</summary>
public sealed record MeltAnswer(string Flask, double ChargeG, double? FreshG, double? RemeltG, IReadOnlyList<MadeUpAnswer> MadeUpFrom);

/// <summary>Another metal of a melt.</summary>
public sealed record MadeUpAnswer(string Metal, double G);

/// <summary>What the plan is worth.</summary>
public sealed record BoundAnswer(int LeastFlasks, bool ProvedFewest, bool ProvedLeastInvestment, double? InvestmentOverMl);

/// <summary>What searching afresh makes of the plan that stands in the book.</summary>
public sealed record ChangeAnswer(bool Kept, int Moved, int FlasksSaved, double InvestmentSavedMl, string Words);

/// <summary>A finding.</summary>
public sealed record FindingAnswer(string Id, string Severity, string? Sheet, string? Cell, string Where, string Text, string Why, string Remedy);

#pragma warning restore CS1591

/// <summary>Writes the answer without reflection, which would cost start-up time.</summary>
[JsonSourceGenerationOptions(WriteIndented = true, PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase)]
[JsonSerializable(typeof(FillAnswer))]
internal sealed partial class FillAnswerContext : JsonSerializerContext;

/// <summary>The answer as JSON.</summary>
public static class FillAnswerJson
{
    /// <summary>The text.</summary>
    /// <param name="result">What filling answered.</param>
    public static string Write(FillResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return JsonSerializer.Serialize(AnswerMaker.Make(result), FillAnswerContext.Default.FillAnswer);
    }
}
