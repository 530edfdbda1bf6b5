using System.Globalization;
using System.Text.RegularExpressions;
using CastBook.Planning.Clock;
using UnitsNet;

namespace CastBook.Planning.Tests.Clock;

/// <summary>What is proposed where steps fall outside the shop's hours, done as it is told.</summary>
public sealed partial class ProposalTests
{
    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 60)];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Plan_ProposalFollowed_LeavesWhatItSays(int seed) => Check(Invent(seed));

    // Days that differ, breaks, and days away.
    [Theory]
    [MemberData(nameof(Seeds))]
    public void Plan_ProposalFollowedInAnyWeek_LeavesWhatItSays(int seed) => Check(HoursOfWorkTests.Invent(seed));

    private static void Check(Night night)
    {
        var plan = NightPlanner.Plan(night);
        if (plan.Findings.FirstOrDefault(f => f.Id == "steps-outside-hours") is not { } finding || finding.Remedy.StartsWith("No other hour", StringComparison.Ordinal))
        {
            return;
        }

        var followed = NightPlanner.Plan(Follow(night, finding.Remedy));

        var left = followed.Clock!.Steps.Count(s => s.IsOutside);
        finding.Remedy.ShouldContain(left == 0 ? "then nothing falls outside" : left == 1 ? "then 1 step is left outside" : $"then {left} steps are left outside");
        followed.Ids().Contains("steps-outside-hours").ShouldBe(left > 0);
        var told = night.Clock!.IsPour ? followed.Clock.Shown(Duration.Zero)!.Value : followed.Clock.Shown(followed.Clock.Steps.First(s => s.Kind == ClockStepKind.Pour).Begins)!.Value;
        finding.Remedy.ShouldEndWith($" is at {ClockWords.DayAndHour(told)}.");
    }

    [Theory]
    [InlineData(3, "order")]
    [InlineData(40, "order")]
    [InlineData(30, "parted")]
    [InlineData(24, "later")]
    [InlineData(2, "earlier")]
    public void Plan_Proposals_AreOfEveryKind(int seed, string kind)
    {
        var night = Invent(seed);
        var plan = NightPlanner.Plan(night);

        var followed = Follow(night, plan.The("steps-outside-hours").Remedy);

        var loads = followed.Shop.Settings.KilnLoads;
        (loads.Count > plan.Clock!.Loads.Count ? "parted" : loads.Count > 0 ? "order" : followed.Clock!.At > night.Clock!.At ? "later" : "earlier").ShouldBe(kind);
    }

    // As the shop would type it.
    private static Night Follow(Night night, string remedy)
    {
        if (Loads().Match(remedy) is { Success: true } loads)
        {
            IReadOnlyList<IReadOnlyList<string>> groups = [.. loads.Groups[1].Value.Split(';').Select(g => (IReadOnlyList<string>)g.Split(' ', StringSplitOptions.RemoveEmptyEntries))];
            night = night with { Shop = night.Shop with { Settings = night.Shop.Settings with { KilnLoads = groups } } };
        }

        return Hour().Match(remedy) is { Success: true } hour
            ? night with { Clock = night.Clock! with { At = ClockQuestion.Shown(DateTime.ParseExact(hour.Groups[1].Value, "yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture), night.Clock.Zone)!.Value } }
            : night;
    }

    // Nights with few hours at work, so that there is something to propose.
    private static Night Invent(int seed)
    {
        var night = ClockPropertyTests.Invent(seed);
        var random = new Random(-seed);
        var from = random.Next(5, 12);
        return night with
        {
            Shop = night.Shop with
            {
                Settings = night.Shop.Settings with
                {
                    AtWorkFrom = new TimeOnly(from, 0),
                    AtWorkUntil = new TimeOnly(from + random.Next(4, 12), 0),
                    PouringTakes = Duration.FromMinutes(random.Next(5, 40)),
                    KilnLoads = [],
                },
            },
        };
    }

    [GeneratedRegex("^Type \"([^\"]*)\" as \"Kiln loads\"")]
    private static partial Regex Loads();

    [GeneratedRegex("\"(\\d{4}-\\d\\d-\\d\\d \\d\\d:\\d\\d)\" as \"(?:Start|Pour) at\"")]
    private static partial Regex Hour();
}
