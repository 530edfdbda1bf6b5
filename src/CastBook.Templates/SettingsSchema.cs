using System.Reflection;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Templates.Words;
using CastBook.Workbooks.Settings;

namespace CastBook.Templates;

/// <summary>The JSON Schema of <c>castbook.json</c>, by which an editor offers its names and explains them.</summary>
public static class SettingsSchema
{
    /// <summary>The file's name.</summary>
    public const string FileName = "castbook.schema.json";

    private static readonly JsonSerializerOptions Readable = new() { WriteIndented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The schema, made of the settings and columns that CastBook knows.</summary>
    public static string Write()
    {
        var properties = new JsonObject { ["$schema"] = Typed("string", SchemaWords.Schema) };
        foreach (var (name, member) in Members())
        {
            properties[name] = member;
        }

        foreach (var setting in SettingGuide.All)
        {
            properties[setting.Name] = Setting(setting);
        }

        var schema = new JsonObject
        {
            ["$schema"] = "https://json-schema.org/draft/2020-12/schema",
            ["title"] = "castbook.json",
            ["description"] = SchemaWords.File,
            ["type"] = "object",
            ["properties"] = properties,
            ["patternProperties"] = new JsonObject { ["^Alloy \".+\" is$"] = Typed("string", SchemaWords.AlloyMeant) },
            ["additionalProperties"] = false,
        };
        return schema.ToJsonString(Readable) + "\n";
    }

    private static IEnumerable<(string Name, JsonObject Member)> Members()
    {
        yield return (SettingsFile.ColumnsKey, Object(SchemaWords.Columns, ColumnFields().ToDictionary(f => f, _ => Texts())));
        yield return (SettingsFile.ShopKey, Typed("string", SchemaWords.Shop));
        yield return (SettingsFile.SheetKey, Texts(SchemaWords.Sheet));
        yield return (SettingsFile.LimitsKey, Object(
            SchemaWords.Limits,
            SettingsFile.LimitNames.ToDictionary(name => name, _ => new JsonObject { ["type"] = "integer", ["minimum"] = 1 })));
    }

    private static IEnumerable<string> ColumnFields() =>
        typeof(PieceField).GetFields(BindingFlags.Public | BindingFlags.Static).Select(f => (string)f.GetRawConstantValue()!);

    private static JsonObject Setting(SettingGuide setting)
    {
        var description = setting.Unit.Length > 0 ? SchemaWords.InUnit(setting.WhatFor, setting.Unit) : setting.WhatFor;
        if (setting.Choices.Count > 0)
        {
            return new JsonObject { ["enum"] = Array(setting.Choices), ["description"] = description };
        }

        return setting.Unit.Length > 0
            ? new JsonObject { ["type"] = Array(["number", "string"]), ["description"] = description }
            : Typed("string", description);
    }

    private static JsonObject Typed(string type, string description) => new() { ["type"] = type, ["description"] = description };

    private static JsonObject Texts(string? description = null) => new()
    {
        ["type"] = Array(["string", "array"]),
        ["items"] = new JsonObject { ["type"] = "string" },
        ["description"] = description ?? SchemaWords.Headings,
    };

    private static JsonObject Object(string description, Dictionary<string, JsonObject> members) => new()
    {
        ["type"] = "object",
        ["description"] = description,
        ["properties"] = new JsonObject(members.Select(m => KeyValuePair.Create<string, JsonNode?>(m.Key, m.Value))),
        ["additionalProperties"] = false,
    };

    private static JsonArray Array(IEnumerable<string> words) => new([.. words.Select(w => (JsonNode)w)]);
}
