using System.Globalization;
using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Headings;
using CastBook.Workbooks.Reading.Values;
using CastBook.Workbooks.Words;

namespace CastBook.Workbooks.Settings;

/// <summary>Puts settings together: first what <c>castbook.json</c> and the environment say, then the Shop sheet, which wins.</summary>
internal sealed class SettingsRows(CellValues values, CellMap cells, List<Finding> findings, Planning.Shops.Settings below)
{
    private const string AlloyBefore = "Alloy \"";
    private const string AlloyAfter = "\" is";

    private readonly Dictionary<string, string> alloys = new(below.AlloyMeanings, StringComparer.OrdinalIgnoreCase);
    private Planning.Shops.Settings settings = below;

    /// <summary>The settings taken so far.</summary>
    public Planning.Shops.Settings Settings => alloys.Count == 0 ? settings : settings with { AlloyMeanings = alloys };

    /// <summary>Who said what, by setting; settings that nobody has said are missing.</summary>
    public Dictionary<string, SettingOrigin> Origins { get; } = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>Takes settings given as text.</summary>
    /// <param name="given">The settings by name.</param>
    /// <param name="from">Where each comes from, in words.</param>
    public void Take(IReadOnlyDictionary<string, string> given, IReadOnlyDictionary<string, string> from)
    {
        foreach (var (name, text) in given)
        {
            Take(name, new GridCell(CellKind.Text, 0, text, 0, false), null, from.GetValueOrDefault(name, SettingsFile.Name));
        }
    }

    /// <summary>Takes the rows of the Shop sheet: setting, value, unit.</summary>
    public void Take(SheetPart sheet, SheetGrid grid)
    {
        var heading = grid.Rows.TakeWhile(r => r <= HeadingRow.Last).Select(r => (int?)r).FirstOrDefault(r => ColumnOf(grid, r!.Value, "setting") > 0) ?? 0;
        var (nameColumn, valueColumn, unitColumn) = heading == 0
            ? (1, 2, 3)
            : (ColumnOf(grid, heading, "setting"), ColumnOf(grid, heading, "value"), ColumnOf(grid, heading, "unit"));
        if (valueColumn == 0)
        {
            valueColumn = nameColumn + 1;
        }

        if (heading > 0)
        {
            Map("", new CellRef(sheet.Name, heading, nameColumn));
        }

        foreach (var row in grid.Rows.Where(r => r > heading))
        {
            if (values.Text(grid.Cell(row, nameColumn)) is { } name)
            {
                var unit = unitColumn > 0 ? values.Text(grid.Cell(row, unitColumn)) : null;
                var cell = new CellRef(sheet.Name, row, valueColumn);
                Take(name, grid.Cell(row, valueColumn), unit, cell.ToString(), cell);
            }
        }
    }

    private void Take(string name, GridCell value, string? unit, string from, CellRef? cell = null)
    {
        if (AlloyIn(name) is { } alloy)
        {
            Map(SettingName.AlloyMeaning(alloy), cell);
            if (values.Text(value) is { } meaning)
            {
                alloys[alloy] = meaning;
                Origins[SettingName.AlloyMeaning(alloy)] = new SettingOrigin(meaning, from);
            }

            return;
        }

        var spec = SettingSpec.All.FirstOrDefault(s => ShopWords.Key(s.Name) == ShopWords.Key(name));
        if (spec is null)
        {
            Map(name, cell);
            var names = SettingSpec.All.Select(s => s.Name);
            findings.Add(Catalogue.SettingUnknown.At(Subject.Setting(name), name, Nearest.To(name, cell is null ? [.. names, .. SettingsFile.Keys] : names)));
            return;
        }

        Map(spec.Name, cell);
        if (!CellValues.IsBlank(value) || CellValues.HasNoValue(value))
        {
            Apply(spec, value, unit, from);
        }
    }

    private void Apply(SettingSpec spec, GridCell value, string? unit, string from)
    {
        var changed = spec.Words is { } words
            ? (spec.HasHour ? values.TextWithHour(value) : values.Text(value)) is { } text ? words(settings, text) : null
            : Measured(spec, value, unit);
        if (changed is null)
        {
            findings.Add(Catalogue.SettingUnreadable.At(
                Subject.Setting(spec.Name), spec.Name, values.Shown(value), spec.Wanted,
                spec.Near?.Invoke(values.Shown(value)) is { } near ? WantedWords.MostLikely(near) : ""));
        }
        else
        {
            settings = changed;
            Origins[spec.Name] = new SettingOrigin($"{values.Shown(value)} {unit}".TrimEnd(), from);
        }
    }

    private Planning.Shops.Settings? Measured(SettingSpec spec, GridCell value, string? unit)
    {
        CellUnit? typed = null;
        if (unit is not null && (!CellUnit.TryParse(unit, out typed) || typed.Dimension != spec.Dimension))
        {
            return null;
        }

        var read = values.Number(value, spec.Dimension, typed, NumberSigns.DecimalPoint);
        var number = spec.IsStep ? read.StepOrNull : read.ValueOrNull;
        if (read.Assumed.HasFlag(NumberAssumptions.PlainLiquid))
        {
            findings.Add(Catalogue.LiquidIsUs.At(Subject.Setting(spec.Name), spec.Name, $"{values.Shown(value)} {unit}".TrimEnd(), string.Create(CultureInfo.InvariantCulture, $"{read.Value:#,0} ml")));
        }

        // The step of a powder scale in ounces is plain.
        if (spec.Name == SettingName.ChargeStep && read.Outcome == ReadOutcome.Read && (typed is { IsPlainOunce: true } || read.Assumed.HasFlag(NumberAssumptions.PlainOunce)))
        {
            findings.Add(Catalogue.ShopPlainOunce.At(Subject.Setting(spec.Name), spec.Name, $"{values.Shown(value)} {unit}".TrimEnd(), PlainOunce.Said(read.Value)));
        }

        return number is { } known && (known == 0 ? spec.MayBeZero : known > 0 && known >= spec.Least && known <= spec.Most) ? spec.Number!(settings, known) : null;
    }

    private void Map(string name, CellRef? cell)
    {
        if (cell is { } known)
        {
            cells.Add(Subject.Setting(name), known);
        }
    }

    private static string? AlloyIn(string name)
    {
        var plain = name.Replace('“', '"').Replace('”', '"');
        return plain.Length > AlloyBefore.Length + AlloyAfter.Length
            && plain.StartsWith(AlloyBefore, StringComparison.OrdinalIgnoreCase) && plain.EndsWith(AlloyAfter, StringComparison.OrdinalIgnoreCase)
            ? plain[AlloyBefore.Length..^AlloyAfter.Length]
            : null;
    }

    private static int ColumnOf(SheetGrid grid, int row, string word) =>
        HeadingRow.Read(grid, row).FirstOrDefault(h => h.Heading.Says(word, out _)).Column;
}
