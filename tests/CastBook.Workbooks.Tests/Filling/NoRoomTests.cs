namespace CastBook.Workbooks.Tests.Filling;

/// <summary>A list with something of the shop's right beside it: the computed values stand on a sheet of their own.</summary>
public sealed class NoRoomTests
{
    private const string List = "Harbour list";

    [Fact]
    public void Fill_CellsBesideTheListInUse_ValuesStandOnTheComputedSheet()
    {
        var filled = Filled.From(Crowded());

        filled.Row("Computed", 3).ShouldBe(["Row", "Piece", "Metal each (g)", "Metal (g)", "Flask", "Mix", "Burnout (h)", "Checks"]);
        filled["Computed", "B4"].ShouldBe("Otter signet");
        filled["Computed", "C4"].ShouldBe(20.72);
        filled[List, "M4"].ShouldBe("price list");
        filled[List, "K4"].ShouldBeNull();
        filled.Ids.ShouldContain("columns-no-room");
        filled.Again().Result.Changed.ShouldBeFalse();
    }

    // Where a built tree hangs is known from that sheet too, even when the list was turned round since.
    [Fact]
    public void Fill_FlaskWaxed_ItsPiecesAreKnownFromTheComputedSheet()
    {
        var first = Filled.From(Crowded());
        var letters = first["Computed", "E4"];

        var waxed = first.AfterTyping(
            ("Trees", "H5", "waxed"),
            (List, "B5", "Gull stud"), (List, "C5", 12), (List, "D5", 0.46), (List, "G5", 9), (List, "H5", 8), (List, "I5", 3),
            (List, "B6", "Otter signet"), (List, "C6", 6), (List, "D6", 2.3), (List, "G6", 24), (List, "H6", 12), (List, "I6", 6));

        waxed["Computed", "B5"].ShouldBe("Otter signet");
        waxed["Computed", "E5"].ShouldBe(letters);
        waxed.Ids.ShouldNotContain("flask-without-pieces");
        waxed.Plan.Flasks[0].State.ShouldBe(CastBook.Planning.FlaskState.Waxed);
    }

    private static byte[] Crowded() => Typed.Into(Nights.Whole().ToArray(), (List, "M4", "price list"));
}
