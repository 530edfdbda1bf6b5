using CastBook.Casting.Patterns;
using CastBook.Planning.Shops;

namespace CastBook.Planning.Patterns;

/// <summary>Finds the material of a row: the row's own word, else the shop's setting.</summary>
internal sealed class MaterialBook(Shop shop)
{
    private readonly Dictionary<string, KnownMaterial> known = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>The material of a row; makes no finding.</summary>
    /// <param name="piece">The row.</param>
    public KnownMaterial Of(Piece piece)
    {
        var written = piece.Material?.Trim() ?? "";
        if (!known.TryGetValue(written, out var material))
        {
            known[written] = material = Find(written);
        }

        return material;
    }

    private KnownMaterial Find(string written)
    {
        var settings = shop.Settings;
        var usual = settings.PatternMaterial?.Trim() ?? "";
        var name = written.Length == 0 ? usual : written;
        var row = name.Length == 0
            ? null
            : shop.Materials.FirstOrDefault(m => string.Equals(m.Name.Trim(), name, StringComparison.OrdinalIgnoreCase));
        var isUsual = written.Length == 0 || string.Equals(written, usual, StringComparison.OrdinalIgnoreCase);
        var density = row?.Density ?? (isUsual ? settings.PatternDensity : null);
        return new(row?.Name.Trim() ?? name, row?.Kind ?? KindIn(name), density, row, AskTheSetting: isUsual && row is null);
    }

    private static PatternKind? KindIn(string name)
    {
        var words = name.Split([' ', '-', '_', '/', ',', '(', ')', '.'], StringSplitOptions.RemoveEmptyEntries);
        var resin = words.Contains("resin", StringComparer.OrdinalIgnoreCase);
        var wax = words.Contains("wax", StringComparer.OrdinalIgnoreCase);

        // "Wax resin" is a resin that is filled with wax: it decomposes, it does not melt out.
        return resin ? PatternKind.Resin : wax ? PatternKind.Wax : null;
    }
}
