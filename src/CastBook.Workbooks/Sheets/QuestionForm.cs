using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Settings;
using CastBook.Workbooks.Words;

namespace CastBook.Workbooks.Sheets;

/// <summary>A column of a sheet with questions.</summary>
/// <param name="Heading">Its heading, in grams, millilitres, millimetres and degrees Celsius.</param>
/// <param name="Field">The field it asks.</param>
/// <param name="Width">Its width in characters.</param>
internal sealed record QuestionColumn(string Heading, string Field, double Width)
{
    /// <summary>The words it may be answered with; none where any may.</summary>
    public IReadOnlyList<string> Choices { get; init; } = [];

    /// <summary>The heading with its unit as the shop wants it.</summary>
    /// <param name="units">The shop's units.</param>
    public string HeadingIn(ShopUnits units) => units.Heading(Heading, isPowder: Field == ShopField.InStock);
}

/// <summary>A sheet of the shop's as it is added to a book that lacks it: the columns that matter most, and lines to fill in.</summary>
/// <param name="Sheet">The sheet.</param>
/// <param name="OwnName">Its hidden name.</param>
/// <param name="How">How it is filled in.</param>
/// <param name="Columns">Its columns; the first one names the line.</param>
internal sealed record QuestionForm(ShopSheet Sheet, string OwnName, string How, IReadOnlyList<QuestionColumn> Columns)
{
    /// <summary>The empty lines it is added with; none where it has a line for each name that is asked.</summary>
    public int EmptyRows { get; private init; }

    /// <summary>Whether a note is enough to add it: whoever is sent to a sheet must find it.</summary>
    public bool ForNotes { get; private init; }

    /// <summary>All of them, in the order in which they are added.</summary>
    public static IReadOnlyList<QuestionForm> All { get; } =
    [
        new(ShopSheet.Flasks, Reading.OwnName.FlasksQuestions,
            QuestionSheetWords.Flasks,
            [
                new("Size", ShopField.Name, 16), new("Inside diameter (mm)", ShopField.InsideDiameter, 12), new("Height (mm)", ShopField.Height, 10),
                new("Owned", ShopField.Owned, 9), new("Sprue diameter (mm)", ShopField.SprueDiameter, 12), new("Base height (mm)", ShopField.BaseHeight, 11),
                new("Cup (ml)", ShopField.Cup, 9), new("Per tree", ShopField.PerTree, 10),
            ]) { EmptyRows = 8 },
        new(ShopSheet.Materials, Reading.OwnName.MaterialsQuestions,
            QuestionSheetWords.Materials,
            [new("Material", ShopField.Name, 26), new("Kind", ShopField.Kind, 12), new("Density (g/cm³)", ShopField.Density, 14)]),
        new(ShopSheet.Alloys, Reading.OwnName.AlloysQuestions,
            QuestionSheetWords.Alloys,
            [
                new("Alloy", ShopField.Name, 26), new("Density (g/cm³)", ShopField.Density, 11), new("Metal temp (°C)", ShopField.MetalTemperature, 11),
                new("Flask temp fine (°C)", ShopField.FlaskTemperatureFine, 12), new("Flask temp ordinary (°C)", ShopField.FlaskTemperatureOrdinary, 12),
                new("Flask temp heavy (°C)", ShopField.FlaskTemperatureHeavy, 12), new("Quench after (min)", ShopField.QuenchAfter, 11),
                new("Fresh (g)", ShopField.Fresh, 11), new("Re-melt (g)", ShopField.Remelt, 11),
            ]),
        new(ShopSheet.Crucibles, Reading.OwnName.CruciblesQuestions,
            QuestionSheetWords.Crucibles,
            [
                new("Crucible", ShopField.Name, 22), new("Holds (ml)", ShopField.Holds, 11), new("Rated (g)", ShopField.Rated, 11),
                new("Rated for", ShopField.RatedFor, 16), new("Alloys", ShopField.Alloys, 30), new("Made of", ShopField.MadeOf, 14), new("Owned", ShopField.Owned, 9),
            ]) { EmptyRows = 4, ForNotes = true },
        new(ShopSheet.Kilns, Reading.OwnName.KilnsQuestions,
            QuestionSheetWords.Kilns,
            [
                new("Kiln", ShopField.Name, 22), new("Shape", ShopField.Shape, 11) { Choices = ["square", "round"] }, new("Inside width (mm)", ShopField.InsideWidth, 11),
                new("Inside depth (mm)", ShopField.InsideDepth, 11), new("Inside diameter (mm)", ShopField.InsideDiameter, 11), new("Power (kW)", ShopField.Power, 11),
                new("Cools (°C/h)", ShopField.Cools, 11), new("Reads high by (°C)", ShopField.ReadsHighBy, 12),
            ]) { EmptyRows = 4, ForNotes = true },
        new(ShopSheet.Investments, Reading.OwnName.InvestmentsQuestions,
            QuestionSheetWords.Investments,
            [
                new("Investment", ShopField.Name, 22), new("Kind", ShopField.Kind, 18) { Choices = ["gypsum", "high temperature"] },
                new("Water per 100", ShopField.WaterPer100, 10), new("Powder density (g/cm³)", ShopField.PowderDensity, 12), new("Working time (min)", ShopField.WorkingTime, 11),
                new("Set at least (h)", ShopField.SetAtLeast, 10), new("Never above (°C)", ShopField.NeverAbove, 11),
                new("Kept hot at most (h)", ShopField.KeptHot, 11), new("In stock (g)", ShopField.InStock, 11),
            ]) { EmptyRows = 4, ForNotes = true },
        new(ShopSheet.Schedules, Reading.OwnName.SchedulesQuestions,
            QuestionSheetWords.Schedules,
            [
                new("Schedule", ShopField.Name, 22), new("For", ShopField.For, 9) { Choices = ["wax", "resin", "stones"] },
                new("Up to diameter (mm)", ShopField.UpToDiameter, 11), new("Up to height (mm)", ShopField.UpToHeight, 10), new("Load at (°C)", ShopField.LoadAt, 10),
                new("Stage", ShopField.Stage, 9), new("Target (°C)", ShopField.Target, 10), new("Rate (°C/h)", ShopField.Rate, 10), new("Hold (h)", ShopField.Hold, 9),
            ]) { EmptyRows = 12, ForNotes = true },
    ];

    /// <summary>Whether a finding sends the shop to this sheet.</summary>
    /// <param name="finding">The finding.</param>
    public bool IsAskedBy(Finding finding) => ForNotes || finding.Severity > Severity.Note;
}
