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

    /// <summary>A flask's or a mix's powder and water for a reader: <c>1,430 g + 543 ml</c>.</summary>
    /// <param name="powder">The powder.</param>
    /// <param name="water">The water.</param>
    public string Say(Mass powder, Volume water) => $"{Powder.Say(powder)} + {Water.Say(water)}";
}
