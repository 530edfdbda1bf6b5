using CastBook.Casting.Patterns;
using CastBook.Planning.Findings;
using CastBook.Planning.Flasks;
using CastBook.Planning.Shops;
using UnitsNet;

namespace CastBook.Planning.Investing;

/// <summary>Compares steam dewaxing, where the shop does it, with what moulds bear.</summary>
internal static class SteamDewax
{
    // Published: steamed for up to an hour.
    private static readonly Duration Most = Duration.FromHours(1);

    /// <summary>Adds a check for flasks that must not be steamed, and for steam that is too long.</summary>
    /// <param name="settings">The shop's settings.</param>
    /// <param name="flasks">The flasks of the night.</param>
    /// <param name="findings">Takes what is found.</param>
    public static void Compare(Settings settings, IEnumerable<FlaskWork> flasks, FindingList findings)
    {
        if (settings.SteamDewax is not { } steam || steam <= Duration.Zero)
        {
            return;
        }

        if (steam > Most)
        {
            findings.Add(Catalogue.SteamTooLong.At(Subject.Setting(SettingName.SteamDewax), Say.Minutes(steam)));
        }

        foreach (var flask in flasks.Where(f => f.State < FlaskState.InKiln && f.Kind == PatternKind.Resin))
        {
            findings.Add(Catalogue.SteamWithResin.At(Subject.Flask(flask.Letter), flask.Letter));
        }
    }
}
