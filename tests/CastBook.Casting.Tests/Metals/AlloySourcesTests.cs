using CastBook.Casting.Metals;

namespace CastBook.Casting.Tests.Metals;

public class AlloySourcesTests
{
    public static TheoryData<string> Alloys => [.. BuiltInAlloys.All.Select(alloy => alloy.Name)];

    [Theory]
    [MemberData(nameof(Alloys))]
    public void Sources_EveryNumber_HasOneAndNoneIsLeftOver(string name)
    {
        var alloy = BuiltInAlloys.Named(name).Single();
        var sources = alloy.Sources;

        (sources.Composition is null).ShouldBe(alloy.Composition is null);
        (sources.Density is null).ShouldBe(alloy.Density is null);
        (sources.Melting is null).ShouldBe(alloy.Solidus is null && alloy.Liquidus is null);
        (sources.MetalTemperature is null).ShouldBe(alloy.MetalTemperature is null);
        (sources.FlaskTemperature is null).ShouldBe((alloy.FlaskTemperatureFine ?? alloy.FlaskTemperatureOrdinary ?? alloy.FlaskTemperatureHeavy) is null);
        (sources.QuenchSmall is null).ShouldBe(alloy.QuenchAfter.Small is null);
        (sources.QuenchMedium is null).ShouldBe(alloy.QuenchAfter.Medium is null);
        (sources.QuenchLarge is null).ShouldBe(alloy.QuenchAfter.Large is null);
    }

    // A number that could spoil a pour or hurt somebody is not taken from memory; the one wait that is, is the longer of its range.
    [Theory]
    [MemberData(nameof(Alloys))]
    public void Sources_OfWhatAPourDependsOn_AreNotMemory(string name)
    {
        var sources = BuiltInAlloys.Named(name).Single().Sources;

        NumberSource?[] pour = [sources.Density, sources.Melting, sources.MetalTemperature, sources.FlaskTemperature, sources.QuenchSmall, sources.QuenchLarge];
        pour.Where(source => source?.Kind == SourceKind.Memory).ShouldBeEmpty();
        if (sources.QuenchMedium is { Kind: SourceKind.Memory } medium)
        {
            medium.Others.ShouldBe("12 to 15 min; the longer is the safe side");
        }
    }

    [Theory]
    [MemberData(nameof(Alloys))]
    public void Sources_Words_SayTheirKind(string name)
    {
        var sources = BuiltInAlloys.Named(name).Single().Sources;

        foreach (var source in new[] { sources.Composition, sources.Density, sources.Melting, sources.MetalTemperature, sources.FlaskTemperature, sources.QuenchSmall, sources.QuenchMedium, sources.QuenchLarge })
        {
            if (source is null)
            {
                continue;
            }

            source.Words.ShouldMatch(source.Kind switch
            {
                SourceKind.Exact => "^exact$",
                SourceKind.Published => "^published [a-z].{4,}$",
                SourceKind.Rule => "^worked out from the composition$",
                SourceKind.CommonPractice => "^common practice$",
                _ => "^from memory, to be checked$",
            });
            source.Others?.Length.ShouldBeGreaterThan(10);
        }
    }

    // The density of a rule is the one the rule gives, and only where it is reliable.
    [Theory]
    [MemberData(nameof(Alloys))]
    public void Density_ByTheRule_IsWhatTheRuleGives(string name)
    {
        var alloy = BuiltInAlloys.Named(name).Single();
        if (alloy.Sources.Density is { Kind: SourceKind.Rule })
        {
            var estimate = DensityFromComposition.Compute(alloy.Composition!);

            estimate.Reliable.ShouldBeTrue();
            alloy.Density!.Value.ShouldBe(estimate.Density);
        }
    }

    [Fact]
    public void All_WithCompositionAndDensity_AreAtLeastFifty() =>
        BuiltInAlloys.All.Count(alloy => alloy.Composition is not null && alloy.Density is not null).ShouldBeGreaterThanOrEqualTo(50);

    [Fact]
    public void WhiteGolds_WithoutAPrintedDensity_AreAskedFor()
    {
        var whites = BuiltInAlloys.Named("white gold");

        whites.Count.ShouldBeGreaterThan(8);
        whites.ShouldAllBe(white => !white.MetalTemperature.HasValue && !white.Liquidus.HasValue);
        whites.ShouldAllBe(white => !white.Density.HasValue || white.Sources.Density!.Kind == SourceKind.Published);
    }
}
