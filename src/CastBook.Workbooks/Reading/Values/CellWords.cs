using System.Collections.Frozen;

namespace CastBook.Workbooks.Reading.Values;

/// <summary>Words that mean nothing, yes or no in a cell, in English, German, French, Spanish, Italian and Portuguese.</summary>
internal static class CellWords
{
    /// <summary>What is typed where nothing is known.</summary>
    public static FrozenSet<string> Nothing { get; } = Set(
        "", "-", "--", "---", "–", "—", "n/a", "na", "n.a.", "n. a.", "#n/a", "?", "??", "???", "...", "…", "tbc", "tbd", "tba", "t.b.d.", "t.b.c.", "unknown",
        "k.a.", "k. a.", "k.A", "unbekannt", "offen", "n.c.", "n/c", "inconnu", "n/d", "n.d.", "s/d", "desconocido", "n.p.", "sconosciuto", "desconhecido");

    /// <summary>What means yes.</summary>
    public static FrozenSet<string> Yes { get; } = Set(
        "yes", "y", "x", "true", "1", "ok", "✓", "✔", "☑", "☒", "ja", "j", "wahr", "oui", "vrai", "sí", "si", "sì", "s", "verdadero", "vero", "sim", "verdadeiro");

    /// <summary>What means no.</summary>
    public static FrozenSet<string> No { get; } = Set(
        "no", "n", "false", "0", "none", "☐", "nein", "falsch", "keine", "kein", "non", "faux", "falso", "não", "nao");

    /// <summary>What means done, in a column of that name.</summary>
    public static FrozenSet<string> Done { get; } = Set(
        "done", "cast", "poured", "finished", "complete", "completed", "erledigt", "fertig", "gegossen", "fait", "terminé", "coulé", "hecho", "terminado", "fundido",
        "fatto", "finito", "fuso", "feito", "pronto", "concluído");

    private static FrozenSet<string> Set(params string[] words) => words.ToFrozenSet(StringComparer.OrdinalIgnoreCase);
}
