using System.Globalization;

namespace CastBook.Workbooks.Reading.Grid;

/// <summary>Dates as the file format knows them: serial numbers of two systems, and ISO text in Strict books.</summary>
internal static class IsoDate
{
    private const int DaysFrom1900To1904 = 1462;

    // Serial 0 of the 1900 system; right from 1 March 1900 on, because the format counts a 29 February 1900 that never was.
    private static readonly DateTime Zero = new(1899, 12, 30);

    /// <summary>Reads ISO text as a serial number of the book's date system.</summary>
    public static bool TrySerial(ReadOnlySpan<char> iso, bool date1904, out double serial)
    {
        serial = 0;
        if (!DateTime.TryParse(iso, CultureInfo.InvariantCulture, DateTimeStyles.AdjustToUniversal | DateTimeStyles.AssumeUniversal, out var when))
        {
            return false;
        }

        serial = (when - Zero).TotalDays - (date1904 ? DaysFrom1900To1904 : 0);
        return true;
    }

    /// <summary>The day a serial number means; null outside the years 1900 to 9999.</summary>
    public static DateOnly? Day(double serial, bool date1904)
    {
        var days = Math.Floor(serial) + (date1904 ? DaysFrom1900To1904 : 0);
        return days is >= 1 and < 2_958_466 ? DateOnly.FromDateTime(Zero.AddDays(days)) : null;
    }
}
