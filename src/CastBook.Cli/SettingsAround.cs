using CastBook.Workbooks.Settings;

namespace CastBook.Cli;

/// <summary>The settings that hold for a workbook where it lies, and the day it is filled for.</summary>
internal static class SettingsAround
{
    // A casting night runs past midnight: until the morning it is still the evening before.
    private static readonly TimeSpan EndOfNight = TimeSpan.FromHours(6);

    /// <summary>Reads what <c>castbook.json</c> beside the book and in the user's folder, and the environment, say.</summary>
    /// <param name="book">The workbook.</param>
    /// <param name="clock">The clock.</param>
    public static BookSettings Of(string book, TimeProvider clock)
    {
        var variables = Environment.GetEnvironmentVariables().Cast<System.Collections.DictionaryEntry>()
            .Where(v => ((string)v.Key).StartsWith(SettingsFile.VariablePrefix, StringComparison.OrdinalIgnoreCase))
            .ToDictionary(v => (string)v.Key, v => (string?)v.Value ?? "");
        var user = Environment.GetFolderPath(Environment.SpecialFolder.ApplicationData, Environment.SpecialFolderOption.DoNotVerify);
        var settings = SettingsFile.Load(
            Path.GetDirectoryName(Path.GetFullPath(book))!, user.Length == 0 ? null : Path.Combine(user, "castbook"), variables);
        return settings with { Zone = clock.LocalTimeZone, Today = DateOnly.FromDateTime((clock.GetLocalNow() - EndOfNight).DateTime) };
    }
}
