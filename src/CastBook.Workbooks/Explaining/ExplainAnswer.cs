using System.Text.Json;
using System.Text.Json.Serialization;
using CastBook.Workbooks.Writing;

namespace CastBook.Workbooks.Explaining;

#pragma warning disable CS1591 // Missing XML comment: the schema beside the program documents every member.

/// <summary>Explanations for machines; the JSON Schema is <c>explain-answer.schema.json</c>.</summary>
public sealed record ExplainAnswer(bool IsFilled, IReadOnlyList<CellAnswer> Cells);

/// <summary>How one cell came to be.</summary>
public sealed record CellAnswer(
    string Sheet, string Cell, string About, string? Name, double? Number, string? Text, string? Unit, double? Result, string? Words, string? Numbers,
    string? Rounded, IReadOnlyList<ExplainedInput> Inputs, string? ValidFor, string? Note, IReadOnlyList<CellFindingAnswer> Findings, IReadOnlyList<string> Lines);

/// <summary>What was found about the line of a cell.</summary>
public sealed record CellFindingAnswer(string Id, string Severity, string Text, string Why, string Remedy);

#pragma warning restore CS1591

/// <summary>Writes the answer without reflection, which would cost start-up time.</summary>
[JsonSourceGenerationOptions(WriteIndented = true, PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase)]
[JsonSerializable(typeof(ExplainAnswer))]
internal sealed partial class ExplainAnswerContext : JsonSerializerContext;

/// <summary>Explanations as JSON.</summary>
public static class ExplainAnswerJson
{
    /// <summary>The text.</summary>
    /// <param name="isFilled">Whether the book stands filled like this already.</param>
    /// <param name="explanations">The explanations.</param>
    public static string Write(bool isFilled, IEnumerable<CellExplanation> explanations)
    {
        ArgumentNullException.ThrowIfNull(explanations);
        return JsonSerializer.Serialize(new ExplainAnswer(isFilled, [.. explanations.Select(Cell)]), ExplainAnswerContext.Default.ExplainAnswer);
    }

    private static CellAnswer Cell(CellExplanation e) => new(
        e.Cell.Sheet,
        e.Cell.Address,
        e.About,
        e.Account?.Name,
        e.Number,
        NullIfEmpty(e.Text),
        NullIfEmpty(e.Account?.Unit),
        e.Account?.Result,
        e.Account?.Words,
        NullIfEmpty(e.Account?.Numbers),
        NullIfEmpty(e.Account?.Rounded),
        e.Inputs,
        NullIfEmpty(e.Account?.ValidFor),
        NullIfEmpty(e.Note),
        [.. e.Findings.Select(f => new CellFindingAnswer(f.Id, MarkRules.WordOf(f.Severity), f.Seen, f.Why, f.Remedy))],
        ExplanationText.Lines(e));

    private static string? NullIfEmpty(string? text) => string.IsNullOrEmpty(text) ? null : text;
}
