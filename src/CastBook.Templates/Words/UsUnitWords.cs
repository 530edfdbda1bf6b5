namespace CastBook.Templates.Words;

/// <summary>Parts of sentences that name a size, a day or a temperature, and what stands there for a shop in the United States.</summary>
internal static class UsUnitWords
{
    public static (string Metric, string Us, bool IsHot)[] Sentences =>
    [
        ("75 × 100: 12; 90 × 125: 20", "3 × 4: 12; 3.5 × 5: 20", false),
        ("such as 75 × 100", "such as 3 × 4", false),
        ("such as 4 Dec 2026", "such as Dec 4, 2026", false),
        ("never under 12 mm", "never under 0.47 in", false),
        ("732 for gypsum", "1350 for gypsum", true),
        ("near 573 °C (quartz) or from 200 to 270 °C", "near 1063 °F (quartz) or from 390 to 520 °F", true),
    ];

    // Names of flask sizes and of pieces in the example rows.
    public static (string Metric, string Us)[] Names => [("75 × 100", "3 × 4"), ("90 × 125", "3.5 × 5"), ("band, 5 mm", "band, 0.2 in")];
}
