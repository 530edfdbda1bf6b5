using CastBook.Workbooks.Files;
using CastBook.Workbooks.Tests.Reading;

namespace CastBook.Workbooks.Tests.Files;

public sealed class OwnerFileTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("castbook-owner-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void WhoHasOpen_NoOwnerFile_IsNobody() => OwnerFile.WhoHasOpen(Book).ShouldBeNull();

    [Fact]
    public void WhoHasOpen_OwnerFileOfAnOfficeProgram_NamesItsOwner()
    {
        File.Copy(TestBooks.PathOf("hostile/~$h00_minimal_ok.xlsx"), Path.Combine(folder, "~$list.xlsx"));

        OwnerFile.WhoHasOpen(Book).ShouldBe("Ines");
    }

    [Fact]
    public void WhoHasOpen_LockFile_NamesItsOwner()
    {
        File.WriteAllText(Path.Combine(folder, ".~lock.list.xlsx#"), "Jörn Müller,jm,bench,24.11.2026 20:00,file:///home/jm;");

        OwnerFile.WhoHasOpen(Book).ShouldBe("Jörn Müller");
    }

    [Fact]
    public void WhoHasOpen_EmptyOwnerFile_IsAnotherProgram()
    {
        File.WriteAllText(Path.Combine(folder, "~$list.xlsx"), "");

        OwnerFile.WhoHasOpen(Book).ShouldBe("another program");
    }

    [Theory]
    [InlineData("~$list.xlsx", true)]
    [InlineData(".~lock.list.xlsx#", true)]
    [InlineData("list.xlsx", false)]
    public void IsOwnerFile_Name_TellsThemApart(string name, bool expected) => OwnerFile.IsOwnerFile(name).ShouldBe(expected);

    private string Book => Path.Combine(folder, "list.xlsx");
}
