using System.Collections.Frozen;

namespace CastBook.Workbooks.Reading.Values;

/// <summary>Words that mean nothing, yes, no or a sum in a cell, in English, German, French, Spanish, Italian and Portuguese.</summary>
internal static class CellWords
{
    // What is typed where somebody does not know, or not yet.
    private static readonly string[] Open =
    [
        "?", "??", "???", "...", "…", "tbc", "tbd", "tba", "t.b.d.", "t.b.c.", "unknown", "k.a.", "k. a.", "unbekannt", "offen", "n.c.", "n/c", "inconnu",
        "n/d", "n.d.", "s/d", "desconocido", "n.p.", "sconosciuto", "desconhecido",
    ];

    /// <summary>What is typed where nothing is known.</summary>
    public static IReadOnlySet<string> Nothing { get; } = Set(["", "-", "--", "---", "–", "—", "n/a", "na", "n.a.", "n. a.", "#n/a", .. Open]);

    /// <summary>Those of them that say that it is not known, or not yet, and not that there is none.</summary>
    public static IReadOnlySet<string> NotKnown { get; } = Set(Open);

    /// <summary>What means yes.</summary>
    public static IReadOnlySet<string> Yes { get; } = Set(
        "yes", "y", "x", "true", "1", "ok", "✓", "✔", "☑", "☒", "ja", "j", "wahr", "oui", "vrai", "sí", "si", "sì", "s", "verdadero", "vero", "sim", "verdadeiro");

    /// <summary>What means no.</summary>
    public static IReadOnlySet<string> No { get; } = Set(
        "no", "n", "false", "0", "none", "☐", "nein", "falsch", "keine", "kein", "non", "faux", "falso", "não", "nao");

    /// <summary>What means done, in a column of that name.</summary>
    public static IReadOnlySet<string> Done { get; } = Set(
        "done", "cast", "poured", "finished", "complete", "completed", "erledigt", "fertig", "gegossen", "fait", "terminé", "coulé", "hecho", "terminado", "fundido",
        "fatto", "finito", "fuso", "feito", "pronto", "concluído", "delivered", "shipped", "fulfilled", "dispatched", "invoiced", "closed", "geliefert", "ausgeliefert", "versandt",
        "livré", "livrée", "expédié", "entregado", "enviado", "consegnato", "spedito", "entregue");

    /// <summary>What means that a row is not to be cast, in a column that says how far it is.</summary>
    public static IReadOnlySet<string> LeftOut { get; } = Set(
        "cancelled", "canceled", "refunded", "on hold", "hold", "left out", "leave out", "storniert", "abgesagt", "zurückgestellt", "pausiert", "annulé", "annulée", "suspendu",
        "cancelado", "cancelada", "anulado", "anulada", "suspendido", "annullato", "annullata", "sospeso", "sospesa", "suspenso", "suspensa");

    private static readonly Dictionary<char, string[]> Totals = new[]
    {
        "total", "totals", "sum", "sums", "subtotal", "sub-total", "sub total", "grand total", "sum total",
        "summe", "gesamt", "gesamtsumme", "zwischensumme", "insgesamt", "total général", "total general", "sous-total", "sous total", "somme", "ensemble",
        "suma", "subtotales", "total parcial", "total final", "somma", "totale", "totale generale", "subtotale", "totale parziale", "soma", "total geral",
        "carried forward", "brought forward", "endsumme", "teilsumme", "übertrag", "totaux", "à reporter", "totales", "suma y sigue", "totali", "riporto", "totais", "a transportar",
    }.GroupBy(w => w[0]).ToDictionary(g => g.Key, g => g.ToArray());

    /// <summary>Whether the first words of a row say that it is one of sums.</summary>
    /// <param name="text">The first text of the row, cleaned.</param>
    /// <param name="mayGoOn">Whether more may follow the word: <c>Total March</c>.</param>
    public static bool IsTotal(string text, bool mayGoOn)
    {
        var words = text.AsSpan().TrimEnd(": ").TrimStart("Σ∑ ");
        if (words.Length == 0)
        {
            return text.Length > 0;
        }

        foreach (var total in Totals.GetValueOrDefault(char.ToLowerInvariant(words[0]), []))
        {
            if (words.StartsWith(total, StringComparison.OrdinalIgnoreCase)
                && (words.Length == total.Length || (mayGoOn && words[total.Length] == ' ')))
            {
                return true;
            }
        }

        return false;
    }

    // Frozen: most texts that are asked for are longer than any of these words, and that is told at once.
    private static FrozenSet<string> Set(params string[] words) => words.ToFrozenSet(StringComparer.OrdinalIgnoreCase);
}
