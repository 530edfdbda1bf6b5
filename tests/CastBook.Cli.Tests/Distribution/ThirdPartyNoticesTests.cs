namespace CastBook.Cli.Tests.Distribution;

/// <summary>Whoever gets the program gets the licences of what is inside.</summary>
public sealed class ThirdPartyNoticesTests
{
    [Fact]
    public void Notices_NameEveryShippedPackage()
    {
        var notices = File.ReadAllText(ThirdPartyNotices.Path);

        var shipped = ThirdPartyNotices.Shipped();

        shipped.Select(p => p.Name).ShouldContain("UnitsNet");
        shipped.Where(p => !notices.Contains($"\n{p.Name} {p.Version}\n  ", StringComparison.Ordinal)).ShouldBeEmpty(
            "after a change of packages run this test once with CASTBOOK_WRITE=1, which writes the file anew");
    }

    /// <summary>With <c>CASTBOOK_WRITE=1</c> the file is written anew.</summary>
    [Fact]
    public void Notices_AreThoseOfThePackages()
    {
        var packages = Environment.GetEnvironmentVariable("NUGET_PACKAGES")
            ?? Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.UserProfile), ".nuget", "packages");
        var made = ThirdPartyNotices.Make(packages);
        if (Environment.GetEnvironmentVariable("CASTBOOK_WRITE") == "1")
        {
            File.WriteAllText(ThirdPartyNotices.Path, made);
        }

        File.ReadAllText(ThirdPartyNotices.Path).ReplaceLineEndings("\n").ShouldBe(made.ReplaceLineEndings("\n"));
    }
}
