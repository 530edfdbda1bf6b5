using CastBook.Planning.Shops;
using CastBook.Templates.Sheets;

namespace CastBook.Templates.Writing;

/// <summary>Puts values in the order of a sheet's columns.</summary>
internal static class RowOf
{
    /// <summary>A line of which some columns are known.</summary>
    /// <param name="spec">The sheet.</param>
    /// <param name="headings">The headings of the values.</param>
    /// <param name="values">A value for each of <paramref name="headings"/>.</param>
    /// <exception cref="ArgumentException">A heading is none of the sheet's.</exception>
    public static IReadOnlyList<object?> Headings(SheetSpec spec, IReadOnlyList<string> headings, IReadOnlyList<object?> values)
    {
        var row = new object?[spec.Columns.Count];
        for (var i = 0; i < headings.Count; i++)
        {
            var column = spec.Columns.ToList().FindIndex(c => c.Heading == headings[i]);
            if (column < 0)
            {
                throw new ArgumentException($"The sheet {spec.Name} has no column \"{headings[i]}\".", nameof(headings));
            }

            row[column] = values[i];
        }

        return row;
    }

    /// <summary>The lines of the Shop sheet.</summary>
    /// <param name="answers">Values by the setting's name; null for a shop that has said nothing yet.</param>
    /// <param name="units">The units in which it is asked; missing for the usual ones.</param>
    public static IReadOnlyList<IReadOnlyList<object?>> Settings(IReadOnlyDictionary<string, object>? answers, ShopUnits? units = null) =>
    [
        .. SettingsSheet.Settings.Select(s => s.In(units ?? ShopUnits.Metric)).Select(s => (IReadOnlyList<object?>)
            [s.Name, answers is not null && answers.TryGetValue(s.Name, out var value) ? value : null, s.Unit, s.WhatFor]),
        .. (answers ?? new Dictionary<string, object>()).Where(a => SettingsSheet.Settings.All(s => s.Name != a.Key))
            .Select(a => (IReadOnlyList<object?>)[a.Key, a.Value, "", SettingGuide.Of(a.Key).WhatFor]),
    ];
}
