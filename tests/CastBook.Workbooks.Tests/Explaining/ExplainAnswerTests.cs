using System.Text.Json;
using System.Text.Json.Nodes;
using CastBook.Workbooks.Explaining;
using CastBook.Workbooks.Tests.Filling;
using Json.Schema;

namespace CastBook.Workbooks.Tests.Explaining;

public sealed class ExplainAnswerTests
{
    private static readonly JsonSchema Schema = JsonSchema.FromText(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "explain-answer.schema.json")));

    [Fact]
    public void Write_AllCells_IsWhatTheSchemaSays()
    {
        var book = Explained.From(Nights.Whole()).Book;

        var answer = JsonNode.Parse(ExplainAnswerJson.Write(book.IsFilled, book.All()))!;

        IsValid(answer).ShouldBeTrue();
        answer["isFilled"]!.GetValue<bool>().ShouldBeFalse();
        var metal = answer["cells"]![0]!;
        (metal["cell"]!.GetValue<string>(), metal["number"]!.GetValue<double>(), metal["unit"]!.GetValue<string>()).ShouldBe(("K5", 20.72, "g"));
        metal["numbers"]!.GetValue<string>().ShouldBe("2.3 g ÷ 1.15 g/cm³ × 10.36 g/cm³");
        metal["inputs"]![2]!["from"]!.GetValue<string>().ShouldBe("Materials!C2");
        metal["lines"]!.AsArray().Select(l => l!.GetValue<string>()).ShouldBe(Explained.From(Nights.Whole()).Lines("K5"));
    }

    [Fact]
    public void Write_CellThatIsNotWorkedOut_IsWhatTheSchemaSays()
    {
        var explained = Explained.From(Typed.Into(Nights.Whole().ToArray(), ("Harbour list", "D5", "2,3O")));

        var answer = JsonNode.Parse(ExplainAnswerJson.Write(true, [explained["K5"], explained["A1"]]))!;

        IsValid(answer).ShouldBeTrue();
        answer["cells"]![0]!["findings"]![0]!["id"]!.GetValue<string>().ShouldBe("weight-not-a-number");
        answer["cells"]![1]!["name"].ShouldBeNull();
    }

    [Theory]
    [InlineData("cell", "\"$A$1\"")]
    [InlineData("inputs", "[{}]")]
    [InlineData("number", "\"much\"")]
    [InlineData("extra", "0")]
    public void Schema_CellWithAWrongMember_IsRefused(string member, string value)
    {
        var explained = Explained.From(Nights.Whole());
        var answer = JsonNode.Parse(ExplainAnswerJson.Write(true, [explained["K5"]]))!;
        answer["cells"]![0]![member] = JsonNode.Parse(value);

        IsValid(answer).ShouldBeFalse();
    }

    private static bool IsValid(JsonNode answer) => Schema.Evaluate(JsonSerializer.SerializeToElement(answer)).IsValid;
}
