using CastBook.Planning;
using CastBook.Planning.Findings;
using CastBook.Workbooks;
using CastBook.Workbooks.Settings;

namespace CastBook.Templates.Tests;

/// <summary>The templates as a shop meets them: filled.</summary>
public sealed class FilledTemplateTests
{
    [Fact]
    public void Fill_DemoNight_StopsForEachSlipOnce()
    {
        var filled = Fill(DemoNight.Write, "wrenmoor-night.xlsx");

        filled.Findings.Where(f => f.Severity == Severity.Stop).Select(f => f.Id).Order(StringComparer.Ordinal)
            .ShouldBe(["metal-short", "pattern-density-missing", "piece-fits-no-flask", "piece-over-crucible", "weight-not-a-number"]);
        filled.Findings.Select(f => f.Id).ShouldContain("washed-too-long");
    }

    [Fact]
    public void Fill_DemoNight_PlansEveryRowWithoutASlip()
    {
        var filled = Fill(DemoNight.Write, "wrenmoor-night.xlsx");

        var others = filled.Plan.Pieces.Where(p => p.Status != PieceStatus.Planned).Select(p => filled.Night.Pieces[p.Id].Name);
        others.ShouldBe(["Torc, test piece", "Paperweight, sea urchin", "Hair pin, long", "Carved toggle", "Spoon bowl, try-out"]);
        filled.Plan.Flasks.Select(f => f.Alloy).Distinct().ShouldBe(["sterling silver", "14k yellow", "tin bronze"], ignoreOrder: true);
    }

    [Fact]
    public void Fill_DemoNight_LacksNoNumberOnTheNightPlan()
    {
        foreach (var flask in Fill(DemoNight.Write, "wrenmoor-night.xlsx").Plan.Flasks)
        {
            flask.Powder.ShouldNotBeNull(flask.Letter);
            flask.Burnout.ShouldNotBeNull(flask.Letter);
            flask.MetalTemperature.ShouldNotBeNull(flask.Letter);
            flask.FlaskTemperature.ShouldNotBeNull(flask.Letter);
            flask.QuenchAfter.ShouldNotBeNull(flask.Letter);
        }
    }

    /// <summary>A new list knows the alloys' and materials' names and nothing else: it asks, and puts nothing into a flask.</summary>
    [Fact]
    public void Fill_NewList_AsksAndPlansNothing()
    {
        var filled = Fill(s => StarterBooks.Write(s, StarterKind.List), "pieces.xlsx");

        filled.Plan.Flasks.ShouldBeEmpty();
        filled.Findings.Select(f => f.Id).ShouldContain("pattern-density-missing");
        filled.Findings.Select(f => f.Id).ShouldContain("flasks-not-known");
        filled.Findings.Select(f => f.Id).ShouldNotContain("weight-meaning-unknown");
    }

    private static FillResult Fill(Action<Stream> write, string name)
    {
        using var book = new MemoryStream();
        write(book);
        book.Position = 0;
        using var output = new MemoryStream();
        return BookFiller.Fill(book, output, name, BookSettings.None);
    }
}
