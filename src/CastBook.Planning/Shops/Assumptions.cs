using CastBook.Planning.Findings;

namespace CastBook.Planning.Shops;

/// <summary>Notes each default that a plan relied on, once.</summary>
internal sealed class Assumptions(FindingList findings)
{
    private readonly HashSet<string> used = new(StringComparer.Ordinal);

    /// <summary>The units in which findings say their numbers.</summary>
    public ShopUnits Units => findings.Units;

    /// <summary>Notes that a default stood in for a setting.</summary>
    /// <param name="setting">The setting's name.</param>
    /// <param name="value">The value, written for a reader.</param>
    public void Use(string setting, string value)
    {
        if (used.Add(setting))
        {
            findings.Add(Catalogue.AssumedDefault.At(Subject.Setting(setting), setting, value));
        }
    }

    /// <summary>Adds a finding unless one with the same key was added before.</summary>
    /// <param name="key">What makes it the same.</param>
    /// <param name="finding">Makes the finding.</param>
    public void Once(string key, Func<Finding> finding)
    {
        if (used.Add(key))
        {
            findings.Add(finding());
        }
    }
}
