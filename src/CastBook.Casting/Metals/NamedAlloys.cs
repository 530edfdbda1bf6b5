namespace CastBook.Casting.Metals;

/// <summary>
/// Alloys of the trade that are known by name only, so that a row that names one is asked for its numbers and not for its
/// spelling. Nothing else of them stands here.
/// </summary>
/// <remarks>
/// The carat numbers are those of ISO 9202 and of national laws; the designations of copper alloys are those of EN 1982 and
/// EN 12163, which name the composition. Leaded ones carry it, because they are refused.
/// </remarks>
internal static class NamedAlloys
{
    public static IReadOnlyList<Alloy> All { get; } =
    [
        .. Golds("22k", "white"),
        .. Golds("21k", "yellow", "white", "rose"),
        .. Golds("10k", "green"),
        .. Golds("9k", "green"),
        .. Golds("8k", "yellow", "white", "rose"),

        // Beside the one such alloy with numbers, so that the colour alone does not decide for it.
        Named("22k rose with silver", GoldAlloys.Reds("22k")),
        Named("10k yellow without zinc", GoldAlloys.Marks("10k", "yellow")),
        Named("10k rose without silver", GoldAlloys.Reds("10k")),
        Named("10k nickel white", GoldAlloys.Marks("10k", "white")),
        Named("9k palladium white", GoldAlloys.Marks("9k", "white")),

        // No family name for these: a plain "bronze" or "brass" is settled among the alloys with numbers, or by the shop's sheet.
        Named("bronze CuSn6", "CuSn6"),
        Named("bronze CuSn8", "CuSn8"),
        Named("bronze CuSn12", "CuSn12", "tin bronze CuSn12", "C90800"),
        Named("brass CuZn10", "CuZn10", "brass 90/10"),
        Named("brass CuZn20", "CuZn20", "brass 80/20"),
        Named("brass CuZn37", "CuZn37", "brass 63/37"),
        Named("brass CuZn40", "CuZn40", "brass 60/40"),
        Named("nickel silver"),
        Named("copper"),

        // "SS" is sterling silver to one shop and stainless steel to another.
        Named("stainless steel", "SS") with { NeedsHighTemperatureInvestment = true },
        Leaded("leaded brass CuZn39Pb3", "Cu 580 Zn 390 Pb 30", "CuZn39Pb3", "brass CuZn39Pb3"),
        Leaded("leaded gunmetal CuSn5Zn5Pb5", "Cu 850 Sn 50 Zn 50 Pb 50", "CuSn5Zn5Pb5", "C83600", "LG2", "gunmetal LG2", "Rotguss", "Rg5"),
        Leaded("leaded brass C85700", "Cu 630 Zn 350 Sn 10 Pb 10", "C85700", "C857"),

        Named("palladium 500") with { NeedsHighTemperatureInvestment = true },
    ];

    private static Alloy Named(string name, params string[] otherNames) => new() { Name = name, OtherNames = otherNames };

    private static Alloy Leaded(string name, string parts, params string[] otherNames) =>
        Named(name, otherNames) with { Composition = Composition.Of(parts), Sources = new() { Composition = NumberSource.Exact } };

    private static IEnumerable<Alloy> Golds(string carat, params string[] colours) =>
        colours.Select(colour => Named($"{carat} {colour}", colour == "rose" ? GoldAlloys.Reds(carat) : GoldAlloys.Marks(carat, colour)));
}
