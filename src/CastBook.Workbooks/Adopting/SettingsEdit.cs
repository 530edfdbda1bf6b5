using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Headings;
using CastBook.Workbooks.Reading.Values;
using CastBook.Workbooks.Settings;
using CastBook.Workbooks.Sheets;
using CastBook.Workbooks.Writing;

namespace CastBook.Workbooks.Adopting;

/// <summary>Writes settings into a Shop sheet: into their lines, and below the last one where they have none.</summary>
internal static class SettingsEdit
{
    /// <summary>Writes the settings; false where the sheet has no headings of settings.</summary>
    /// <param name="part">The Shop sheet.</param>
    /// <param name="grid">Its cells.</param>
    /// <param name="values">Reads them.</param>
    /// <param name="sheet">Takes the edits.</param>
    /// <param name="settings">Words, or numbers in the setting's own unit, by the setting's name.</param>
    /// <param name="keeps">Whether a line that says anything stays as it is.</param>
    public static bool Write(SheetPart part, SheetGrid grid, CellValues values, SheetEdits sheet, IReadOnlyDictionary<string, object> settings, bool keeps)
    {
        if (MissingSettings.HeadingRow(grid) is not (> 0 and var heading))
        {
            return false;
        }

        var cells = new CellMap();
        new SettingsRows(values, cells, [], new Planning.Shops.Settings()).Take(part, grid);
        var (name, value, unit) = (MissingSettings.Column(grid, heading, "Setting"), MissingSettings.Column(grid, heading, "Value"), MissingSettings.Column(grid, heading, "Unit"));
        var last = grid.Rows[^1];
        foreach (var (setting, answer) in settings)
        {
            var asked = SettingGuide.Of(setting).Unit;
            if (cells.Find(Subject.Setting(setting)) is { } cell)
            {
                if (!keeps || CellValues.IsBlank(grid.Cell(cell.Row, cell.Column)))
                {
                    var own = unit > 0 ? values.Text(grid.Cell(cell.Row, unit)) : null;
                    sheet.Set(cell.Row, cell.Column, Value(answer, asked, CellUnit.TryParse(own ?? asked, out var known) ? known : null), null);
                }

                continue;
            }

            last++;
            sheet.Set(last, name, CellValue.Of(setting), null);
            sheet.Set(last, value, Value(answer, asked, null), null);
            if (unit > 0 && asked.Length > 0)
            {
                sheet.Set(last, unit, CellValue.Of(asked), null);
            }
        }

        return true;
    }

    /// <summary>An answer in the unit of its column, whatever that counts in.</summary>
    /// <param name="answer">Words or a number.</param>
    /// <param name="asked">The unit of the number.</param>
    /// <param name="column">The unit of the column; missing for the same.</param>
    public static CellValue Value(object answer, string asked, CellUnit? column) => answer switch
    {
        string words => CellValue.Of(words),
        double number when column is not null && CellUnit.TryParse(asked, out var unit) && unit.Dimension == column.Dimension => CellValue.Of(column.Written(unit.ToBase(number))),
        double number => CellValue.Of(number),
        _ => throw new ArgumentException($"\"{answer}\" is neither words nor a number.", nameof(answer)),
    };
}
