using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Planning.Words;
using UnitsNet;

namespace CastBook.Planning.Flasks;

/// <summary>How pieces hang on a trunk: gap, tilt and gates, from the shop's settings or usual values.</summary>
internal sealed class HangingRules
{
    // Usual values. A gate of at most 7 mm feeds while it is still liquid (common practice); 4 mm is the
    // shortest that can be cut. 3 mm of gate errs towards a full pour (common practice).
    private const double UsualGapMm = 3;
    private const double UsualAngleDegrees = 50;
    private const double ShortGateMm = 4;
    private const double LongGateMm = 7;
    private const double UsualGateDiameterMm = 3;

    private readonly Settings settings;
    private readonly double[] freeStubs;

    /// <summary>Reads the rules.</summary>
    /// <param name="settings">The shop's settings.</param>
    /// <param name="findings">Takes what is found.</param>
    public HangingRules(Settings settings, FindingList findings)
    {
        this.settings = settings;
        GapMm = settings.GapBetweenPieces?.Millimeters ?? UsualGapMm;
        var degrees = settings.GateAngle?.Degrees ?? UsualAngleDegrees;
        if (degrees is < 20 or > 90)
        {
            findings.Add(Catalogue.GateAngleOutOfRange.At(Subject.Setting(SettingName.GateAngle), Degrees(degrees)));
            degrees = UsualAngleDegrees;
        }

        Sin = Math.Sin(degrees * Math.PI / 180);
        Cos = degrees >= 90 ? 0 : Math.Cos(degrees * Math.PI / 180);
        freeStubs = settings.GateLength is { } length ? [length.Millimeters] : [ShortGateMm, LongGateMm];
    }

    /// <summary>The least gap between two pieces, in millimetres.</summary>
    public double GapMm { get; }

    /// <summary>Sine of the angle between trunk and piece.</summary>
    public double Sin { get; }

    /// <summary>Cosine of the angle between trunk and piece.</summary>
    public double Cos { get; }

    /// <summary>The gate lengths a piece may be hung on, in millimetres.</summary>
    /// <param name="piece">The row; its own gate wins.</param>
    public IReadOnlyList<double> StubsMm(Piece piece) => piece.Gate?.Length is { } own ? [own.Millimeters] : freeStubs;

    /// <summary>The number of gates of a piece; one where nobody says.</summary>
    /// <param name="piece">The row.</param>
    public static int GatesOf(Piece piece) => piece.Gate?.Count ?? 1;

    /// <summary>Whether the gates of a piece are in its weight already, and so in its volume.</summary>
    /// <param name="piece">The row.</param>
    public bool AreGatesIn(Piece piece) =>
        settings.WeightsIncludeGates == true && piece is { Weight: not null, PatternVolume: null, MetalEach: null };

    /// <summary>The diameter of a piece's gates.</summary>
    /// <param name="piece">The row.</param>
    public Length GateDiameter(Piece piece) =>
        piece.Gate?.Diameter ?? settings.GateDiameter ?? Length.FromMillimeters(UsualGateDiameterMm);

    /// <summary>Notes the usual values that a planned piece relied on.</summary>
    /// <param name="piece">A row that is in a flask.</param>
    /// <param name="assumed">Takes the notes.</param>
    public void Note(Piece piece, Assumptions assumed)
    {
        var unit = assumed.Units.Length;
        if (!AreGatesIn(piece) && piece.Gate?.Diameter is null && settings.GateDiameter is null)
        {
            assumed.Use(SettingName.GateDiameter, unit.Say(Length.FromMillimeters(UsualGateDiameterMm)));
        }

        if (piece.Gate?.Length is null && settings.GateLength is null)
        {
            var (shortest, longest) = (unit.OnTheTree(Length.FromMillimeters(ShortGateMm)), unit.OnTheTree(Length.FromMillimeters(LongGateMm)));
            assumed.Use(SettingName.GateLength, FlaskFindingWords.GateLengths(shortest, $"{longest} {unit.Name}"));
        }

        if (piece.Box is null)
        {
            return;
        }

        if (settings.GapBetweenPieces is null)
        {
            assumed.Use(SettingName.GapBetweenPieces, unit.Say(Length.FromMillimeters(UsualGapMm)));
        }

        if (settings.GateAngle is null)
        {
            assumed.Use(SettingName.GateAngle, Degrees(UsualAngleDegrees));
        }
    }

    private static string Degrees(double degrees) => SentenceWords.Degrees(Say.Plain(degrees));
}
