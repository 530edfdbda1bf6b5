namespace CastBook.Workbooks.Reading.Values;

/// <summary>The names of months and days of the week, in English, German, French, Spanish, Italian and Portuguese.</summary>
internal static class MonthWords
{
    private const int ShortestForm = 3;

    // Without accents; a month is known by its name or by a beginning of three letters or more that fits no other.
    private static readonly string[][] Months =
    [
        ["january", "januar", "janner", "janvier", "enero", "gennaio", "janeiro"],
        ["february", "februar", "feber", "fevrier", "febrero", "febbraio", "fevereiro"],
        ["march", "marz", "maerz", "mars", "marzo", "marco", "mrz"],
        ["april", "avril", "abril", "aprile"],
        ["may", "mai", "mayo", "maggio", "maio"],
        ["june", "juni", "juin", "junio", "giugno", "junho"],
        ["july", "juli", "juillet", "julio", "luglio", "julho"],
        ["august", "aout", "agosto"],
        ["september", "septembre", "septiembre", "settembre", "setembro"],
        ["october", "oktober", "octobre", "octubre", "ottobre", "outubro"],
        ["november", "novembre", "noviembre", "novembro"],
        ["december", "dezember", "decembre", "diciembre", "dicembre", "dezembro"],
    ];

    private static readonly string[] Weekdays =
    [
        "monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday",
        "montag", "dienstag", "mittwoch", "donnerstag", "freitag", "samstag", "sonnabend", "sonntag",
        "lundi", "mardi", "mercredi", "jeudi", "vendredi", "samedi", "dimanche",
        "lunes", "martes", "miercoles", "jueves", "viernes", "sabado", "domingo",
        "lunedi", "martedi", "mercoledi", "giovedi", "venerdi", "sabato", "domenica",
        "segunda", "terca", "quarta", "quinta", "sexta", "feira",
    ];

    /// <summary>The month a word means, from 1; 0 where it means none or may mean several.</summary>
    /// <param name="word">The word, in any case.</param>
    public static int Month(ReadOnlySpan<char> word)
    {
        Span<char> buffer = stackalloc char[16];
        var plain = Fold(word, buffer);
        var month = 0;
        for (var at = 0; at < Months.Length; at++)
        {
            if (!Begins(Months[at], plain))
            {
                continue;
            }

            if (month > 0)
            {
                return 0;
            }

            month = at + 1;
        }

        return month;
    }

    /// <summary>Whether a word may be a day of the week.</summary>
    /// <param name="word">The word, in any case.</param>
    public static bool IsWeekday(ReadOnlySpan<char> word)
    {
        Span<char> buffer = stackalloc char[16];
        var plain = Fold(word, buffer);
        return plain.Length == 2 ? Begins(Weekdays, plain, 2) : Begins(Weekdays, plain);
    }

    private static bool Begins(string[] names, ReadOnlySpan<char> word, int shortest = ShortestForm)
    {
        foreach (var name in names)
        {
            if (word.Length >= shortest && name.AsSpan().StartsWith(word, StringComparison.Ordinal))
            {
                return true;
            }
        }

        return false;
    }

    private static ReadOnlySpan<char> Fold(ReadOnlySpan<char> word, Span<char> buffer)
    {
        if (word.Length > buffer.Length)
        {
            return [];
        }

        for (var at = 0; at < word.Length; at++)
        {
            buffer[at] = char.ToLowerInvariant(word[at]) switch
            {
                'á' or 'à' or 'â' or 'ä' or 'ã' => 'a',
                'é' or 'è' or 'ê' or 'ë' => 'e',
                'í' or 'ì' or 'î' or 'ï' => 'i',
                'ó' or 'ò' or 'ô' or 'ö' or 'õ' => 'o',
                'ú' or 'ù' or 'û' or 'ü' => 'u',
                'ç' => 'c',
                var c => c,
            };
        }

        return buffer[..word.Length];
    }
}
