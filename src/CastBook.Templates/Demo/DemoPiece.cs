namespace CastBook.Templates.Demo;

/// <summary>A line of the demo's list.</summary>
/// <param name="Name">The piece.</param>
/// <param name="Customer">Who it is for.</param>
/// <param name="Quantity">How many.</param>
/// <param name="Weight">Pattern weight in g, or what was typed instead of it.</param>
/// <param name="Material">What the pattern is made of.</param>
/// <param name="Alloy">What it is cast in.</param>
/// <param name="DueDay">Day of December 2037; null where nobody waits for it.</param>
internal sealed record DemoPiece(string Name, string Customer, int Quantity, object? Weight, string Material, string Alloy, int? DueDay)
{
    /// <summary>Volume of the pattern in ml.</summary>
    public double? Volume { get; init; }

    /// <summary>Outer diameter and band width of a ring, in mm.</summary>
    public (double Diameter, double Band)? Ring { get; init; }

    /// <summary>Length from the gate, width and thickness of what is no ring, in mm.</summary>
    public (double Length, double Width, double Thickness)? Box { get; init; }

    /// <summary>Thickness of a ring's band, in mm.</summary>
    public double? Thick { get; init; }

    /// <summary>Finest and heaviest section, in mm.</summary>
    public (double Finest, double Heaviest)? Sections { get; init; }

    /// <summary>How many gates.</summary>
    public int? Gates { get; init; }

    /// <summary>Diameter of a gate, in mm.</summary>
    public double? GateDiameter { get; init; }

    /// <summary>How many fit a tree, as typed.</summary>
    public string? PerTree { get; init; }

    /// <summary>Time in the wash, in minutes.</summary>
    public double? Washed { get; init; }

    /// <summary>Cure of each side, in minutes.</summary>
    public double? Cured { get; init; }

    /// <summary>Whether it is left out tonight.</summary>
    public bool LeaveOut { get; init; }

    /// <summary>What the bench wants to remember.</summary>
    public string? Note { get; init; }

    /// <summary>What stands under a heading.</summary>
    /// <param name="heading">The heading.</param>
    /// <exception cref="ArgumentException">The demo has no such column.</exception>
    public object? Under(string heading) => heading switch
    {
        "Piece" => Name,
        "Customer" => Customer,
        "Qty" => Quantity,
        "Pattern weight (g)" => Weight,
        "Pattern volume (ml)" => Volume,
        "Material" => Material,
        "Alloy" => Alloy,
        "Shape" => Ring is not null ? "ring" : Box is not null ? "other" : null,
        "Length (mm)" => Ring?.Diameter ?? Box?.Length,
        "Width (mm)" => Ring?.Band ?? Box?.Width,
        "Thickness (mm)" => Thick ?? Box?.Thickness,
        _ => UnderLater(heading),
    };

    private object? UnderLater(string heading) => heading switch
    {
        "Finest section (mm)" => Sections?.Finest,
        "Heaviest section (mm)" => Sections?.Heaviest,
        "Gates" => Gates,
        "Gate diameter (mm)" => GateDiameter,
        "Per tree" => PerTree,
        "Washed (min)" => Washed,
        "Cured (min)" => Cured,
        "Due" => DueDay is int day ? new DateOnly(2037, 12, day) : null,
        "Leave out" => LeaveOut ? "yes" : null,
        "Bench note" => Note,
        _ => throw new ArgumentException($"The demo has no column \"{heading}\".", nameof(heading)),
    };
}
