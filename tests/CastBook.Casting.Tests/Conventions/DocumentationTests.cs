using System.Reflection;
using System.Xml.Linq;
using CastBook.Casting.Patterns;

namespace CastBook.Casting.Tests.Conventions;

public class DocumentationTests
{
    private static readonly Assembly Casting = typeof(MetalForPattern).Assembly;

    private static readonly Dictionary<string, XElement> Members = XDocument
        .Load(Path.Combine(AppContext.BaseDirectory, "CastBook.Casting.xml"))
        .Descendants("member")
        .ToDictionary(member => (string)member.Attribute("name")!);

    [Fact]
    public void Calculations_NameTheirSource()
    {
        var calculations = Casting.GetExportedTypes().Where(IsCalculation).ToList();

        calculations.Count.ShouldBeGreaterThan(12);
        foreach (var type in calculations)
        {
            Bold(type).ShouldContain("Source.", type.Name);
        }
    }

    [Fact]
    public void Formulas_NameWhatTheyAreValidFor()
    {
        foreach (var type in Casting.GetExportedTypes().Where(type => IsCalculation(type) && Bold(type).Contains("Formula.")))
        {
            Bold(type).ShouldContain("Valid for", type.Name);
        }
    }

    // A caster reads the messages, and strangers read the code: neither is sent to an address.
    [Fact]
    public void Documentation_HoldsNoAddresses() =>
        Members.Values.ShouldAllBe(member => !member.Value.Contains("http", StringComparison.OrdinalIgnoreCase) && !member.Value.Contains(".com", StringComparison.OrdinalIgnoreCase));

    // A static class is abstract and sealed; a mix is a value that computes itself.
    private static bool IsCalculation(Type type) =>
        (type.IsAbstract && type.IsSealed) || type.GetMethod("Compute", BindingFlags.Public | BindingFlags.Static | BindingFlags.DeclaredOnly) is not null;

    private static List<string> Bold(Type type) =>
        [.. Members[$"T:{type.FullName}"].Descendants("b").Select(b => b.Value)];
}
