#if !DEBUG
using System.Text;

namespace CastBook.Cli.Tests.Distribution;

/// <summary>What is given to others says nothing of the folder it was built in.</summary>
public sealed class BuiltPathsTests
{
    [Theory]
    [InlineData("castbook.dll")]
    [InlineData("CastBook.Casting.dll")]
    [InlineData("CastBook.Planning.dll")]
    [InlineData("CastBook.Templates.dll")]
    [InlineData("CastBook.Workbooks.dll")]
    [InlineData("CastBook.Workbooks.pdb")]
    public void Assembly_BuiltForOthers_NamesNoFolderOfThisMachine(string name)
    {
        var sources = Encoding.UTF8.GetBytes(Path.Combine(ReadmeTests.Repository, "src"));

        File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, name)).AsSpan().IndexOf(sources).ShouldBe(-1);
    }
}
#endif
