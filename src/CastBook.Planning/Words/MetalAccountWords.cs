namespace CastBook.Planning.Words;

/// <summary>The accounts of the Metal sheet: what an alloy takes and has, and the shares of its flasks.</summary>
internal static class MetalAccountWords
{
    public static string SharesHold => "clean re-melt of the same alloy; re-melt is used up first, flask by flask";

    // What is needed.
    public static string Needed => "Needed";

    public static string InNoFlask => "the metal of its pieces; nothing of it is in a flask";

    public static string Charges => "Charges";

    public static string AllArePoured => "all of its flasks are poured";

    public static string ChargesOfOpenFlasks => "the charges of its flasks that are not poured yet";

    public static string ItsCharge => "its charge";

    // What is to be bought.
    public static string ToBuy => "To buy";

    public static string ToBuyRule => "needed − re-melt that may be used − fresh in stock";

    public static string NeededMetal => "needed";

    public static string ChargesOfFlasks => "the charges of its flasks";

    // What there is.
    public static string FreshInStock => "Fresh in stock";

    public static string RemeltInStock => "Re-melt in stock";

    public static string InStock => "In stock";

    public static string BothStocks => "fresh + re-melt";

    public static string AsTyped => "as typed";

    public static string FreshStock => "fresh in stock";

    public static string RemeltStock => "re-melt in stock";

    public static string LeastFresh => "Least fresh";

    public static string RuleForAllMelts => "the shop's rule for all melts";

    public static string SupplierAdvice => "published supplier advice";

    // What its flasks get together.
    public static string FreshToUse => "Fresh to use";

    public static string RemeltToUse => "Re-melt to use";

    public static string EnoughForNone => "none: the stock is enough for no flask of it";

    public static string SharesOfFlasks => "the shares of its flasks";

    public static string LineOfFlask => "the line of the flask";

    // What one flask gets.
    public static string Fresh => "Fresh";

    public static string FreshRule(bool madeUp) => madeUp ? "charge − re-melt − other metals that make it up" : "charge − re-melt";

    public static string RemeltMetal => "re-melt";

    public static string FreshMetal => "fresh";

    public static string Remelt => "Re-melt";

    public static string WhatIsLeft => "what is left of it";

    public static string ChargeLessLeastFresh => "charge − the least fresh metal, that up to a whole step";

    public static string Charge => "charge";

    public static string ChargeOfFlask => "the charge of the flask";

    public static string MadeUpFrom => "Made up from";

    public static string MadeUpRule => "metals in the drawer that together have the alloy's composition, for what re-melt and fresh metal lack";

    public static string ColumnRemelt => "the column Re-melt";

    public static string ColumnFresh => "the column Fresh";

    public static string StockOf(string metal) => $"{metal} in stock";

    public static string OfIt(string mass) => $"{mass} of it";

    public static string OfNotedComposition(string alloy) => $"{alloy} of the composition that is noted for it";
}
