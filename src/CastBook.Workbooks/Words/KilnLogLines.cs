using System.Globalization;

namespace CastBook.Workbooks.Words;

/// <summary>What a kiln's log beside its programme says.</summary>
internal static class KilnLogLines
{
    public static string Load(int number, IEnumerable<string> flasks, string schedule) =>
        string.Create(CultureInfo.InvariantCulture, $"load {number}: flasks {string.Join(' ', flasks)}, \"{schedule}\"");

    public static string CoreOf(string flask) => $"core of flask {flask}, by estimate, without drying, when the kiln left the stage";

    public static string Stage(int number, string target, string outcome, string core) =>
        string.Create(CultureInfo.InvariantCulture, $"  stage {number}  {target,7}  {outcome}{core}");

    public static string Core(string seen, string planned) => $"; core {seen}, planned {planned}";

    public static string Between(string least, string most) => $"{least} to {most}";

    public static string Held(string held, string asked) => $"held {held} of {asked}";

    public static string HeldShort(string held, string asked, string missing) => $"held {held} of {asked}, short by {missing}";

    public static string NotReached(string nearest) => $"not reached: came to {nearest}";

    public static string HeldSoFar(string held, string asked) => $"held {held} of {asked} so far, the log ends";

    public static string NotInLog => "not in the log";

    public static string NothingWrongSoFar => "nothing is wrong as far as the log goes";

    public static string AsProgrammed => "the burnout ran as its programme says";
}
