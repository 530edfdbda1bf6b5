using System.Text.Json;
using System.Text.Json.Nodes;
using CastBook.Planning.Clock;
using CastBook.Workbooks.Reports;
using CastBook.Workbooks.Settings;
using CastBook.Workbooks.Tests.Filling;
using CastBook.Workbooks.Tests.Reading;
using Json.Schema;

namespace CastBook.Workbooks.Tests.Reports;

public sealed class FillAnswerTests
{
    private static readonly JsonSchema Schema = JsonSchema.FromText(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "fill-answer.schema.json")));

    [Fact]
    public void Write_PlannedNight_IsWhatTheSchemaSays()
    {
        var answer = Answer(Nights.Whole());

        ShouldBeValid(answer);
        answer["flasks"]!.AsArray().ShouldNotBeEmpty();
        // By hand: 2.3 g / 1.15 g/cm³ = 2 cm³; × 10.36 g/cm³ = 20.72 g; six of them 124.32 g.
        var otter = answer["pieces"]![0]!;
        (otter["row"]!.GetValue<int>(), otter["piece"]!.GetValue<string>(), otter["qty"]!.GetValue<int>(), otter["status"]!.GetValue<string>())
            .ShouldBe((5, "Otter signet", 6, "planned"));
        (otter["metalEachG"]!.GetValue<double>(), otter["metalG"]!.GetValue<double>()).ShouldBe((20.72, 124.32));
        otter["flasks"]!.AsArray().Sum(f => f!["qty"]!.GetValue<int>()).ShouldBe(6);
    }

    // By hand as on the Clock sheet: stages to 150, 370 and 732 °C in 8 h, 1 h 56 down to 538 °C at 100 an hour and 2 h held.
    [Fact]
    public void Write_NightWithHours_GivesLoadsAndClock()
    {
        var answer = Answer(Nights.Whole(), new BookSettings { Clock = new ClockQuestion(new DateTimeOffset(2026, 11, 25, 20, 0, 0, TimeSpan.FromHours(1)), IsPour: false, TimeZoneInfo.CreateCustomTimeZone("one", TimeSpan.FromHours(1), "one", "one")) });

        ShouldBeValid(answer);
        var load = answer["kilnLoads"]!.AsArray().ShouldHaveSingleItem()!;
        (load["load"]!.GetValue<int>(), load["kiln"]!.GetValue<string>(), load["schedule"]!.GetValue<string>()).ShouldBe((1, "the kiln", "resin by the maker"));
        load["toFirstPourH"]!.GetValue<double>().ShouldBe(11.9, 0.06);
        load["stages"]!.AsArray().Select(s => (s!["targetC"]!.GetValue<double>(), s["holdH"]!.GetValue<double>())).ShouldBe([(150, 2), (370, 2), (732, 4), (538, 2)]);
        var clock = answer["clock"]!;
        clock["start"]!.GetValue<string>().ShouldBe("2026-11-25T20:00+01:00");
        var pour = clock["steps"]!.AsArray().First(s => s!["kind"]!.GetValue<string>() == "pour")!;
        (pour["step"]!.GetValue<string>(), pour["beginsAt"]!.GetValue<string>(), pour["hands"]!.GetValue<bool>(), pour["done"]!.GetValue<bool>())
            .ShouldBe(("Pour A, flask at 538 °C", "2026-11-26T10:20+01:00", true, false));
    }

    [Fact]
    public void Write_PlainList_IsWhatTheSchemaSays()
    {
        var answer = Answer(Nights.Plain());

        ShouldBeValid(answer);
        answer["pieces"]!.AsArray().Count.ShouldBe(3);
        answer["flasks"]!.AsArray().ShouldBeEmpty();
        answer["bound"]!["provedFewest"]!.GetValue<bool>().ShouldBeFalse();
    }

    [Theory]
    [InlineData("01_rich_excel365_like.xlsx")]
    [InlineData("04_strict_iso29500.xlsx")]
    [InlineData("06b_libreoffice_macro_ext.xlsm")]
    [InlineData("07_exceljs_webform.xlsx")]
    [InlineData("09_sheetjs_export.xlsx")]
    [InlineData("14_openxmlsdk_minimal.xlsx")]
    public void Write_BookOfAnotherWriter_IsWhatTheSchemaSays(string name)
    {
        using var book = TestBooks.Open(name);

        ShouldBeValid(Answer(book));
    }

    [Fact]
    public void Write_Findings_SayWhereTheyStand()
    {
        using var book = TestBooks.Open("09_sheetjs_export.xlsx");
        var answer = Answer(book);

        var finding = answer["findings"]!.AsArray().Single(f => f!["id"]!.GetValue<string>() == "weight-not-a-number")!;
        finding["severity"]!.GetValue<string>().ShouldBe("stop");
        (finding["sheet"]!.GetValue<string>(), finding["cell"]!.GetValue<string>()).ShouldBe(("Export", "C5"));
        finding["text"]!.GetValue<string>().ShouldBe("\"=1.1*2\" is not a number: it is a formula typed as text.");
    }

    [Theory]
    [InlineData("other", "1")]
    [InlineData("bound", "null")]
    [InlineData("pieces", "[{}]")]
    [InlineData("flasks", "[{\"flask\": \"a\"}]")]
    [InlineData("findings", "{}")]
    public void Schema_AnswerWithAWrongMember_IsRefused(string member, string value)
    {
        var answer = Answer(Nights.Whole());
        answer[member] = JsonNode.Parse(value);

        Evaluate(answer).IsValid.ShouldBeFalse();
    }

    [Theory]
    [InlineData("pieces", "status", "\"gone\"")]
    [InlineData("pieces", "metalEachG", "-1")]
    [InlineData("pieces", "qty", "1.5")]
    [InlineData("flasks", "chargeG", "null")]
    [InlineData("flasks", "extra", "0")]
    [InlineData("metal", "buyG", "\"much\"")]
    [InlineData("kilnLoads", "toFirstPourH", "null")]
    [InlineData("kilnLoads", "loadAtC", "\"cold\"")]
    [InlineData("findings", "severity", "\"warning\"")]
    [InlineData("findings", "cell", "\"$A$1\"")]
    public void Schema_LineWithAWrongMember_IsRefused(string list, string member, string value)
    {
        var answer = Answer(list == "findings" ? Nights.Plain() : Nights.Whole());
        answer[list]![0]![member] = JsonNode.Parse(value);

        Evaluate(answer).IsValid.ShouldBeFalse();
    }

    [Theory]
    [InlineData("pieces", "metalG")]
    [InlineData("flasks", "waterMl")]
    [InlineData("metal", "neededG")]
    [InlineData("findings", "remedy")]
    public void Schema_LineWithoutAMember_IsRefused(string list, string member)
    {
        var answer = Answer(list == "findings" ? Nights.Plain() : Nights.Whole());
        answer[list]![0]!.AsObject().Remove(member).ShouldBeTrue();

        Evaluate(answer).IsValid.ShouldBeFalse();
    }

    private static JsonObject Answer(Stream book, BookSettings? settings = null) => JsonNode.Parse(FillAnswerJson.Write(Filled.From(book, settings: settings).Result))!.AsObject();

    private static void ShouldBeValid(JsonNode answer)
    {
        var result = Evaluate(answer);
        var errors = (result.Details ?? []).Where(d => d.Errors is not null).SelectMany(d => d.Errors!.Select(e => $"{d.InstanceLocation} {e.Value}"));
        result.IsValid.ShouldBeTrue(string.Join('\n', errors));
    }

    private static EvaluationResults Evaluate(JsonNode answer) =>
        Schema.Evaluate(JsonSerializer.SerializeToElement(answer), new EvaluationOptions { OutputFormat = OutputFormat.List });
}
