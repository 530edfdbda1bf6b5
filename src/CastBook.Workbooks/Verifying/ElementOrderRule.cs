using CastBook.Workbooks.Writing;

namespace CastBook.Workbooks.Verifying;

/// <summary>The elements of a sheet stand in the order of the format.</summary>
internal sealed class ElementOrderRule : PackageRule
{
    /// <inheritdoc/>
    public override IEnumerable<string> Faults(BookFacts book)
    {
        foreach (var sheet in book.Sheets)
        {
            var last = -1;
            foreach (var name in sheet.Elements)
            {
                var rank = SheetEdits.RankOf(name);
                if (rank >= 0 && (rank < last || (rank == last && name != "conditionalFormatting")))
                {
                    yield return $"{sheet.Sheet.Name}: {name} stands in the wrong place.";
                }

                last = Math.Max(last, rank);
            }
        }
    }
}
