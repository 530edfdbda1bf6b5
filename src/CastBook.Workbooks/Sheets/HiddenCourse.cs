using System.Globalization;
using CastBook.Planning.Clock;
using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Columns;
using CastBook.Workbooks.Drawing;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Writing;

namespace CastBook.Workbooks.Sheets;

/// <summary>The numbers that a chart of kiln and core draws, in rows that are hidden: nobody needs them on paper.</summary>
internal sealed class HiddenCourse
{
    // A line of more points is no finer on paper.
    private const int MostPoints = 240;

    private readonly int firstRow;
    private readonly List<double[]> numbers;

    /// <summary>Writes the numbers.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="row">The row of the headings.</param>
    /// <param name="load">The load.</param>
    /// <param name="headings">The headings: the load, then a column a number.</param>
    /// <param name="answers">What the numbers answer; none where they come out of no plan.</param>
    /// <param name="course">The course.</param>
    /// <param name="unit">The unit of its temperatures.</param>
    public HiddenCourse(OwnedSheet sheet, int row, KilnLoad load, string[] headings, string[] answers, IReadOnlyList<KilnMoment> course, WrittenTemperature unit)
    {
        firstRow = row + 1;
        numbers = [.. course.Select(m => Numbers(m, unit))];
        sheet.HideRow(row);
        for (var column = 1; column <= headings.Length; column++)
        {
            sheet.Set(row, column, headings[column - 1], column == 1 ? CellLook.FirstHeading : CellLook.NumberHeading);
        }

        for (var place = 0; place < numbers.Count; place++)
        {
            sheet.HideRow(++row);
            sheet.Set(row, 1, load.Number.ToString(CultureInfo.InvariantCulture), CellLook.Text);
            for (var i = 0; i < numbers[place].Length; i++)
            {
                sheet.Set(row, i + 2, CellValue.Of(numbers[place][i]), CellLook.Number(i == 0 ? "0.0#" : CellLook.Whole));
            }

            for (var i = 0; i < answers.Length; i++)
            {
                sheet.Answer(row, i + 2, new Subject(SubjectKind.Moment, string.Create(CultureInfo.InvariantCulture, $"{load.Number}.{place}")), answers[i]);
            }
        }
    }

    /// <summary>The last row.</summary>
    public int LastRow => firstRow + numbers.Count - 1;

    /// <summary>A course of no more points than a chart needs; its last is kept.</summary>
    /// <param name="course">The course.</param>
    public static IReadOnlyList<KilnMoment> Thinned(IReadOnlyList<KilnMoment> course)
    {
        var step = (course.Count + MostPoints - 1) / MostPoints;
        return [.. course.Where((_, i) => i % step == 0 || i == course.Count - 1)];
    }

    /// <summary>A line of the chart.</summary>
    /// <param name="name">What it is called.</param>
    /// <param name="column">The column of its numbers.</param>
    /// <param name="color">Its colour.</param>
    /// <param name="thickness">Its thickness in points.</param>
    /// <param name="dashed">Whether it is dashed.</param>
    public ChartLine Line(string name, int column, string color, double thickness, bool dashed = false) =>
        new(name, new CellRange(firstRow, 2, LastRow, 2), new CellRange(firstRow, column, LastRow, column), [.. numbers.Select(n => (n[0], n[column - 2]))])
        {
            Color = color,
            Thickness = thickness,
            Dashed = dashed,
        };

    private static double[] Numbers(KilnMoment moment, WrittenTemperature unit) =>
    [
        CellNumbers.Hours(moment.After)!.Value, unit.In(moment.Kiln)!.Value, unit.In(moment.Core.Slow)!.Value, unit.In(moment.Core.Fast)!.Value,
    ];
}
