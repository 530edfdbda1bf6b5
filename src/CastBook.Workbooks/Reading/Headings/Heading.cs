namespace CastBook.Workbooks.Reading.Headings;

/// <summary>What a heading may mean.</summary>
/// <param name="Known">The words and their field.</param>
/// <param name="Rank">How sure that is; the lowest is the surest.</param>
/// <param name="Unit">The unit it names; missing where none is.</param>
internal sealed record HeadingSense(KnownWord Known, int Rank, CellUnit? Unit);

/// <summary>A heading taken apart: its words, and the unit it names.</summary>
/// <remarks>
/// <c>Pattern weight (g)</c>, <c>Weight, g</c>, <c>Höhe [mm]</c>, <c>wax_weight_g</c>, <c>Poids en g</c> and <c>Wt g</c> all name their unit.
/// <c>Stones in</c> does not mean inches: so a last word that may be a unit is read as a word first, and as a unit after that.
/// </remarks>
internal sealed class Heading
{
    private const int LessSureBelowAGroup = WordIndex.RankStep / 2;

    private readonly List<HeadingReading> readings;
    private readonly List<Heading> halves;
    private readonly string? group;
    private readonly CellUnit? groupUnit;

    private Heading(string text, List<HeadingReading> readings, List<Heading> halves, string? group = null, CellUnit? groupUnit = null) =>
        (Text, this.readings, this.halves, this.group, this.groupUnit) = (text, readings, halves, group, groupUnit);

    /// <summary>The heading as written, on one line.</summary>
    public string Text { get; }

    /// <summary>The unit that it surely names, in brackets or after a comma; null where it names none so.</summary>
    public CellUnit? MarkedUnit => readings.Count == 0 ? null : readings[0].Unit;

    /// <summary>Whether it tells something of headings below it: their unit, or that they are of something other than the piece.</summary>
    public bool TellsOfBelow => MarkedUnit is not null || OnlyUnit() is not null || WordKey.Parts(Text) is { Count: <= 2 } words && words.Exists(SmallWords.Others.Contains);

    /// <summary>Takes a heading apart.</summary>
    public static Heading Parse(string text)
    {
        var line = string.Join(' ', text.Replace('\u00A0', ' ').Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        var halves = new List<Heading>();
        var parts = text.Split(['/', '|', '\n'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        if (parts.Length == 2)
        {
            halves.AddRange(Array.ConvertAll(parts, Parse));
        }

        return new Heading(line, HeadingReading.Of(line), halves);
    }

    /// <summary>The same heading where it stands below another one that is over several columns.</summary>
    /// <param name="over">The heading above.</param>
    public Heading Below(Heading over) => new(Text, readings, halves, over.Text, over.MarkedUnit ?? over.OnlyUnit());

    /// <summary>Whether the heading says this, and with which unit.</summary>
    /// <param name="said">Words of a heading, without unit.</param>
    /// <param name="unit">The unit named; missing where none is.</param>
    public bool Says(string said, out CellUnit? unit)
    {
        var key = WordKey.Of(said);
        foreach (var reading in readings)
        {
            if (reading.Words.Count > 0 && WordKey.Of(reading.Words) == key)
            {
                unit = reading.Unit;
                return true;
            }
        }

        unit = null;
        return false;
    }

    /// <summary>Whether the heading says what another one says, units apart.</summary>
    /// <param name="other">The other heading.</param>
    /// <param name="unit">The unit that this heading names; missing where none is.</param>
    public bool SaysAs(Heading other, out CellUnit? unit)
    {
        foreach (var reading in other.readings)
        {
            if (Says(string.Join(' ', reading.Words), out unit))
            {
                return true;
            }
        }

        unit = null;
        return false;
    }

    /// <summary>What the heading may mean.</summary>
    /// <param name="index">The words to look for.</param>
    public List<HeadingSense> Senses(WordIndex index)
    {
        var senses = new List<HeadingSense>();
        foreach (var reading in readings)
        {
            AddSenses(senses, index, reading);
            if (senses.Count > 0)
            {
                return senses;
            }
        }

        return halves.Count == 2 ? Agreeing(halves[0].Senses(index), halves[1].Senses(index)) : senses;
    }

    /// <summary>The order in which the heading names the sizes of a piece; null where it names none, or leaves their order open.</summary>
    /// <param name="index">The words to look for.</param>
    public IReadOnlyList<string>? OrderOfSizes(WordIndex index)
    {
        foreach (var reading in readings)
        {
            if (SizeOrder.Of(reading.Words.FindAll(w => SizeOrder.IsSize(w, index)), index) is { } order)
            {
                return order;
            }
        }

        return null;
    }

    /// <summary>What the heading would mean if its unit did not measure something else; null where it means nothing of the kind.</summary>
    /// <param name="index">The words to look for.</param>
    public HeadingSense? Astray(WordIndex index)
    {
        foreach (var reading in readings)
        {
            foreach (var known in reading.Unit is null ? [] : index.Find(reading.Words))
            {
                if (index.Fields[known.FieldAt].Dimension is not Dimension.None and var dimension && dimension != reading.Unit!.Dimension)
                {
                    return new HeadingSense(known, known.Rank, reading.Unit);
                }
            }
        }

        return null;
    }

    // Two languages in one heading: what both say.
    private static List<HeadingSense> Agreeing(List<HeadingSense> first, List<HeadingSense> second)
    {
        var both = new List<HeadingSense>();
        foreach (var sense in first)
        {
            var other = second.FindIndex(s => s.Known.FieldAt == sense.Known.FieldAt);
            if (other >= 0)
            {
                both.Add(sense with { Unit = sense.Unit ?? second[other].Unit });
            }
        }

        return both;
    }

    private void AddSenses(List<HeadingSense> senses, WordIndex index, HeadingReading reading)
    {
        var (found, rankOff) = (index.Find(reading.Words), 0);
        var onlySizes = false;
        if (found.Count == 0 && reading.WithoutEach() is { } rest)
        {
            (found, rankOff, onlySizes) = (index.Find(rest), -1, true);
        }

        var unit = reading.Unit ?? groupUnit;
        foreach (var known in found)
        {
            var dimension = index.Fields[known.FieldAt].Dimension;
            var isAmount = dimension is Dimension.Mass or Dimension.Volume;
            var fits = unit is null || (reading.Unit is null && unit.Dimension != dimension) ? !known.Word.NeedsUnit : unit.Dimension == dimension;
            var isOfOther = isAmount ? reading.IsOfOther : dimension == Dimension.Length && reading.IsOfOtherLength;
            if (fits && (isAmount || !onlySizes) && !isOfOther && MayStandBelowGroup(isAmount))
            {
                senses.Add(new HeadingSense(known, known.Rank + rankOff + (group is null ? 0 : LessSureBelowAGroup), unit?.Dimension == dimension ? unit : null));
            }
        }
    }

    // Below "Customer" or "Stone" nothing is the piece's; nor is a weight below words that nothing knows.
    private bool MayStandBelowGroup(bool isAmount)
    {
        if (group is null)
        {
            return true;
        }

        var words = WordKey.Parts(group);
        return !words.Exists(SmallWords.Others.Contains) && (!isAmount || HeadingWords.PieceIndex.Find(words).Count > 0);
    }

    private CellUnit? OnlyUnit() => HeadingUnit.TryParse(Text, out var unit) ? unit : null;
}
