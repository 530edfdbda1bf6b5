namespace CastBook.Casting.Metals;

/// <summary>Where the numbers of a built-in alloy come from; missing where the number is missing.</summary>
public sealed record AlloySources
{
    /// <summary>None: an alloy of the shop's own sheet.</summary>
    public static AlloySources None { get; } = new();

    /// <summary>Source of the composition.</summary>
    public NumberSource? Composition { get; init; }

    /// <summary>Source of the density.</summary>
    public NumberSource? Density { get; init; }

    /// <summary>Source of solidus and liquidus.</summary>
    public NumberSource? Melting { get; init; }

    /// <summary>Source of the metal temperature.</summary>
    public NumberSource? MetalTemperature { get; init; }

    /// <summary>Source of the flask temperatures.</summary>
    public NumberSource? FlaskTemperature { get; init; }

    /// <summary>Source of the wait before the quench, small flasks.</summary>
    public NumberSource? QuenchSmall { get; init; }

    /// <summary>Source of the wait before the quench, medium flasks.</summary>
    public NumberSource? QuenchMedium { get; init; }

    /// <summary>Source of the wait before the quench, large flasks.</summary>
    public NumberSource? QuenchLarge { get; init; }
}
