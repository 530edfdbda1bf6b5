using CastBook.Casting.Patterns;
using CastBook.Planning.Findings;
using CastBook.Planning.Patterns;
using CastBook.Planning.Shops;
using CastBook.Planning.Words;

namespace CastBook.Planning.Metals;

/// <summary>What the castings that a shop weighed teach about its metal, by alloy and pattern material; nothing unless the shop asks for it.</summary>
internal sealed class CastingLessons
{
    private readonly Dictionary<(string Alloy, string Material), CastingFactor> factors = [];

    private CastingLessons()
    {
    }

    /// <summary>Of a shop that does not ask for it.</summary>
    public static CastingLessons None { get; } = new();

    /// <summary>Learns from the rows that have a reckoned and a weighed casting, of this night and of those before.</summary>
    /// <param name="night">The night.</param>
    /// <param name="findings">Takes what is found.</param>
    public static CastingLessons Of(Night night, FindingList findings)
    {
        if (night.Shop.Settings.LearnFromCastings != true)
        {
            return None;
        }

        var lessons = new CastingLessons();
        foreach (var group in Weighed(night).GroupBy(m => (m.Alloy.Known!.Name, m.Material.Name)))
        {
            lessons.Take(group.Key, CastingFactor.Compute([.. group.Select(m => (m.WorkedOut!.Value, m.Each!.Value))]), findings);
        }

        if (lessons.factors.Count == 0 && findings.All.All(f => f.Kind != Catalogue.CastingsDisagree && f.Kind != Catalogue.CastingsTooFew))
        {
            findings.Add(Catalogue.NoCastingsWeighed.At(Subject.Setting(SettingName.LearnFromCastings)));
        }

        return lessons;
    }

    /// <summary>What was learnt for a row; nothing where nothing was.</summary>
    /// <param name="metal">The row's metal.</param>
    public CastingFactor? For(PieceMetal metal) =>
        factors.Count > 0 && metal.Alloy.Known is { } alloy ? factors.GetValueOrDefault((alloy.Name, metal.Material.Name)) : null;

    // Reckoned apart, without lessons and without a word: rows of other nights are nobody's concern tonight.
    private static IEnumerable<PieceMetal> Weighed(Night night)
    {
        var quiet = new FindingList();
        var metals = new MetalOfPieces(night, new AlloyBook(night.Shop, quiet), new MaterialBook(night.Shop), quiet, None);
        return MetalOfPieces.Asked(metals.Compute(id => night.Pieces[id].MetalEach is not null && metals.IsOfPattern(night.Pieces[id])))
            .Where(m => m is { WorkedOut.Grams: > 0, Each.Grams: > 0, Alloy.Known: not null });
    }

    private void Take((string Alloy, string Material) key, CastingFactor learnt, FindingList findings)
    {
        var (subject, count) = (Subject.Setting(SettingName.LearnFromCastings), CountWords.Lines(learnt.Castings));
        var material = key.Material.Length == 0 ? MaterialFindingWords.Unnamed : key.Material;
        if (!learnt.IsEnough)
        {
            findings.Add(Catalogue.CastingsTooFew.At(subject, key.Alloy, material, count));
        }
        else if (!learnt.IsSound)
        {
            findings.Add(Catalogue.CastingsDisagree.At(subject, key.Alloy, material, Say.Percent(learnt.Factor), Say.Percent(learnt.Lowest), Say.Percent(learnt.Highest)));
        }
        else
        {
            factors[key] = learnt;
            findings.Add(Catalogue.CastingsTaught.At(subject, key.Alloy, material, Say.Percent(learnt.Factor), count));
        }
    }
}
