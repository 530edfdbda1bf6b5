using UnitsNet;

namespace CastBook.Planning.Shops;

/// <summary>The units in which the shop wants its answers, a choice for each quantity.</summary>
/// <param name="Metal">Metal that is weighed out.</param>
/// <param name="Powder">Investment powder.</param>
/// <param name="Water">Water and slurry.</param>
/// <param name="Temperature">Temperatures.</param>
/// <param name="Length">Lengths.</param>
/// <param name="Buying">Metal that is bought.</param>
public sealed record ShopUnits(
    WrittenMass Metal, WrittenMass Powder, WrittenVolume Water, WrittenTemperature Temperature, WrittenLength Length, WrittenMass Buying)
{
    /// <summary>The units of a shop that has named none.</summary>
    public static ShopUnits Metric { get; } = Of(new Settings());

    /// <summary>The usual ones of a shop in the United States.</summary>
    public static ShopUnits UnitedStates { get; } = new(
        WrittenMass.Pennyweight, WrittenMass.Pound, WrittenVolume.Millilitre, WrittenTemperature.Fahrenheit, WrittenLength.Inch,
        WrittenMass.OfBuying.First(b => b.Name == WrittenMass.TroyOunce.Name));

    /// <summary>The units of a shop: those it names, else grams, millilitres, degrees Celsius and millimetres.</summary>
    /// <param name="settings">Its settings.</param>
    public static ShopUnits Of(Settings settings)
    {
        ArgumentNullException.ThrowIfNull(settings);
        var metal = settings.MetalIn ?? WrittenMass.Gram;
        return new(
            metal,
            settings.PowderIn ?? WrittenMass.PowderGram,
            settings.WaterIn ?? WrittenVolume.Millilitre,
            settings.TemperaturesIn ?? WrittenTemperature.Celsius,
            settings.LengthsIn ?? WrittenLength.Millimetre,
            settings.MetalBoughtIn ?? WrittenMass.OfBuying.First(b => b.Name == metal.Name));
    }

    /// <summary>A heading with its unit as the shop wants it: <c>Height (mm)</c> as <c>Height (in)</c>.</summary>
    /// <param name="heading">The heading in grams, millilitres, millimetres or degrees Celsius; any other stays as it is.</param>
    /// <param name="isPowder">Whether what it weighs is powder.</param>
    public string Heading(string heading, bool isPowder = false)
    {
        ArgumentNullException.ThrowIfNull(heading);
        var open = heading.LastIndexOf('(');
        var wanted = open < 0 ? null : heading[open..] switch
        {
            "(mm)" => Length.Name,
            "(°C)" => Temperature.Name,
            "(°C/h)" => Temperature.Name + "/h",
            "(ml)" => Water.Name,
            "(g)" => isPowder ? Powder.Name : Metal.Name,
            _ => null,
        };
        return wanted is null ? heading : $"{heading[..open]}({wanted})";
    }

    /// <summary>A flask's or a mix's powder and water for a reader: <c>1,430 g + 543 ml</c>.</summary>
    /// <param name="powder">The powder.</param>
    /// <param name="water">The water.</param>
    public string Say(Mass powder, Volume water) => $"{Powder.Say(powder)} + {Water.Say(water)}";
}
