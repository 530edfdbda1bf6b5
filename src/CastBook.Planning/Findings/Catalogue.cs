using System.Reflection;

namespace CastBook.Planning.Findings;

/// <summary>Every finding CastBook can make, in its words. A new finding is one entry here, in the file of its topic.</summary>
public static partial class Catalogue
{
    // Lazy, because the files of this class are initialised in no promised order.
    private static readonly Lazy<IReadOnlyList<FindingKind>> Everything = new(() =>
    [
        .. typeof(Catalogue).GetProperties(BindingFlags.Public | BindingFlags.Static)
            .Where(p => p.PropertyType == typeof(FindingKind))
            .Select(p => (FindingKind)p.GetValue(null)!)
            .OrderBy(k => k.Id, StringComparer.Ordinal),
    ]);

    /// <summary>All kinds, by id; the documentation is made from it.</summary>
    public static IReadOnlyList<FindingKind> All => Everything.Value;
}
