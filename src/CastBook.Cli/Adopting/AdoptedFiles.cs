using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using CastBook.Cli.Words;
using CastBook.Workbooks.Adopting;
using CastBook.Workbooks.Files;
using CastBook.Workbooks.Settings;

namespace CastBook.Cli.Adopting;

/// <summary>Writes what was learnt beside a book: a new shop file, and <c>castbook.json</c>, of which all that stands there is kept.</summary>
/// <param name="folder">The book's folder.</param>
/// <param name="output">Where it is said.</param>
/// <param name="clock">For the name under which the file as it was is kept.</param>
internal sealed class AdoptedFiles(string folder, TextWriter output, TimeProvider clock)
{
    private static readonly JsonSerializerOptions Readable = new() { WriteIndented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    private static readonly JsonDocumentOptions Lenient = new() { AllowTrailingCommas = true, CommentHandling = JsonCommentHandling.Skip };

    /// <summary>Writes a shop file under a name that is free.</summary>
    /// <param name="write">Writes what is in it.</param>
    /// <returns>Its name.</returns>
    public string WriteShop(Action<Stream> write)
    {
        using var made = new MemoryStream();
        write(made);
        using var file = New(folder, "shop", '-', ".xlsx");
        made.WriteTo(file);
        var name = Path.GetFileName(file.Name);
        output.WriteLine(AdoptWords.ShopMade(name));
        return name;
    }

    /// <summary>Writes answers into a shop file that stands there.</summary>
    /// <param name="path">The shop file.</param>
    /// <param name="answers">What changed.</param>
    public void ChangeShop(string path, ShopAnswers answers)
    {
        var (left, backup) = BookFile.Answer(path, answers, clock);
        var name = Path.GetFileName(path);
        output.WriteLine(backup is null ? AdoptWords.ShopUnchanged(name) : AdoptWords.ShopChanged(name, Path.GetFileName(backup)));
        foreach (var answer in left)
        {
            output.WriteLine(AdoptWords.NoPlace(name, answer));
        }
    }

    /// <summary>Adds to <c>castbook.json</c> what it does not say yet.</summary>
    /// <param name="shop">The shop file to name; missing for none.</param>
    /// <param name="headings">Headings by the field they mean, and the heading that each takes the place of.</param>
    public void WriteSettings(string? shop, IReadOnlyDictionary<string, NamedHeading> headings)
    {
        var path = Path.Combine(folder, SettingsFile.Name);
        var was = File.Exists(path) ? File.ReadAllText(path) : null;
        var root = was is null ? [] : JsonNode.Parse(was, documentOptions: Lenient)!.AsObject();
        if (shop is not null && Member(root, SettingsFile.ShopKey) is null)
        {
            root[SettingsFile.ShopKey] = shop;
        }

        if (headings.Count > 0)
        {
            Add(root, headings);
        }

        output.WriteLine(was is null ? AdoptWords.SettingsMade(SettingsFile.Name) : AdoptWords.SettingsChanged(SettingsFile.Name, Keep(path)));
        TemporaryFile.WriteLines(path, [root.ToJsonString(Readable)]);
    }

    private static void Add(JsonObject root, IReadOnlyDictionary<string, NamedHeading> headings)
    {
        if (Member(root, SettingsFile.ColumnsKey) is not JsonObject columns)
        {
            root[SettingsFile.ColumnsKey] = columns = [];
        }

        foreach (var (field, heading) in headings)
        {
            var standing = Member(columns, field);
            List<string> words = standing switch
            {
                JsonArray several => [.. several.Select(w => (string)w!)],
                JsonValue one => [(string)one!],
                _ => [],
            };
            words.RemoveAll(w => w == heading.Was);
            words.Add(heading.Heading);
            columns[standing?.GetPropertyName() ?? field] = new JsonArray([.. words.Select(w => (JsonNode)w)]);
        }
    }

    // Names are read without regard to capitals.
    private static JsonNode? Member(JsonObject of, string name) => of.FirstOrDefault(m => m.Key.Equals(name, StringComparison.OrdinalIgnoreCase)).Value;

    private string Keep(string path)
    {
        var kept = Directory.CreateDirectory(Path.Combine(folder, BookFile.BackupFolder)).FullName;
        using var was = File.OpenRead(path);
        using var copy = New(kept, string.Create(CultureInfo.InvariantCulture, $"castbook {clock.GetLocalNow():yyyy-MM-dd HHmmss}"), ' ', ".json");
        was.CopyTo(copy);
        return $"{BookFile.BackupFolder}/{Path.GetFileName(copy.Name)}";
    }

    // Under the name itself, or with the next number that is free: another adopt of the same second may be writing too.
    private static FileStream New(string where, string stem, char before, string extension)
    {
        for (var number = 1; ; number++)
        {
            var path = Path.Combine(where, number == 1 ? stem + extension : string.Create(CultureInfo.InvariantCulture, $"{stem}{before}{number}{extension}"));
            try
            {
                return new FileStream(path, FileMode.CreateNew, FileAccess.Write);
            }
            catch (IOException) when (File.Exists(path))
            {
                // That name is taken.
            }
        }
    }
}
