using CastBook.Casting.Metals;
using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Planning.Words;

namespace CastBook.Planning.Metals;

/// <summary>Collects the rows whose alloy is open or was inferred, and asks once for all rows that mean the same name.</summary>
internal sealed class OpenNames(AlloyMeanings meanings)
{
    // More choices than these do not help anybody to choose.
    private const int MostChoices = 6;

    private readonly Dictionary<string, OpenName> names = new(StringComparer.Ordinal);

    /// <summary>The name's entry; spellings that mean the same share it.</summary>
    /// <param name="key">The same text for spellings that mean the same.</param>
    /// <param name="written">The name as written.</param>
    /// <param name="meaning">What it came to.</param>
    public OpenName Of(string key, string written, AlloyMeaning meaning)
    {
        if (!names.TryGetValue(key, out var name))
        {
            names[key] = name = new OpenName(meaning);
        }

        if (!name.Spellings.Contains(written, StringComparer.OrdinalIgnoreCase))
        {
            name.Spellings.Add(written);
        }

        return name;
    }

    /// <summary>Adds a question or a note for each name.</summary>
    /// <param name="findings">Takes what is found.</param>
    public void Ask(FindingList findings)
    {
        foreach (var name in names.Values)
        {
            findings.Add(Finding(name));
        }
    }

    private Finding Finding(OpenName name)
    {
        var first = name.Spellings[0];
        var said = Say.Together([.. name.Spellings.Select(Quoted)]);
        var rows = name.Rows.Select(id => Subject.Piece(id, PieceField.Alloy));
        if (name.Meaning.Row is { } row)
        {
            return Catalogue.AlloyTakenAs.At(Subject.Column(PieceField.Alloy), said, Quoted(row.Alloy.Name.Trim()), first);
        }

        // What was answered is asked about in the cell of the answer.
        var (question, answer) = (Subject.Setting(SettingName.AlloyMeaning(first)), meanings.Answer(first));
        var asked = answer is null ? said : MetalFindingWords.AnswerFor(Quoted(answer), said);
        if (name.Meaning.Choices.Count > 0)
        {
            var count = name.Meaning.Choices.Count;
            var allNamed = count > MostChoices ? MetalFindingWords.NamesAll(Say.Count(count)) : "";
            return Catalogue.AlloyAmbiguous.At([question, .. rows], answer is null ? asked : asked + ",", Choices(name), first, allNamed);
        }

        if (MetalClay.IsMeant(answer ?? first))
        {
            return Catalogue.AlloyIsClay.At(answer is null ? [.. rows] : [question, .. rows], asked);
        }

        return Catalogue.AlloyUnknown.At(
            answer is null ? [.. rows] : [question, .. rows], asked, Say.Nearest(meanings.Nearest(answer ?? first)));
    }

    private static string Choices(OpenName name)
    {
        var choices = name.Meaning.Choices;
        return choices.Count <= MostChoices
            ? Say.Choice([.. choices.Select(c => Quoted(c.Name.Trim()))])
            : Say.Choice([.. Spread(choices).Select(c => Quoted(c.Name.Trim())), MetalFindingWords.OneOfMore(Say.Count(choices.Count - MostChoices))]);
    }

    // Those that come first because they are known well enough to be poured, then from all over the list, so that each colour of gold is among them.
    private static IEnumerable<Alloy> Spread(IReadOnlyList<Alloy> choices)
    {
        var first = choices.TakeWhile(c => c.MetalTemperature is not null).Take(MostChoices / 2).Count();
        var others = MostChoices - first;
        return choices.Take(first).Concat(Enumerable.Range(0, others).Select(i => choices[first + (i * (choices.Count - first) / others)]));
    }

    private static string Quoted(string name) => $"\"{name}\"";
}

/// <summary>A name that is open or was inferred, and where it stands.</summary>
/// <param name="meaning">What it came to.</param>
internal sealed class OpenName(AlloyMeaning meaning)
{
    /// <summary>What it came to.</summary>
    public AlloyMeaning Meaning => meaning;

    /// <summary>How the list spells it.</summary>
    public List<string> Spellings { get; } = [];

    /// <summary>The rows that say it.</summary>
    public List<int> Rows { get; } = [];
}
