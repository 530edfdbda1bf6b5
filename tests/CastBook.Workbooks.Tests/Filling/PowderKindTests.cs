using CastBook.Planning;
using CastBook.Workbooks.Tests.Reading;

namespace CastBook.Workbooks.Tests.Filling;

/// <summary>A powder whose Kind is a word that nobody can read, from the book to the plan.</summary>
public sealed class PowderKindTests
{
    [Fact]
    public void Plan_KindThatNobodyCanRead_LeavesPowderAndWaterOpen()
    {
        using var book = Nights.WholeBuilder(binder: "cement").Build();

        var reading = TestBooks.Read(book);
        var plan = NightPlanner.Plan(reading.Night);

        var said = reading.Findings.Single(f => f.Id == "powder-kind-unreadable");
        $"{said.Seen} {said.Why} {said.Remedy}".ShouldBe(
            "Investment white powder has the Kind \"cement\", which is neither gypsum nor high temperature. "
            + "Water, working time and burnout of one kind ruin a mould of the other, so powder and water are not worked out, no usual schedule is used, and what gypsum does not bear is refused. "
            + "Type gypsum or high temperature there.");
        reading.Cells.Find(said.Subjects.ShouldHaveSingleItem())?.ToString().ShouldBe("Investments!B2");
        plan.Flasks.ShouldNotBeEmpty();
        plan.Flasks.Select(f => (f.Powder.HasValue, f.Water.HasValue, f.Burnout.HasValue)).Distinct().ShouldBe([(false, false, true)]);
        plan.Mixes.ShouldBeEmpty();
    }
}
