using CastBook.Casting.Names;
using CastBook.Casting.Patterns;
using CastBook.Planning.Findings;
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
        var isUsual = written.Length == 0 || IsSame(written, usual);
        var rows = Rows(name, isKnown: isUsual && settings.PatternDensity is not null);
        var row = rows.Count == 1 ? rows[0] : null;
        var density = row?.Density ?? (IsUnread(row) ? null : row?.CubeDensity ?? (isUsual ? settings.PatternDensity : null));
        var kind = row?.Kind ?? MaterialWords.KindIn(row?.Name ?? name) ?? MaterialWords.KindIn(name);
        var isUnknown = name.Length > 0 && rows.Count == 0 && kind is null && density is null;
        var impossible = density is { } given && !PatternDensityRange.IsPossible(given) ? density : null;
        return new(row?.Name.Trim() ?? name, kind, impossible is null ? density : null, row, AskTheSetting: isUsual && row is null)
        {
            Impossible = impossible,
            Choices = rows.Count > 1 && density is null ? [.. rows.Select(r => r.Name.Trim())] : [],
            Nearest = isUnknown ? Nearest(name) : [],
            TakenFrom = row is null || IsSame(row.Name, name) ? null : name,
        };
    }

    // The shop has said what its material weighs, and nobody can read it: what another line says is not that.
    private static bool IsUnread(Material? row) =>
        row is not null && (row.CannotRead(ShopField.Density) || row.CannotRead(ShopField.CubeMass) || row.CannotRead(ShopField.CubeEdge) || row.CannotRead(ShopField.CubeVolume));

    // By its name, else by what its words mean; else every row that says all that the name says, as "castable resin" does of "resin":
    // but never a row of a longer name for one whose density the shop has said.
    private List<Material> Rows(string name, bool isKnown)
    {
        var wanted = MaterialWords.Of(name);
        if (shop.Materials.FirstOrDefault(m => string.Equals(m.Name.Trim(), name, StringComparison.OrdinalIgnoreCase)) is { } row)
        {
            return [row];
        }

        var same = wanted.Count == 0 ? [] : shop.Materials.Where(m => IsSame(m.Name, name)).ToList();
        return same.Count > 0 || wanted.Count == 0 || isKnown ? same : [.. shop.Materials.Where(m => wanted.All(MaterialWords.Of(m.Name).Contains))];
    }

    private IReadOnlyList<string> Nearest(string name) =>
        Spelling.Nearest([(MaterialWords.Of(name), shop.Materials.Select(m => (MaterialWords.Of(m.Name), m.Name.Trim())))]);

    private static bool IsSame(string one, string other) =>
        string.Equals(one.Trim(), other.Trim(), StringComparison.OrdinalIgnoreCase)
        || (MaterialWords.Key(one) is { Length: > 0 } key && key == MaterialWords.Key(other));
}
