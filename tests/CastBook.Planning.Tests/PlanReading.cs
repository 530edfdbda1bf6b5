using CastBook.Planning.Findings;

namespace CastBook.Planning.Tests;

/// <summary>Reads plans the way a test asks.</summary>
internal static class PlanReading
{
    public static Finding The(this NightPlan plan, string id) => plan.Findings.Where(f => f.Id == id).ShouldHaveSingleItem();

    public static string Text(this Finding finding) =>
        string.Join(' ', new[] { finding.Seen, finding.Why, finding.Remedy }.Where(t => t.Length > 0));

    public static IReadOnlyList<string> Ids(this NightPlan plan) => [.. plan.Findings.Select(f => f.Id)];

    public static IReadOnlyList<string> Stops(this NightPlan plan) =>
        [.. plan.Findings.Where(f => f.Severity == Severity.Stop).Select(f => f.Id)];

    public static IReadOnlyList<string> StopsAndChecks(this NightPlan plan) =>
        [.. plan.Findings.Where(f => f.Severity > Severity.Note).Select(f => f.Id)];

    public static int Count(this FlaskPlan flask, int piece) => flask.Pieces.Where(p => p.PieceId == piece).Sum(p => p.Quantity);
}
