using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using CastBook.Planning.Findings;
using CastBook.Workbooks.Files;
using CastBook.Workbooks.Words;
using Microsoft.Extensions.Configuration;

namespace CastBook.Workbooks.Settings;

/// <summary>Loads <c>castbook.json</c> and the <c>CASTBOOK_</c> variables.</summary>
/// <remarks>
/// <para><code>{ "columns": { "patternMass": ["Peso modelo"] }, "shop": "shop.xlsx", "sheet": ["March", "April"], "Melt loss": "2" }</code></para>
/// <para>A later source wins: the user's file, the file beside the workbook, the environment.
/// A variable is the setting's name in capitals, <c>CASTBOOK_MELT_LOSS</c>. Without file and variable nothing is loaded.</para>
/// </remarks>
public static class SettingsFile
{
    /// <summary>The file's name.</summary>
    public const string Name = "castbook.json";

    /// <summary>What environment variables of CastBook begin with.</summary>
    public const string VariablePrefix = "CASTBOOK_";

    /// <summary>More words for headings.</summary>
    public const string ColumnsKey = "columns";

    /// <summary>The shop file.</summary>
    public const string ShopKey = "shop";

    /// <summary>The sheets to fill.</summary>
    public const string SheetKey = "sheet";

    /// <summary>How much a book may ask of the machine.</summary>
    public const string LimitsKey = "limits";

    /// <summary>The schema by which an editor explains the file; nothing for us.</summary>
    private const string SchemaKey = "$schema";

    /// <summary>The names that may stand in the file besides those of settings.</summary>
    internal static IReadOnlyList<string> Keys { get; } = [ColumnsKey, ShopKey, SheetKey, LimitsKey];

    /// <summary>The names of limits.</summary>
    public static IReadOnlyList<string> LimitNames { get; } = ["parts", "part megabytes", "book megabytes", "times packed"];

    /// <summary>Loads the settings around a workbook.</summary>
    /// <param name="folder">The workbook's folder.</param>
    /// <param name="userFolder">The user's folder for settings; missing to leave it out.</param>
    /// <param name="environment">Environment variables, by name.</param>
    /// <exception cref="BookRefusedException">A file is no valid JSON.</exception>
    public static BookSettings Load(string folder, string? userFolder, IReadOnlyDictionary<string, string> environment)
    {
        ArgumentNullException.ThrowIfNull(folder);
        ArgumentNullException.ThrowIfNull(environment);
        var settings = BookSettings.None;
        foreach (var (path, whose) in new[] { (userFolder, OriginWords.InYourFolder(Name)), (folder, OriginWords.BesideTheBook(Name)) }
            .Where(f => f.Item1 is not null).Select(f => (Path.Combine(f.Item1!, Name), f.Item2)).Where(f => File.Exists(f.Item1)))
        {
            settings = Over(settings, FromFile(path, whose));
        }

        var variables = environment
            .Where(v => v.Key.StartsWith(VariablePrefix, StringComparison.OrdinalIgnoreCase))
            .Select(v => (Spec: SpecOf(v.Key[VariablePrefix.Length..]), v.Value))
            .Where(v => v.Spec is not null)
            .OrderBy(v => v.Spec!.Name, StringComparer.Ordinal) // a system lists them in another order each time
            .ToDictionary(v => v.Spec!.Name, v => v.Value, StringComparer.OrdinalIgnoreCase);
        return variables.Count == 0 ? settings : Over(settings, new BookSettings
        {
            Values = variables,
            Origins = variables.Keys.ToDictionary(name => name, name => OriginWords.Variable(VariableOf(name)), StringComparer.OrdinalIgnoreCase),
        });
    }

    /// <summary>A new <c>castbook.json</c> that names a shop file.</summary>
    /// <param name="shop">The shop file's name.</param>
    public static byte[] NamingShop(string shop) => Encoding.UTF8.GetBytes($"{{ \"{ShopKey}\": \"{JsonEncodedText.Encode(shop)}\" }}\n");

    /// <summary>A <c>castbook.json</c> in one line that makes headings known.</summary>
    /// <param name="words">The headings by field.</param>
    public static string NamingHeadings(IReadOnlyDictionary<string, IReadOnlyList<string>> words)
    {
        var columns = new JsonObject(words.Select(w => KeyValuePair.Create<string, JsonNode?>(w.Key, new JsonArray([.. w.Value.Select(h => (JsonNode)h)]))));
        return new JsonObject { [ColumnsKey] = columns }.ToJsonString(new JsonSerializerOptions { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping });
    }

    private static string VariableOf(string setting) => VariablePrefix + setting.Replace(' ', '_').ToUpperInvariant();

    private static BookSettings FromFile(string path, string whose)
    {
        IConfigurationRoot root;
        try
        {
            using var stream = File.OpenRead(path);
            root = new ConfigurationBuilder().AddJsonStream(stream).Build();
        }
        catch (Exception e) when (e is FormatException or JsonException or InvalidDataException or IOException or UnauthorizedAccessException)
        {
            throw new BookRefusedException(Catalogue.SettingsFileUnreadable.At(Subject.Book, path), e);
        }

        var values = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase);
        var columns = new Dictionary<string, IReadOnlyList<string>>(StringComparer.OrdinalIgnoreCase);
        var (shop, sheets, caps) = ((string?)null, (IReadOnlyList<string>)[], Caps.Usual);
        foreach (var section in root.GetChildren())
        {
            if (section.Key.Equals(ColumnsKey, StringComparison.OrdinalIgnoreCase))
            {
                foreach (var field in section.GetChildren())
                {
                    columns[field.Key] = Words(field);
                }
            }
            else if (section.Key.Equals(ShopKey, StringComparison.OrdinalIgnoreCase))
            {
                shop = section.Value is { Length: > 0 } file ? Path.Combine(Path.GetDirectoryName(Path.GetFullPath(path))!, file) : null;
            }
            else if (section.Key.Equals(SheetKey, StringComparison.OrdinalIgnoreCase))
            {
                sheets = Words(section);
            }
            else if (section.Key.Equals(LimitsKey, StringComparison.OrdinalIgnoreCase))
            {
                caps = section.GetChildren().Aggregate(caps, Limit);
            }
            else if (section.Key != SchemaKey)
            {
                // A list or an object under the name of a setting is read as the words in it, so that it is used or found fault with.
                values[SpecOf(section.Key)?.Name ?? section.Key] = section.Value ?? string.Join("; ", Words(section));
            }
        }

        return new BookSettings
        {
            Columns = columns,
            Values = values,
            Origins = values.Keys.ToDictionary(name => name, _ => whose, StringComparer.OrdinalIgnoreCase),
            ShopFile = shop,
            Sheets = sheets,
            Caps = caps,
        };
    }

    private static Caps Limit(Caps caps, IConfigurationSection limit)
    {
        var known = int.TryParse(limit.Value, NumberStyles.None, CultureInfo.InvariantCulture, out var most) && most > 0;
        return ShopWords.Key(limit.Key) switch
        {
            "PARTS" when known => caps with { Parts = most },
            "PARTMEGABYTES" when known => caps with { PartMegabytes = most },
            "BOOKMEGABYTES" when known => caps with { BookMegabytes = most },
            "TIMESPACKED" when known => caps with { TimesPacked = most },
            _ => throw new BookRefusedException(Catalogue.LimitUnreadable.At(Subject.Book, limit.Key, limit.Value ?? "")),
        };
    }

    // One text, or a list of them.
    private static IReadOnlyList<string> Words(IConfigurationSection section) =>
        section.Value is { } one ? (one.Length > 0 ? [one] : []) : [.. section.GetChildren().Select(w => w.Value).OfType<string>()];

    private static SettingSpec? SpecOf(string name) => SettingSpec.All.FirstOrDefault(s => ShopWords.Key(s.Name) == ShopWords.Key(name));

    private static BookSettings Over(BookSettings below, BookSettings above) => new()
    {
        Columns = Merge(below.Columns, above.Columns),
        Values = Merge(below.Values, above.Values),
        Origins = Merge(below.Origins, above.Origins),
        ShopFile = above.ShopFile ?? below.ShopFile,
        Caps = above.Caps == Caps.Usual ? below.Caps : above.Caps,
        Sheets = above.Sheets.Count > 0 ? above.Sheets : below.Sheets,
    };

    private static Dictionary<string, T> Merge<T>(IReadOnlyDictionary<string, T> below, IReadOnlyDictionary<string, T> above)
    {
        var merged = new Dictionary<string, T>(below, StringComparer.OrdinalIgnoreCase);
        foreach (var (key, value) in above)
        {
            merged[key] = value;
        }

        return merged;
    }
}
