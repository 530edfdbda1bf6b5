using CastBook.Planning.Findings;

namespace CastBook.Workbooks.Reading.Headings;

/// <summary>The words by which the columns of a list of pieces are known, in all languages; a shop adds its own in its settings.</summary>
internal static class HeadingWords
{
    // The order counts: a column once taken is taken. With "Pieces" and "Qty" in a list the first names the pieces, with "Code" and "Pieces" it counts them.
    private static readonly (string Field, Dimension Dimension)[] Fields =
    [
        (PieceField.Quantity, Dimension.None),
        (PieceField.Piece, Dimension.None),
        (PieceField.PatternMass, Dimension.Mass),
        (PieceField.PatternVolume, Dimension.Volume),
        (PieceField.Alloy, Dimension.None),
        (PieceField.Material, Dimension.None),
        (PieceField.Shape, Dimension.None),
        (PieceField.Length, Dimension.Length),
        (PieceField.Width, Dimension.Length),
        (PieceField.Thickness, Dimension.Length),
        (PieceField.Sizes, Dimension.Length),
        (PieceField.FinestSection, Dimension.Length),
        (PieceField.HeaviestSection, Dimension.Length),
        (PieceField.Gates, Dimension.None),
        (PieceField.GateDiameter, Dimension.Length),
        (PieceField.GateLength, Dimension.Length),
        (PieceField.StonesIn, Dimension.None),
        (PieceField.PerTree, Dimension.None),
        (PieceField.PrintedAt, Dimension.Temperature),
        (PieceField.Washed, Dimension.Time),
        (PieceField.Cured, Dimension.Time),
        (PieceField.Due, Dimension.None),
        (PieceField.Night, Dimension.None),
        (PieceField.Done, Dimension.None),
        (PieceField.Customer, Dimension.None),
        (PieceField.KeepInFlask, Dimension.None),
        (PieceField.LeaveOut, Dimension.None),
    ];

    /// <summary>The fields of a piece, with the words of every language.</summary>
    public static IReadOnlyList<FieldHeadings> Piece { get; } = Array.ConvertAll(Fields, f => new FieldHeadings(f.Field, f.Dimension, Of(f.Field)));

    /// <summary>The same, to be looked up.</summary>
    public static WordIndex PieceIndex { get; } = new(Piece);

    /// <summary>What a field of a piece measures.</summary>
    public static Dimension DimensionOf(string field)
    {
        foreach (var known in Fields)
        {
            if (known.Field == field)
            {
                return known.Dimension;
            }
        }

        return Dimension.None;
    }

    private static List<HeadingWord> Of(string field)
    {
        var words = new List<HeadingWord>();
        foreach (var language in LanguageWords.All)
        {
            foreach (var line in language.Lines)
            {
                if (line.About != field)
                {
                    continue;
                }

                foreach (var text in line.Words)
                {
                    words.Add(new HeadingWord(text)
                    {
                        Rank = line.Rank,
                        NeedsUnit = line.NeedsUnit,
                        IsHeight = line.IsHeight,
                        IsStatus = line.IsStatus,
                        IsWhat = line.IsWhat,
                        IsPerson = line.IsPerson,
                        WithGates = line.WithGates,
                        Meaning = line.Meaning,
                        Material = line.Material,
                        Language = language.Language,
                    });
                }
            }
        }

        return words;
    }
}
