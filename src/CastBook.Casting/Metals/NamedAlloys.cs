namespace CastBook.Casting.Metals;

/// <summary>
/// Alloys of the trade that are known by name only, so that a row that names one is asked for its numbers and not for its
/// spelling. Nothing else of them stands here.
/// </summary>
/// <remarks>
/// The fineness marks are those of ISO 9202 and of old national laws; the designations of copper alloys are those of EN 1982 and
/// EN 12163, which name the composition. Leaded ones carry it, because they are refused.
/// </remarks>
internal static class NamedAlloys
{
    public static IReadOnlyList<Alloy> All { get; } =
    [
        Named("silver 958", "958", "Britannia silver"),
        Named("silver 900", "900", "coin silver"),
        Named("silver 835", "835"),
        Named("silver 830", "830"),
        Named("silver 800", "800"),

        .. Golds("22k", "rose"),
        .. Golds("21k", "yellow"),
        .. Golds("14k", "white"),
        .. Golds("10k", "yellow", "white", "rose"),
        .. Golds("9k", "white", "rose"),
        .. Golds("8k", "yellow", "white", "rose"),

        // No family name for these: a plain "bronze" or "brass" is settled among the alloys with numbers, or by the shop's sheet.
        Named("bronze CuSn6", "CuSn6"),
        Named("bronze CuSn8", "CuSn8"),
        Named("bronze CuSn10", "CuSn10", "tin bronze CuSn10", "bronze 90/10"),
        Named("bronze CuSn12", "CuSn12", "tin bronze CuSn12", "C90800"),
        Named("aluminium bronze"),
        Named("brass CuZn10", "CuZn10", "brass 90/10"),
        Named("brass CuZn20", "CuZn20", "brass 80/20"),
        Named("brass CuZn37", "CuZn37", "brass 63/37"),
        Named("brass CuZn40", "CuZn40", "brass 60/40"),
        Named("nickel silver"),
        Named("copper"),
        Leaded("leaded brass CuZn39Pb3", "Cu 580 Zn 390 Pb 30", "CuZn39Pb3", "brass CuZn39Pb3"),
        Leaded("leaded gunmetal CuSn5Zn5Pb5", "Cu 850 Sn 50 Zn 50 Pb 50", "CuSn5Zn5Pb5", "C83600", "LG2", "gunmetal LG2"),

        Hot("platinum 900", "900"),
        Hot("platinum 999", "fine platinum"),
        Hot("palladium 500"),
        Hot("palladium 999", "fine palladium"),
    ];

    private static Alloy Named(string name, params string[] otherNames) => new() { Name = name, OtherNames = otherNames };

    private static Alloy Hot(string name, params string[] otherNames) => Named(name, otherNames) with { NeedsHighTemperatureInvestment = true };

    private static Alloy Leaded(string name, string parts, params string[] otherNames) =>
        Named(name, otherNames) with { Composition = Composition.Of(parts) };

    private static IEnumerable<Alloy> Golds(string carat, params string[] colours) =>
        colours.Select(colour => Named(
            $"{carat} {colour}",
            [carat, "gold", $"{colour} gold", .. colour == "rose" ? (string[])[$"{carat} red", $"{carat} pink", "red gold", "pink gold"] : []]));
}
