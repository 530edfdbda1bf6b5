using System.Text.Json.Nodes;
using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Settings;
using Json.Schema;

namespace CastBook.Templates.Tests;

public sealed class SettingsSchemaTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("castbook-schema").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Write_CheckedInSchema_IsTheSame() =>
        File.ReadAllText(Path.Combine(RepositoryFolder.Templates, SettingsSchema.FileName)).ReplaceLineEndings("\n").ShouldBe(SettingsSchema.Write());

    [Theory]
    [InlineData("""{ "$schema": "castbook.schema.json", "shop": "shop.xlsx", "sheet": ["March", "April"], "Melt loss": 2, "Charge step": "5" }""", true)]
    [InlineData("""{ "columns": { "patternMass": ["Peso modelo"], "piece": "Nummer" }, "limits": { "part megabytes": 1024 } }""", true)]
    [InlineData("""{ "Casting method": "spin", "Alloy \"sterling\" is": "deoxidised sterling" }""", true)]
    [InlineData("""{ "Melt los": 2 }""", false)]
    [InlineData("""{ "Casting method": "by hand" }""", false)]
    [InlineData("""{ "Melt loss": [2] }""", false)]
    [InlineData("""{ "columns": { "weight": ["Gewicht"] } }""", false)]
    [InlineData("""{ "limits": { "part megabytes": 0 } }""", false)]
    public void Write_Settings_AreAcceptedOrNot(string json, bool accepted) =>
        JsonSchema.FromText(SettingsSchema.Write()).Evaluate(System.Text.Json.JsonDocument.Parse(json).RootElement).IsValid.ShouldBe(accepted);

    /// <summary>What an editor offers is what CastBook reads: a name of the schema that it does not know would be a finding.</summary>
    [Fact]
    public void Load_EveryNameOfTheSchema_IsKnown()
    {
        var names = JsonNode.Parse(SettingsSchema.Write())!["properties"]!.AsObject().Select(p => p.Key).ToList();

        names.Except(["$schema", "columns", "shop", "sheet", "limits"]).Order(StringComparer.Ordinal)
            .ShouldBe(SettingGuide.All.Select(s => s.Name).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Load_SchemaLineAndMisspeltNames_OnlyTheseAreFindings()
    {
        File.WriteAllText(
            Path.Combine(folder, SettingsFile.Name),
            """{ "$schema": "castbook.schema.json", "shops": "shop.xlsx", "Melt los": { "value": 2 }, "Gate angel": 50, "columns": { "patternMas": ["x"] } }""");
        using var book = new MemoryStream(SavedBook.Demo().Bytes);

        var reading = Workbooks.Reading.BookReader.Read(book, SettingsFile.Load(folder, null, new Dictionary<string, string>()));
        using var package = reading.Package;

        reading.Findings.Where(f => f.Id == "setting-unknown").Select(f => $"{f.Seen} {f.Why} {f.Remedy}").Order(StringComparer.Ordinal).ShouldBe(
        [
            "No setting is called \"Gate angel\". It was left alone. The nearest is \"Gate angle\".",
            "No setting is called \"Melt los\". It was left alone. The nearest is \"Melt loss\".",
            "No setting is called \"patternMas\". It was left alone. The nearest is \"patternMass\".",
            "No setting is called \"shops\". It was left alone. The nearest is \"shop\".",
        ]);
    }

    [Fact]
    public void Load_ListUnderASettingOfOneNumber_IsAFinding()
    {
        File.WriteAllText(Path.Combine(folder, SettingsFile.Name), """{ "Melt loss": [2, 3] }""");
        using var book = new MemoryStream(SavedBook.Demo().Bytes);

        var reading = Workbooks.Reading.BookReader.Read(book, SettingsFile.Load(folder, null, new Dictionary<string, string>()));
        using var package = reading.Package;

        var said = reading.Findings.Single(f => f.Id == "setting-unreadable");
        said.Severity.ShouldBe(Severity.Stop);
        said.Seen.ShouldBe("Melt loss says \"2; 3\", which is not a number in %.");
    }
}
