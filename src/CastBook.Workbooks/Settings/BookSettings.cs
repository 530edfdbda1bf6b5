using CastBook.Planning;
using CastBook.Planning.Clock;
using CastBook.Workbooks.Files;

namespace CastBook.Workbooks.Settings;

/// <summary>What <c>castbook.json</c>, the environment and the command line say: more words for headings, settings by name, the night.</summary>
public sealed record BookSettings
{
    /// <summary>Nothing said.</summary>
    public static BookSettings None { get; } = new();

    /// <summary>More headings by field (<see cref="CastBook.Planning.Findings.PieceField"/>); they win over the built-in ones.</summary>
    public IReadOnlyDictionary<string, IReadOnlyList<string>> Columns { get; init; } =
        new Dictionary<string, IReadOnlyList<string>>(StringComparer.OrdinalIgnoreCase);

    /// <summary>Settings as text, by their <see cref="CastBook.Planning.Shops.SettingName"/>; the workbook's Shop sheet wins.</summary>
    public IReadOnlyDictionary<string, string> Values { get; init; } =
        new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase);

    /// <summary>Where each of <see cref="Values"/> comes from, in words, by setting.</summary>
    public IReadOnlyDictionary<string, string> Origins { get; init; } =
        new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase);

    /// <summary>The night asked for on the command line, as the shop writes it; it wins over the workbook's own.</summary>
    public string? Night { get; init; }

    /// <summary>The day it is, by which the next night is chosen; missing to have it asked.</summary>
    public DateOnly? Today { get; init; }

    /// <summary>The hour asked for, from which the night is counted; it wins over the workbook's own.</summary>
    public ClockQuestion? Clock { get; init; }

    /// <summary>The hour asked for where its day may be two; the book settles which.</summary>
    public AskedHour? Hour { get; init; }

    /// <summary>What the kiln really did, to be laid over the plan; missing where no log was given.</summary>
    public KilnLog? Log { get; init; }

    /// <summary>Whether only what the metal in stock allows is planned.</summary>
    public bool MetalInHandOnly { get; init; }

    /// <summary>The zone in which the shop's clocks run; missing counts as UTC.</summary>
    public TimeZoneInfo? Zone { get; init; }

    /// <summary>Watches the search for flasks and may end it early.</summary>
    public PlanSearch Search { get; init; } = PlanSearch.Unwatched;

    /// <summary>Names of the sheets of pieces to fill, where a book has several; <c>all</c> for all of them.</summary>
    public IReadOnlyList<string> Sheets { get; init; } = [];

    /// <summary>How much a workbook may ask of the machine.</summary>
    public Caps Caps { get; init; } = Caps.Usual;

    /// <summary>Path of a workbook whose shop sheets fill the ones a book lacks.</summary>
    public string? ShopFile { get; init; }
}
