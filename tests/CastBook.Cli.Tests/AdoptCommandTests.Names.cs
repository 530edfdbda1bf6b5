using CastBook.Workbooks.Files;
using CastBook.Workbooks.Settings;
using ClosedXML.Excel;

namespace CastBook.Cli.Tests;

/// <content>What the list names and does not say: its alloys and materials, how many and of what.</content>
public sealed partial class AdoptCommandTests
{
    // Names of the list stand in the shop file: what is asked of them is asked there.
    [Fact]
    public void Adopt_NamesOfTheList_StandInTheShopFileAndAreAskedThere()
    {
        var book = Book("Nights.xlsx", "Piece;Qty;Pattern weight (g);Alloy;Material", "Otter ring;2;1.2;Bronze CuSn12;Gießharz");
        Adopt(book, "piece alone").ShouldBe(0, errors.ToString());

        var filled = BookFile.Fill(book, null, dryRun: true, SettingsFile.Load(folder, null, new Dictionary<string, string>()), TimeProvider.System).Result;

        var places = filled.Findings.Zip(filled.Places).ToLookup(f => f.First.Id, f => f.Second.Text);
        places["alloy-density-missing"].ShouldHaveSingleItem().ShouldStartWith("shop.xlsx, Alloys!C2 Bronze CuSn12");
        places["pattern-density-missing"].ShouldHaveSingleItem().ShouldStartWith("shop.xlsx, Materials!C2 Gießharz");
    }

    // What its column holds is known as soon as the column is: the same run asks what the names in it mean.
    [Fact]
    public void Adopt_ColumnOfAlloysToldNow_AsksWhatTheirNamesMean()
    {
        var book = Book("Class.xlsx", "Piece;Qty;Pattern weight (g);Stuff", "Otter ring;2;1.2;Silver", "Gull;1;2;silver", "Fob;1;2;fine gold");

        Adopt(book, "D", "piece alone", "0", "", "spin", "", "", "", "sterling without deoxidant").ShouldBe(0, errors.ToString());

        output.ToString().ShouldContain("Your \"Silver\" is (1 sterling without deoxidant, 2 deoxidised sterling, 3 fine silver, ");
        output.ToString().ShouldNotContain("Your \"fine gold\"");
        var filled = BookFile.Fill(book, null, dryRun: true, SettingsFile.Load(folder, null, new Dictionary<string, string>()), TimeProvider.System).Result;
        filled.Findings.ShouldNotContain(f => f.Id == "alloy-ambiguous");
        filled.Night.Shop.Settings.AlloyMeanings["Silver"].ShouldBe("sterling without deoxidant");
        output.GetStringBuilder().Clear();

        Adopt(book, "", "", "", "", "", "", "", "", "2").ShouldBe(0, errors.ToString());

        output.ToString().ShouldContain(") [sterling without deoxidant]: ");
        Shop(book).Settings.AlloyMeanings["Silver"].ShouldBe("deoxidised sterling");
    }

    // Two names of one alloy are one line, or what is one melt would be two.
    [Fact]
    public void Adopt_TwoNamesOfOneAlloy_ShareItsLine()
    {
        var book = Book("Nights.xlsx", "Piece;Qty;Pattern weight (g);Alloy", "Otter ring;2;1.2;SS", "Gull;1;2;ster.", "Fob;1;2;sterling");

        Adopt(book, "piece alone", "0", "", "spin", "", "", "", "deoxidised sterling", "2").ShouldBe(0, errors.ToString());

        using (var made = new XLWorkbook(In("shop.xlsx")))
        {
            Column(made, "Alloys").ShouldBe(["Alloy", "deoxidised sterling"]);
        }

        var filled = BookFile.Fill(book, null, dryRun: true, SettingsFile.Load(folder, null, new Dictionary<string, string>()), TimeProvider.System).Result;
        filled.Findings.ShouldNotContain(f => f.Id == "alloy-ambiguous");
        filled.Night.Shop.Settings.AlloyMeanings.Values.ShouldAllBe(a => a == "deoxidised sterling");
    }

    // A class: whose wax it is, and what it weighs.
    [Fact]
    public void Adopt_ListOfNamesAndWeights_AsksHowManyAndOfWhat()
    {
        var book = Book("Class.xlsx", "Student;Wax weight (g)", "Ada;3.2", "Ben;1.1");

        // No column holds how many, and none the alloy.
        Adopt(book, "", "", "piece alone", "0", "1", "silver", "", "spin", "", "", "", "1").ShouldBe(0, errors.ToString());

        output.ToString().ShouldContain("How many of each piece, where the list does not say (1 for one of each): ");
        output.ToString().ShouldContain("What all of it is cast in, where the list does not say: ");
        output.ToString().ShouldContain("Your \"silver\" is (1 sterling without deoxidant, ");
        var filled = BookFile.Fill(book, null, dryRun: true, SettingsFile.Load(folder, null, new Dictionary<string, string>()), TimeProvider.System).Result;
        filled.Night.Pieces.Select(p => (p.Name, p.Quantity, p.Alloy)).ShouldBe([("Ada", 1, "silver"), ("Ben", 1, "silver")]);
        filled.Findings.ShouldNotContain(f => f.Id == "quantity-column-missing" || f.Id == "alloy-column-missing" || f.Id == "alloy-ambiguous");
    }

    [Fact]
    public void Adopt_HeadingThatSaysGatesAreOn_DoesNotAskForThem()
    {
        var book = Book("Guss.xlsx", "Werk;Stück;Wachs mit Angüssen (kg);Legierung", "Reiher;1;0,385;CuSn10");

        Adopt(book).ShouldBe(0, errors.ToString());

        output.ToString().ShouldContain("  C   Wachs mit Angüssen (kg)  weight");
        output.ToString().ShouldNotContain("with their gates");
        BookFile.Fill(book, null, dryRun: true, SettingsFile.Load(folder, null, new Dictionary<string, string>()), TimeProvider.System).Result
            .Night.Shop.Settings.WeightsIncludeGates.ShouldBe(true);
    }
}
