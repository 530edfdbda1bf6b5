namespace CastBook.Workbooks.Words;

/// <summary>The cautions that stand once on every printed plan, in plain words.</summary>
internal static class Cautions
{
    /// <summary>A line each.</summary>
    public static string[] Lines =>
    [
        "Powder and knock-out dust hold silica, which scars the lungs: mask and damp cloth; the steam of the quench carries it too. Burnout gives off fumes and carbon monoxide: vent the kiln outside, never leave it alone, never open it while wax burns.",
        "Molten metal and water explode: dry warm tools, dry scrap, an ingot mould ready for surplus. Zinc fumes. A hot flask is heavy: two hands, clear way. Quench only when the button shows no red in shade. Never a hot flask or casting into pickle.",
        "Alcohol stays away from kiln and torch; uncured resin off the skin. Pickle and plating baths burn and gas: goggles, gloves, moving air, acid into water. The makers' data sheets and local rules come first.",
    ];
}
