using CastBook.Planning.Clock;
using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Reading.Values;

namespace CastBook.Workbooks.Settings;

/// <summary>Finds the hour from which a night is counted: as asked, else as the Shop sheet says.</summary>
internal static class ClockReader
{
    /// <summary>The hour; missing where nobody said one, or none that can be used, which has a finding.</summary>
    /// <param name="asked">What was asked from outside the book.</param>
    /// <param name="shop">The shop's settings.</param>
    /// <param name="book">What the book settles about the order of day and month.</param>
    /// <param name="findings">Takes what is found.</param>
    /// <exception cref="AskedHourException">The hour that was asked for may be on two days, or none.</exception>
    public static ClockQuestion? Read(BookSettings asked, Planning.Shops.Settings shop, DayOrders book, List<Finding> findings)
    {
        if (asked.Clock is { } clock)
        {
            return clock;
        }

        var (orders, zone) = (Orders(shop, book), asked.Zone ?? TimeZoneInfo.Utc);
        if (asked.Hour is { } typed)
        {
            return Settled(typed, orders, zone);
        }

        var (name, text) = shop.PourAt is { } pour ? (SettingName.PourAt, pour) : (SettingName.StartAt, shop.StartAt);
        if (text is null)
        {
            return null;
        }

        // An hour alone is one of the night that is asked for; the pour is on another day more often than not.
        var day = name == SettingName.StartAt && shop.Night is { } night ? DayText.Read(night, orders).Day : null;
        var read = HourText.ReadWithDay(text, orders);
        if (read is { First: { } first, Other: { } other })
        {
            findings.Add(Catalogue.HourOfTwoDays.At(Subject.Setting(name), name, text, ClockWords.Typed(first), ClockWords.Typed(other)));
            return null;
        }

        var shown = read.Moment ?? (HourText.Read(text) is { } hour ? day?.ToDateTime(hour) : null);
        if (shown is null)
        {
            findings.Add(Catalogue.HourWithoutDay.At(Subject.Setting(name), name, text));
            return null;
        }

        if (ClockQuestion.Shown(shown.Value, zone) is not { } at)
        {
            findings.Add(Catalogue.HourSkipped.At(Subject.Setting(name), name, text));
            return null;
        }

        return new ClockQuestion(at, name == SettingName.PourAt, zone);
    }

    /// <summary>What is settled about the order of day and month in hours that people type.</summary>
    /// <param name="shop">The shop's settings: 11/25/26 as the start says that 12/4/26 as the pour begins with the month too.</param>
    /// <param name="book">What the book settles.</param>
    public static DayOrders Orders(Planning.Shops.Settings shop, DayOrders book) => book | SettledBy(shop.PourAt) | SettledBy(shop.StartAt);

    private static ClockQuestion Settled(AskedHour hour, DayOrders orders, TimeZoneInfo zone)
    {
        DateTime? shown = orders switch { DayOrders.DayFirst => hour.DayFirst, DayOrders.MonthFirst => hour.MonthFirst, _ => null };
        return shown is { } moment && ClockQuestion.Shown(moment, zone) is { } at
            ? new ClockQuestion(at, hour.IsPour, zone)
            : throw new AskedHourException(hour, isSkipped: shown is not null);
    }

    private static DayOrders SettledBy(string? text) => text is null ? DayOrders.None : HourText.ReadWithDay(text, DayOrders.None).Settles;
}
