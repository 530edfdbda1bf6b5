using System.Globalization;
using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Planning.Words;

namespace CastBook.Planning.Rows;

/// <summary>Which of the nights that the rows name is planned: the one asked for, else the only one, else the next by date.</summary>
internal static class NightChoice
{
    private const string DayForm = "yyyy-MM-dd";
    private const int MostNamed = 6;

    /// <summary>The night; null where it must be asked for.</summary>
    /// <param name="night">The night's question, with what was asked for and the day it is.</param>
    /// <param name="named">The nights that open rows name, at least one.</param>
    /// <param name="findings">Takes what is found.</param>
    public static string? Of(Night night, IReadOnlyList<string> named, FindingList findings)
    {
        var subject = Subject.Setting(SettingName.Night);
        var wanted = RowChoice.Key(night.Shop.Settings.Night);
        if (wanted.Length > 0)
        {
            if (!named.Contains(wanted, StringComparer.OrdinalIgnoreCase))
            {
                findings.Add(Catalogue.NightWithoutRows.At(subject, wanted, Listed(named)));
            }

            return wanted;
        }

        if (named.Count == 1)
        {
            return named[0];
        }

        if (NextByDate(named, night.Today) is { } next)
        {
            findings.Add(Catalogue.NightByDate.At(subject, next, Listed(named)));
            return next;
        }

        findings.Add(Catalogue.NightNotChosen.At(subject, Listed(named)));
        return null;
    }

    /// <summary>The day that a night's name is; missing where it is a name of another kind.</summary>
    /// <param name="night">The name.</param>
    public static DateOnly? DayOf(string? night) =>
        DateOnly.TryParseExact(RowChoice.Key(night), DayForm, CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? day : null;

    private static string? NextByDate(IReadOnlyList<string> named, DateOnly? today)
    {
        (string Name, DateOnly Day)? next = null;
        foreach (var name in named)
        {
            if (DayOf(name) is not { } day)
            {
                return null;
            }

            if (day >= today && (next is null || day < next.Value.Day))
            {
                next = (name, day);
            }
        }

        return next?.Name;
    }

    private static string Listed(IReadOnlyList<string> named) => Say.Together(
    [
        .. named.Order(StringComparer.OrdinalIgnoreCase).Take(MostNamed).Select(n => $"\"{n}\""),
        .. named.Count > MostNamed ? [SentenceWords.More(Say.Count(named.Count - MostNamed))] : Array.Empty<string>(),
    ]);
}
