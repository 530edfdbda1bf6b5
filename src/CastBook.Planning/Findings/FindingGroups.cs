namespace CastBook.Planning.Findings;

/// <summary>Folds repeats: findings that say the same words become one finding about all their subjects.</summary>
public static class FindingGroups
{
    /// <summary>The findings, repeats folded, stops first, then checks, then notes; otherwise in the order they came.</summary>
    /// <param name="findings">Any findings.</param>
    public static IReadOnlyList<Finding> Fold(IEnumerable<Finding> findings)
    {
        ArgumentNullException.ThrowIfNull(findings);
        var groups = new Dictionary<(string, string, string, string), (List<Subject> Subjects, HashSet<Subject> Known)>();
        var firsts = new List<(Finding Finding, List<Subject> Subjects)>();
        foreach (var finding in findings)
        {
            var words = (finding.Id, finding.Seen, finding.Why, finding.Remedy);
            if (!groups.TryGetValue(words, out var group))
            {
                groups[words] = group = ([], []);
                firsts.Add((finding, group.Subjects));
            }

            group.Subjects.AddRange(finding.Subjects.Where(group.Known.Add));
        }

        return [.. firsts.Select(f => f.Finding with { Subjects = f.Subjects }).OrderByDescending(f => f.Severity)];
    }
}
