using System.Globalization;
using System.Text;

namespace CastBook.Templates.Tests;

public sealed class TemplateMakerTests
{
    /// <summary>After a change on purpose: call MakeAll on the templates folder, look at the books, and check the files in.</summary>
    [Theory]
    [InlineData("casting-night/casting-night.xlsx")]
    [InlineData("casting-night/filled.xlsx")]
    [InlineData("wrenmoor-night/wrenmoor-night.xlsx")]
    public void MakeAll_CheckedInBook_HasTheSameParts(string path)
    {
        using var made = new MadeTemplates();

        SameParts(new SavedBook(File.ReadAllBytes(Path.Combine(made.Folder, path))), new SavedBook(File.ReadAllBytes(Path.Combine(RepositoryFolder.Templates, path))));
    }

    [Fact]
    public void MakeAll_CheckedInReadMe_IsTheSame()
    {
        using var made = new MadeTemplates();

        File.ReadAllText(Path.Combine(RepositoryFolder.Templates, "casting-night", "README.md")).ReplaceLineEndings("\n")
            .ShouldBe(File.ReadAllText(Path.Combine(made.Folder, "casting-night", "README.md")));
    }

    [Fact]
    public void CastingNight_MadeTwice_HasTheSameParts() => SameParts(SavedBook.Starter(), SavedBook.Starter());

    [Fact]
    public void DemoNight_MadeTwice_HasTheSameParts() => SameParts(SavedBook.Demo(), SavedBook.Demo());

    [Fact]
    public void DemoNight_UnderACultureWithDecimalCommas_HasTheSameParts()
    {
        var usual = SavedBook.Demo();
        var before = CultureInfo.CurrentCulture;
        var commas = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        commas.NumberFormat.NumberDecimalSeparator = ",";
        commas.NumberFormat.NumberGroupSeparator = ".";
        commas.DateTimeFormat.ShortDatePattern = "dd.MM.yyyy";
        CultureInfo.CurrentCulture = commas;
        try
        {
            SameParts(SavedBook.Demo(), usual);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    public void MakeAll_NoFolder_IsRefused(string? folder) =>
        Should.Throw<ArgumentException>(() => TemplateMaker.MakeAll(folder!));

    private static void SameParts(SavedBook one, SavedBook other)
    {
        one.Parts.Keys.Order(StringComparer.Ordinal).ShouldBe(other.Parts.Keys.Order(StringComparer.Ordinal));
        foreach (var (name, bytes) in one.Parts)
        {
            Encoding.UTF8.GetString(bytes).ShouldBe(Encoding.UTF8.GetString(other.Parts[name]), name);
        }
    }

    private sealed class MadeTemplates : IDisposable
    {
        public MadeTemplates() => TemplateMaker.MakeAll(Folder);

        public string Folder { get; } = Directory.CreateTempSubdirectory("castbook-templates").FullName;

        public void Dispose() => Directory.Delete(Folder, recursive: true);
    }
}
