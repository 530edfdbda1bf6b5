using System.Globalization;
using CastBook.Planning.Findings;
using CastBook.Planning.Words;

namespace CastBook.Planning.Shops;

/// <summary>Finds example rows that still stand where the shop's own belong.</summary>
internal static class ExampleRows
{
    /// <summary>Says how many there are, and on which sheets.</summary>
    /// <param name="night">The night.</param>
    /// <param name="findings">Takes what is found.</param>
    public static void Find(Night night, FindingList findings)
    {
        var places = new List<string>();
        Subject? first = null;
        var shop = night.Shop;
        Count("Alloys", shop.Alloys, a => a.Alloy.Name, a => Of(SubjectKind.Alloy, a.Alloy.Name));
        Count("Flasks", shop.FlaskSizes, f => f.Name, f => Of(SubjectKind.FlaskSize, f.Name));
        Count("Crucibles", shop.Crucibles, c => c.Name, c => Of(SubjectKind.Crucible, c.Name));
        Count("Kilns", shop.Kilns, k => k.Name, k => Of(SubjectKind.Kiln, k.Name));
        Count("Materials", shop.Materials, m => m.Name, m => Of(SubjectKind.Material, m.Name));
        Count("Investments", shop.Investments, i => i.Name, i => Of(SubjectKind.Investment, i.Name));
        Count("Schedules", shop.Schedules, s => s.Name, s => Of(SubjectKind.Schedule, s.Name));
        Count(CountWords.ExamplePieces, night.Pieces, p => p.Name, p => Subject.Piece(p.Id, PieceField.Piece));
        if (first is { } subject)
        {
            // Among examples alone they show how the book works; beside a piece of the shop's own they would be poured by.
            var isOwn = night.Pieces.Any(p => !p.Done && !p.LeaveOut && !ExampleName.Is(p.Name));
            var ofShop = places.FindAll(p => !p.StartsWith(CountWords.ExamplePieces, StringComparison.Ordinal));
            findings.Add(isOwn && ofShop.Count > 0
                ? Catalogue.ExamplesInUse.At(subject, string.Join(", ", ofShop))
                : Catalogue.ExamplesLeft.At(subject, string.Join(", ", places)));
        }

        void Count<T>(string sheet, IReadOnlyList<T> rows, Func<T, string?> name, Func<T, Subject> subject)
        {
            var count = 0;
            foreach (var row in rows)
            {
                if (ExampleName.Is(name(row)))
                {
                    count++;
                    first ??= subject(row);
                }
            }

            if (count > 0)
            {
                places.Add(string.Create(CultureInfo.InvariantCulture, $"{sheet} {count:#,##0}"));
            }
        }
    }

    private static Subject Of(SubjectKind kind, string name) => new(kind, name, ShopField.Name);
}
