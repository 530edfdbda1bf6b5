using System.Text;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Xml;

namespace CastBook.Workbooks.Undoing;

/// <summary>Looks through the formulas of a book: of cells, rules, drop-down lists, charts and names.</summary>
internal static class FormulaTexts
{
    /// <summary>Which of some references occur.</summary>
    /// <param name="package">The book.</param>
    /// <param name="except">Sheets whose formulas do not count.</param>
    /// <param name="needles">The references: a sheet's name with an exclamation mark, or a table's column in brackets.</param>
    public static HashSet<string> Find(BookPackage package, IReadOnlyCollection<SheetPart> except, IReadOnlyCollection<string> needles)
    {
        var found = new HashSet<string>(StringComparer.Ordinal);
        var wanted = needles.Distinct(StringComparer.Ordinal).ToList();
        void Look(string formula) => found.UnionWith(wanted.Where(n => !found.Contains(n) && Refers(formula, n)));

        foreach (var name in package.DefinedNames.Where(n => !n.Name.StartsWith(OwnName.Prefix, StringComparison.Ordinal) && !except.Any(s => s.Index == n.LocalSheet)))
        {
            Look(name.Text);
        }

        // What is drawn on a sheet goes with it, whatever it looks at.
        var going = except.Select(s => s.PartName).ToHashSet(StringComparer.Ordinal);
        foreach (var drawing in except.SelectMany(s => package.Relationships(s.PartName)).Where(r => r.Is("drawing") && package.Has(r.Target)))
        {
            going.UnionWith(package.Relationships(drawing.Target).Where(r => r.Is("chart")).Select(r => r.Target));
        }

        foreach (var part in package.Parts.Where(p => package.ContentType(p).EndsWith("+xml", StringComparison.Ordinal)
            && p != package.SharedStringsPart && !going.Contains(p)))
        {
            EachFormula(package, part, Look);
        }

        return found;
    }

    private static void EachFormula(BookPackage package, string part, Action<string> look)
    {
        using var raw = package.OpenPart(part);
        using var stream = XmlEncoding.ToUtf8(raw);
        var scanner = new XmlScanner(stream);
        while (scanner.Next())
        {
            scanner.Drop();
            if (scanner.Kind == TagKind.Start && IsFormula(scanner.LocalName))
            {
                var from = scanner.End;
                if (scanner.Next())
                {
                    look(XmlText.Unescape(Encoding.UTF8.GetString(scanner.TextSince(from))));
                    scanner.Drop();
                }
            }
        }
    }

    private static bool IsFormula(ReadOnlySpan<byte> name) =>
        name.SequenceEqual("f"u8) || name.SequenceEqual("formula"u8) || name.SequenceEqual("formula1"u8) || name.SequenceEqual("formula2"u8);

    /// <summary>Whether a formula holds the reference, quoted or not, and not as the end of a longer name.</summary>
    private static bool Refers(string formula, string needle)
    {
        if (needle[^1] == '!')
        {
            var quoted = $"'{needle[..^1].Replace("'", "''", StringComparison.Ordinal)}'!";
            if (formula.Contains(quoted, StringComparison.OrdinalIgnoreCase))
            {
                return true;
            }
        }

        var at = formula.IndexOf(needle, StringComparison.OrdinalIgnoreCase);
        return at == 0 || (at > 0 && !char.IsLetterOrDigit(formula[at - 1]) && formula[at - 1] is not ('_' or '.' or ' ' or '\''));
    }
}
