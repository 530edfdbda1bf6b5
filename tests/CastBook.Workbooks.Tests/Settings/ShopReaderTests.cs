using CastBook.Casting.Investing;
using CastBook.Casting.Patterns;
using CastBook.Casting.Pouring;
using CastBook.Planning;
using CastBook.Planning.Clock;
using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Tests.Reading;

namespace CastBook.Workbooks.Tests.Settings;

public sealed class ShopReaderTests
{
    [Fact]
    public void Read_FlasksSheet_GivesEveryColumn()
    {
        var reading = Read("Flasks", s => s.Row("Our flasks").Skip()
            .Row("Size", "Inside diameter (mm)", "Height (in)", "Owned", "Method", "Holds (ml)", "Powder (g)", "Water (ml)",
                "Sprue diameter (mm)", "Base height (mm)", "Cup (ml)", "Above tree (mm)", "To wall (mm)")
            .Row("75 × 100", 72, 4, 3, "Vacuum, perforated", 400, 540, 205, 10, 18, 6, 15, 9));

        var flask = reading.Night.Shop.FlaskSizes.ShouldHaveSingleItem();
        (flask.Name, flask.Owned, flask.Method).ShouldBe(("75 × 100", 3, CastingMethod.VacuumPerforated));
        (flask.InsideDiameter!.Value.Millimeters, flask.Height!.Value.Millimeters).ShouldBe((72, 101.6));
        (flask.Holds!.Value.Milliliters, flask.Powder!.Value.Grams, flask.Water!.Value.Milliliters).ShouldBe((400, 540, 205));
        (flask.SprueDiameter!.Value.Millimeters, flask.BaseHeight!.Value.Millimeters, flask.Cup!.Value.Milliliters).ShouldBe((10, 18, 6));
        (flask.AboveTree!.Value.Millimeters, flask.ToWall!.Value.Millimeters).ShouldBe((15, 9));
        At(reading, new Subject(SubjectKind.FlaskSize, "75 × 100", ShopField.Height)).ShouldBe("Flasks!C4");
        At(reading, new Subject(SubjectKind.FlaskSize, "75 × 100")).ShouldBe("Flasks!A4");
        At(reading, new Subject(SubjectKind.FlaskSize, "")).ShouldBe("Flasks!A3");
        reading.ShopSheets.Keys.ShouldBe(["Flasks"]);
        Said(reading).ShouldBeEmpty();
    }

    // On a sheet of flasks a sprue or a base that is measured in inches can be nothing else.
    [Fact]
    public void Read_FlasksSheetInAShopsOwnShortWords_GivesItsMeasures()
    {
        var flask = Read("Flasks", s => s.Row("Flask", "Dia. (in)", "Height (in)", "How many", "Sprue (in)", "Base (in)").Row("small", 4, 6, 4, "5/8", "3/4"))
            .Night.Shop.FlaskSizes.ShouldHaveSingleItem();

        flask.InsideDiameter!.Value.Millimeters.ShouldBe(101.6, 1e-9);
        flask.SprueDiameter!.Value.Millimeters.ShouldBe(15.875, 1e-9);
        flask.BaseHeight!.Value.Millimeters.ShouldBe(19.05, 1e-9);
    }

    [Fact]
    public void Read_BlankCells_AreMissing()
    {
        var flask = Read("Flasks", s => s.Row("Size", "Inside diameter (mm)", "Owned").Row("65 × 65")).Night.Shop.FlaskSizes[0];

        (flask.InsideDiameter, flask.Owned, flask.Method).ShouldBe((null, null, null));
    }

    [Fact]
    public void Read_RemarkBelowTheRows_NamesNothing() =>
        Read("Flasks", s => s.Row("Size", "Owned").Row("75 × 100", 3).Skip().Row("Measure the inside, not the label.")).Night.Shop.FlaskSizes
            .ShouldHaveSingleItem().Name.ShouldBe("75 × 100");

    [Theory]
    [InlineData("about 70", "\"about 70\" under Inside diameter (mm) is not a number.")]
    [InlineData(-70, "\"-70\" under Inside diameter (mm) is not a number above zero.")]
    [InlineData(0, "\"0\" under Inside diameter (mm) is not a number above zero.")]
    [InlineData("70 ml", "\"70 ml\" under Inside diameter (mm) is not a number in the unit of its column.")]
    public void Read_ValueThatCannotBe_IsAStopOnItsCell(object typed, string seen)
    {
        var reading = Read("Flasks", s => s.Row("Size", "Inside diameter (mm)").Row("75 × 100", typed));

        reading.Night.Shop.FlaskSizes[0].InsideDiameter.ShouldBeNull();
        var finding = Said(reading).ShouldHaveSingleItem();
        (finding.Severity, finding.Seen).ShouldBe((Severity.Stop, seen));
        At(reading, finding.Subjects[0]).ShouldBe("Flasks!B2");
    }

    // Ounces may be of weight or of volume: the numbers would be a twentieth apart, and the heading is asked about.
    [Theory]
    [InlineData("Water (oz)", "Flasks!B1 says \"Water (oz)\", and oz is no unit of volume.", "Write a unit of volume there, such as ml or fl oz, and the numbers in that unit.")]
    [InlineData("Powder, ml", "Flasks!B1 says \"Powder, ml\", and ml is no unit of weight.", "Write a unit of weight there, such as g or lb, and the numbers in that unit.")]
    [InlineData("Height lb", "Flasks!B1 says \"Height lb\", and lb is no unit of length.", "Write a unit of length there, such as mm or in, and the numbers in that unit.")]
    public void Read_UnitOfSomethingElse_IsAskedAboutAtItsHeading(string heading, string seen, string remedy)
    {
        var reading = Read("Flasks", s => s.Row("Size", heading, "Owned").Row("75 × 100", 8, 3));

        var flask = reading.Night.Shop.FlaskSizes.ShouldHaveSingleItem();
        (flask.Owned, flask.Water, flask.Powder, flask.Height).ShouldBe((3, null, null, null));
        var finding = Said(reading).ShouldHaveSingleItem();
        (finding.Id, finding.Severity, finding.Seen, finding.Remedy).ShouldBe(("shop-unit-astray", Severity.Check, seen, remedy));
        At(reading, finding.Subjects[0]).ShouldBe("Flasks!B1");
    }

    [Fact]
    public void Read_UnitOfSomethingElseBesideTheRightColumn_SaysNothing() =>
        Said(Read("Flasks", s => s.Row("Size", "Water (ml)", "Water (oz)", "Owned").Row("75 × 100", 205, 7, 3))).ShouldBeEmpty();

    [Fact]
    public void Read_WordThatIsNoChoice_NamesTheChoices() =>
        Said(Read("Flasks", s => s.Row("Size", "Method").Row("75 × 100", "by hand"))).ShouldHaveSingleItem().Remedy
            .ShouldBe("Type vacuum perforated, vacuum solid, spin or gravity, or leave the cell empty.");

    [Fact]
    public void Read_FlaskWithoutAName_IsCalledByItsMeasures()
    {
        var reading = Read("Flasks", s => s.Row("Size", "Inside diameter (cm)", "Height (mm)", "Owned")
            .Row(null, 8, 100, 3).Row(null, 6.35, 102, 1).Row(null, null, 100, 2).Row(null, "wide", 100, 2));

        reading.Night.Shop.FlaskSizes.Select(f => (f.Name, f.Owned)).ShouldBe([("80 × 100", 3), ("63.5 × 102", 1)]);
        At(reading, new Subject(SubjectKind.FlaskSize, "80 × 100", ShopField.Owned)).ShouldBe("Flasks!D2");
        var note = reading.Findings.First(f => f.Id == "flask-named-by-measures");
        $"{note.Severity}: {note.Seen} {note.Remedy}".ShouldBe(
            "Note: A size of flask has no name at Flasks!A2; it is called 80 × 100 by its measures. To call it otherwise, type its name there.");
    }

    [Fact]
    public void Read_NameTwice_TakesTheFirst()
    {
        var reading = Read("Flasks", s => s.Row("Size", "Owned").Row("75 × 100", 3).Row("75 × 100", 5));

        reading.Night.Shop.FlaskSizes.ShouldHaveSingleItem().Owned.ShouldBe(3);
        Said(reading).ShouldHaveSingleItem().Seen.ShouldBe("The flask size 75 × 100 stands twice on sheet Flasks.");
        At(reading, new Subject(SubjectKind.FlaskSize, "75 × 100", ShopField.Owned)).ShouldBe("Flasks!B2");
    }

    [Fact]
    public void Read_OtherNamesOfAnAlloy_AreReadApart() =>
        Read("Alloys", s => s.Row("Alloy", "Other names", "Density (g/cm³)").Row("Bench silver", "925; house silver", 10.4))
            .Night.Shop.Alloys.ShouldHaveSingleItem().Alloy.OtherNames.ShouldBe(["925", "house silver"]);

    [Fact]
    public void Read_AlloysSheet_GivesEveryColumn()
    {
        var alloy = Read("Alloys", s => s
            .Row("Alloy", "Composition (parts per thousand)", "Density (g/cm³)", "Solidus (°C)", "Liquidus (°C)", "Metal temp (°C)", "Flask temp fine (°C)",
                "Flask temp ordinary (°C)", "Flask temp heavy (°C)", "Quench after (min)", "Loss (%)", "Fresh (g)", "Re-melt (g)", "Price (per g)")
            .Row("14k yellow", "Au 583 Ag 104 Cu 313", 13.1, 830, 885, 980, 560, 520, 480, "8/15/20", new Cell(0.02, BookBuilder.Style.Percent), 120, 0, 36.5))
            .Night.Shop.Alloys.ShouldHaveSingleItem();

        alloy.Alloy.Name.ShouldBe("14k yellow");
        alloy.Alloy.Composition!.PerMille("Au").ShouldBe(583);
        alloy.Alloy.Density!.Value.GramsPerCubicCentimeter.ShouldBe(13.1, 1e-9);
        (alloy.Alloy.Solidus!.Value.DegreesCelsius, alloy.Alloy.Liquidus!.Value.DegreesCelsius, alloy.Alloy.MetalTemperature!.Value.DegreesCelsius).ShouldBe((830, 885, 980));
        (alloy.Alloy.FlaskTemperatureFine!.Value.DegreesCelsius, alloy.Alloy.FlaskTemperatureOrdinary!.Value.DegreesCelsius, alloy.Alloy.FlaskTemperatureHeavy!.Value.DegreesCelsius)
            .ShouldBe((560, 520, 480));
        (alloy.Alloy.QuenchAfter.Small!.Value.Minutes, alloy.Alloy.QuenchAfter.Medium!.Value.Minutes, alloy.Alloy.QuenchAfter.Large!.Value.Minutes).ShouldBe((8, 15, 20));
        alloy.Loss!.Value.Percent.ShouldBe(2, 1e-9);
        (alloy.Fresh!.Value.Grams, alloy.Remelt!.Value.Grams, alloy.PricePerGram).ShouldBe((120, 0, 36.5));
    }

    [Fact]
    public void Read_OneQuench_IsForEveryFlask()
    {
        var quench = Read("Alloys", s => s.Row("Alloy", "Quench after (min)").Row("Bronze", 10)).Night.Shop.Alloys[0].Alloy.QuenchAfter;

        (quench.Small!.Value.Minutes, quench.Large!.Value.Minutes).ShouldBe((10, 10));
    }

    [Theory]
    [InlineData("8/15")]
    [InlineData("8/x/20")]
    public void Read_QuenchThatIsUnclear_IsNotGuessed(string typed)
    {
        var reading = Read("Alloys", s => s.Row("Alloy", "Quench after (min)").Row("Bronze", typed));

        reading.Night.Shop.Alloys[0].Alloy.QuenchAfter.Small.ShouldBeNull();
        Said(reading).ShouldHaveSingleItem().Severity.ShouldBe(Severity.Stop);
    }

    [Theory]
    [InlineData("/", "There is no element in it")]
    [InlineData("583", "\"583\" stands without an element before it")]
    [InlineData("Au 583 Xx 417", "\"Xx\" is not the symbol of an element known here")]
    [InlineData("Au 583 Cu 208 Cu 209", "Cu stands in it twice")]
    [InlineData("Ag 946,7 Cu 53,3", "Ag has no number that can be read after it")]
    [InlineData("Au 1010 Cu -10", "Cu is less than zero")]
    [InlineData("Ag 925", "The parts add up to 925, not to 1000")]
    [InlineData("Ag 92.5 Cu 7.5", "The parts add up to 100, which looks like percent; parts per thousand add up to 1000")]
    public void Read_CompositionThatCannotBe_SaysWhy(string typed, string why) =>
        Said(Read("Alloys", s => s.Row("Alloy", "Composition").Row("Odd", typed))).ShouldHaveSingleItem().Seen
            .ShouldBe($"\"{typed}\" under Composition is not a composition such as Au 583 Ag 104 Cu 313 ({why}).");

    // 18 °F more are 10 °C more, whether the column says so or the cell; as a temperature they would be 7.8 °C below zero.
    [Theory]
    [InlineData("Reads high by (°F)", 18, 10)]
    [InlineData("Reads high by (°C)", "18 °F", 10)]
    [InlineData("Reads high by (°F)", "10 °C", 10)]
    [InlineData("Reads high by (°C)", "-9 °F", -5)]
    public void Read_StepInDegrees_ShiftsNoZero(string heading, object typed, double celsius) =>
        Read("Kilns", s => s.Row("Kiln", heading).Row("Front", typed)).Night.Shop.Kilns[0].ReadsHighBy!.Value.DegreesCelsius.ShouldBe(celsius, 1e-9);

    [Fact]
    public void Read_CoreToleranceWithItsUnitBehindIt_IsADifferenceToo() =>
        Read("Shop", s => s.Row("Setting", "Value").Row("Core tolerance", "36 °F")).Night.Shop.Settings.CoreTolerance!.Value.DegreesCelsius.ShouldBe(20, 1e-9);

    // The sum is wrong, and the lead is there all the same.
    [Theory]
    [InlineData("Cu 850 Sn 50 Pb 150", "lead")]
    [InlineData("Cu 85 % Pb 15 %", "lead")]
    [InlineData("85 copper, 10 lead, 5 cadmium", "lead cadmium")]
    [InlineData("Ag:800 CD:200", "cadmium")]
    [InlineData("ask Tarn what it is to be 5", "")]
    [InlineData("Cu 850 Sn 50 Pb 100", "")]
    public void Read_PoisonInACompositionThatCannotBe_IsKept(string typed, string poisons) =>
        string.Join(' ', Read("Alloys", s => s.Row("Alloy", "Composition").Row("Odd", typed)).Night.Shop.Alloys[0].Poisons.Select(e => e.Name)).ShouldBe(poisons);

    [Fact]
    public void Read_OtherSheets_GiveTheirRows()
    {
        using var book = WithPieces(new BookBuilder()
            .Sheet("crucibles", s => s.Row("Crucible", "Holds (ml)", "Rated (g)", "Rated for", "Alloys", "Owned").Row("Small", 60, 500, "gold", "14k yellow, 18k white", 2))
            .Sheet("Kilns", s => s.Row("Kiln", "Shape", "Inside width (mm)", "Inside depth (mm)", "Power (kW)", "Cools (°C/h)", "Reads high by (°F)").Row("Big", "square", 300, 320, 3.5, 180, 18))
            .Sheet("Materials", s => s.Row("Material", "Kind", "Density (g/cm³)", "Print at least (°C)", "Wash at most (min)", "Each bath at most (s)", "Cure each side (min)", "Water rinse", "Roughen").Row("Blue resin", "resin", 1.15, 28, 5, 90, 20, "no", "x"))
            .Sheet("Investments", s => s.Row("Investment", "Kind", "Water per 100", "Powder density (g/cm³)", "Working time (min)", "Set at least (h)", "Never above (°C)", "Silica", "Inversion at most (°F/h)", "Kept hot at most", "In stock (kg)")
                .Row("White", "gypsum", 40, 2.6, 9, 2, 732, "cristobalite", 270, 6, 22.5)));
        var shop = TestBooks.Read(book).Night.Shop;

        var crucible = shop.Crucibles.ShouldHaveSingleItem();
        (crucible.Holds!.Value.Milliliters, crucible.Rated!.Value.Grams, crucible.RatedFor, crucible.Owned).ShouldBe((60, 500, "gold", 2));
        crucible.Alloys.ShouldBe(["14k yellow", "18k white"]);
        var kiln = shop.Kilns.ShouldHaveSingleItem();
        (kiln.Shape, kiln.InsideWidth!.Value.Millimeters, kiln.Power!.Value.Watts, kiln.CoolsDegreesPerHour).ShouldBe((KilnShape.Square, 300, 3500m, 180));
        kiln.ReadsHighBy!.Value.DegreesCelsius.ShouldBe(10, 1e-9);
        var material = shop.Materials.ShouldHaveSingleItem();
        (material.Kind, material.PrintAtLeast!.Value.DegreesCelsius, material.WashAtMost!.Value.Minutes, material.CureEachSide!.Value.Minutes).ShouldBe((PatternKind.Resin, 28, 5, 20));
        material.BathAtMost!.Value.Minutes.ShouldBe(1.5, 1e-9);
        (material.WaterRinse, material.Roughen).ShouldBe((false, true));
        var powder = shop.Investments.ShouldHaveSingleItem();
        (powder.Kind, powder.WaterPer100, powder.WorkingTime!.Value.Minutes, powder.SetAtLeast!.Value.Hours, powder.InStock!.Value.Grams)
            .ShouldBe((InvestmentKind.Gypsum, 40, 9, 2, 22500));
        powder.Silica.ShouldBe(Silica.Cristobalite);
        powder.InversionDegreesPerHour!.Value.ShouldBe(150, 1e-9);
        powder.KeptHotAtMost!.Value.Hours.ShouldBe(6, 1e-9);
    }

    [Fact]
    public void Read_PeopleOfTheNight_GivesStepsAndHours()
    {
        var settings = Read("Shop", s => s.Row("Setting", "Value", "Unit").Row("Two people for", "Pour, base off and load").Row("Second person from", "8:00")
            .Row("Second person until", "17.30").Row("Stay with", "steam; burnout").Row("Kiln loads", "a, b; C D")).Night.Shop.Settings;

        settings.TwoPeopleFor.ShouldBe([ClockStepKind.Pour, ClockStepKind.BaseOff, ClockStepKind.LoadKiln]);
        settings.StayWith.ShouldBe([ClockStepKind.Steam, ClockStepKind.Stage, ClockStepKind.Fall]);
        (settings.SecondFrom, settings.SecondUntil).ShouldBe((new TimeOnly(8, 0), new TimeOnly(17, 30)));
        settings.KilnLoads.Select(load => string.Concat(load)).ShouldBe(["AB", "CD"]);
    }

    [Theory]
    [InlineData("Saturday, Sunday")]
    [InlineData("the weekend")]
    [InlineData("samstags und sonntags")]
    [InlineData("sábado y domingo")]
    [InlineData("Sat. + Sun.")]
    public void Read_DaysOfTheWeek_AreClosed(string typed) =>
        Read("Shop", s => s.Row("Setting", "Value").Row("Closed on", typed)).Night.Shop.Settings.ClosedOn.ShouldBe([DayOfWeek.Saturday, DayOfWeek.Sunday]);

    [Theory]
    [InlineData("Fri - Sun")]
    [InlineData("from Friday to Sunday")]
    [InlineData("Freitag bis Sonntag")]
    [InlineData("sexta-feira a domingo")]
    [InlineData("du vendredi au dimanche")]
    public void Read_DaysFromOneToAnother_AreAllOfThem(string typed) =>
        Read("Shop", s => s.Row("Setting", "Value").Row("Closed on", typed)).Night.Shop.Settings.ClosedOn.ShouldBe([DayOfWeek.Friday, DayOfWeek.Saturday, DayOfWeek.Sunday]);

    [Fact]
    public void Read_DatesAmongDays_AreDaysAway()
    {
        var settings = Read("Shop", s => s.Row("Setting", "Value").Row("Closed on", "Sunday, 24.12.2026 and 2026-12-30 to 2 January 2027")).Night.Shop.Settings;

        settings.ClosedOn.ShouldBe([DayOfWeek.Sunday]);
        settings.Away.ShouldBe([new DaysAway(new DateOnly(2026, 12, 24), new DateOnly(2026, 12, 24)), new DaysAway(new DateOnly(2026, 12, 30), new DateOnly(2027, 1, 2))]);
    }

    [Fact]
    public void Read_DateInADateCell_IsADayAway() =>
        Read("Shop", s => s.Row("Setting", "Value").Row("Closed on", new DateTime(2026, 12, 24))).Night.Shop.Settings.Away
            .ShouldBe([new DaysAway(new DateOnly(2026, 12, 24), new DateOnly(2026, 12, 24))]);

    // Days that end before they begin, one that may be in March or April, and half a range.
    [Theory]
    [InlineData("most evenings")]
    [InlineData("Sat -")]
    [InlineData("2027-01-02 to 2026-12-24")]
    [InlineData("03/04/2026")]
    [InlineData("2026-12-24 to")]
    public void Read_NoDaysOfTheWeek_SaysSo(string typed)
    {
        var reading = Read("Shop", s => s.Row("Setting", "Value").Row("Closed on", typed));

        reading.Night.Shop.Settings.ClosedOn.ShouldBeEmpty();
        Said(reading).ShouldHaveSingleItem().Seen.ShouldBe($"Closed on says \"{typed}\", which is not days of the week and dates, with commas, such as Saturday, Sunday, 2026-12-24 to 2027-01-02.");
        reading.Night.Shop.Settings.Away.ShouldBeEmpty();
    }

    [Fact]
    public void Read_StepThatNobodyKnows_SaysWhichThereAre() =>
        Said(Read("Shop", s => s.Row("Setting", "Value").Row("Two people for", "pour, hoover"))).ShouldHaveSingleItem().Seen
            .ShouldBe("Two people for says \"pour, hoover\", which is not some of mix, base off, load, pour and quench, with commas.");

    // A difference of temperatures: 18 °F are 10 °C, and no zero is shifted.
    [Theory]
    [InlineData(15, "°C", 15.0)]
    [InlineData(18, "°F", 10.0)]
    [InlineData(0, "°C", null)]
    [InlineData(200, "°C", null)]
    public void Read_CoreTolerance_IsADifference(double typed, string unit, double? degrees)
    {
        var tolerance = Read("Shop", s => s.Row("Setting", "Value", "Unit").Row("Core tolerance", typed, unit)).Night.Shop.Settings.CoreTolerance;

        (tolerance is { } read ? Math.Round(read.DegreesCelsius, 9) : (double?)null).ShouldBe(degrees);
    }

    [Fact]
    public void Read_Schedules_GroupsTheirStages()
    {
        var schedule = Read("Schedules", s => s
            .Row("Schedule", "For", "Up to diameter (mm)", "Up to height (mm)", "Load at (°C)", "Stage", "Target (°C)", "Rate (°C/h)", "Hold (h)")
            .Row("Wax small", "wax", 65, 80, 150, 1, 150, null, 2)
            .Row(null, null, null, null, null, 3, 480, 200, 1)
            .Row("Wax small", null, null, null, null, 2, 370, 120, 2)).Night.Shop.Schedules.ShouldHaveSingleItem();

        (schedule.Name, schedule.For, schedule.UpToDiameter!.Value.Millimeters, schedule.LoadAt!.Value.DegreesCelsius).ShouldBe(("Wax small", ScheduleUse.Wax, 65, 150));
        schedule.Stages.Select(s => (s.Target.DegreesCelsius, s.RateDegreesPerHour, s.Hold.Hours)).ShouldBe([(150, null, 2), (370, 120, 2), (480, 200, 1)]);
    }

    // A burnout with a stage left out could crack a mould or worse: the schedule is not used at all.
    [Fact]
    public void Read_ScheduleWithAnOpenStage_IsNotUsed()
    {
        var reading = Read("Schedules", s => s.Row("Schedule", "Stage", "Target (°C)", "Hold (h)").Row("Resin", 1, 150, 2).Row("Resin", 2, 370, null));

        reading.Night.Shop.Schedules.ShouldBeEmpty();
        Said(reading).ShouldHaveSingleItem().Seen.ShouldBe("Schedule Resin has no hold in row 3.");
    }

    // A rate that counts as not given lets the kiln go as fast as it can, and a size as not given makes a short schedule one for every flask.
    [Theory]
    [InlineData("Rate (°C/h)", "slowly", "a number")]
    [InlineData("Rate (°C/h)", 0, "a number above zero")]
    [InlineData("Rate (°C/h)", "100 °C", "a number in the unit of its column")]
    [InlineData("Stage", "first", "a number")]
    [InlineData("Target (°C)", "red", "a number")]
    [InlineData("Hold (h)", "overnight", "a number")]
    [InlineData("Up to diameter (mm)", "about 65", "a number")]
    [InlineData("Load at (°C)", "warm", "a number")]
    public void Read_ScheduleWithAValueThatCannotBeRead_IsNotUsed(string heading, object typed, string wanted)
    {
        string[] headings = ["Schedule", "Up to diameter (mm)", "Load at (°C)", "Stage", "Target (°C)", "Rate (°C/h)", "Hold (h)"];
        object[] values = ["Resin", 65, 20, 1, 150, 100, 2];
        values[Array.IndexOf(headings, heading)] = typed;

        var reading = Read("Schedules", s => s.Row(headings).Row(values));

        reading.Night.Shop.Schedules.ShouldBeEmpty();
        var finding = Said(reading).ShouldHaveSingleItem();
        $"{finding.Severity}: {finding.Seen} {finding.Why} {finding.Remedy}".ShouldBe(
            $"Stop: \"{typed}\" under {heading} is not {wanted}. A burnout is never guessed, so schedule Resin is not used, nor another in its place. Type {wanted}, or empty the cell if there is to be none.");
    }

    // As far as it can be read, it is handed on: no other schedule may take its place.
    [Fact]
    public void Read_ScheduleThatIsNotUsed_IsKnownToBeThere()
    {
        var shop = Read("Schedules", s => s.Row("Schedule", "For", "Up to diameter (mm)", "Target (°C)", "Hold (h)")
            .Row("Resin", "resin", 80, 150, "overnight").Row("Blank", null, null, null, null).Row("Odd", "plastic", "65?", 150, 2)).Night.Shop;

        shop.UnreadSchedules.Select(s => (s.Name, s.For, s.UpToDiameter?.Millimeters, string.Join(' ', s.Unreadable.Order()))).ShouldBe(
            [("Resin", ScheduleUse.Resin, 80.0, "hold"), ("Odd", ScheduleUse.WaxAndResin, null, "for upToDiameter")]);
    }

    // A number that is there and cannot be read is not a number that is not there, whether the book says it or the shop file.
    [Theory]
    [InlineData("Investments", "Water per 100", "forty", ShopField.WaterPer100)]
    [InlineData("Investments", "Never above (°C)", "red", ShopField.NeverAbove)]
    [InlineData("Investments", "Kind", "sand", ShopField.Kind)]
    [InlineData("Investments", "Working time (min)", 0, ShopField.WorkingTime)]
    [InlineData("Flasks", "Cup (ml)", "an egg", ShopField.Cup)]
    [InlineData("Kilns", "Reads high by (°C)", "a little", ShopField.ReadsHighBy)]
    [InlineData("Alloys", "Quench after (min)", "8/15", ShopField.QuenchAfter)]
    [InlineData("Crucibles", "Owned", 1.5, ShopField.Owned)]
    [InlineData("Materials", "Density", "light", ShopField.Density)]
    public void Read_ValueThatCannotBeRead_IsKnownToBeThere(string sheet, string heading, object typed, string field)
    {
        var shop = Read(sheet, s => s.Row(sheet[..^1], heading).Row("One", typed).Row("Two", null)).Night.Shop;

        SheetLine[] lines = sheet switch
        {
            "Investments" => [.. shop.Investments],
            "Flasks" => [.. shop.FlaskSizes],
            "Kilns" => [.. shop.Kilns],
            "Alloys" => [.. shop.Alloys],
            "Crucibles" => [.. shop.Crucibles],
            _ => [.. shop.Materials],
        };
        lines.Select(l => string.Join(' ', l.Unreadable)).ShouldBe([field, ""]);
    }

    // A list of prices, or of what is in the drawer, is no list of alloys.
    [Theory]
    [InlineData("Metal", "Density", 1)]
    [InlineData("metals ", "Metal temp (°C)", 1)]
    [InlineData("Metal", "Price", 0)]
    [InlineData("Alloys", "Price", 1)]
    [InlineData("Melt", "Density", 0)]
    public void Read_SheetOfMetals_IsThatOfAlloysWhereItSaysWhatTheyAre(string sheet, string heading, int alloys) =>
        Read(sheet, s => s.Row("Metal", heading).Row("Bronze", 10)).Night.Shop.Alloys.Count.ShouldBe(alloys);

    [Theory]
    [InlineData("gypsum-bonded", "quartz and cristobalite", InvestmentKind.Gypsum, Silica.Both)]
    [InlineData("GIPS", "Quarz", InvestmentKind.Gypsum, Silica.Quartz)]
    [InlineData("gipsgebunden", "Cristobalit", InvestmentKind.Gypsum, Silica.Cristobalite)]
    [InlineData("plâtre", "les deux", InvestmentKind.Gypsum, Silica.Both)]
    [InlineData("Phosphatgebunden", "beide", InvestmentKind.HighTemperature, Silica.Both)]
    [InlineData("fosfato", "cuarzo", InvestmentKind.HighTemperature, Silica.Quartz)]
    [InlineData("high-temperature", "cristobalite, quartz", InvestmentKind.HighTemperature, Silica.Both)]
    [InlineData("alta temperatura", "quarzo", InvestmentKind.HighTemperature, Silica.Quartz)]
    [InlineData("cement", "sand", null, null)]
    public void Read_Powder_IsUnderstoodInAnyLanguage(string kind, string silica, InvestmentKind? binder, Silica? grains)
    {
        var powder = Read("Investments", s => s.Row("Investment", "Kind", "Silica").Row("White", kind, silica)).Night.Shop.Investments.ShouldHaveSingleItem();

        (powder.Kind, powder.CannotRead(ShopField.Kind), powder.Silica).ShouldBe((binder, binder is null, grains));
    }

    [Fact]
    public void Read_PowderWithoutAKind_IsNoneThatCannotBeRead()
    {
        var powder = Read("Investments", s => s.Row("Investment", "Kind", "Silica").Row("White", null, "quartz")).Night.Shop.Investments.ShouldHaveSingleItem();

        (powder.Kind, powder.CannotRead(ShopField.Kind)).ShouldBe((null, false));
    }

    [Theory]
    [InlineData("Wax", ScheduleUse.Wax)]
    [InlineData("cire", ScheduleUse.Wax)]
    [InlineData("castable resin", ScheduleUse.Resin)]
    [InlineData("Harz", ScheduleUse.Resin)]
    [InlineData("résine", ScheduleUse.Resin)]
    [InlineData("stones in", ScheduleUse.Stones)]
    [InlineData("Wachs mit Steinen", ScheduleUse.Stones)]
    [InlineData("wax with stones", ScheduleUse.Stones)]
    [InlineData("cera con pietre", ScheduleUse.Stones)]
    [InlineData("wax or resin", ScheduleUse.WaxAndResin)]
    [InlineData(null, ScheduleUse.WaxAndResin)]
    public void Read_ScheduleFor_IsUnderstoodInAnyLanguage(string? typed, ScheduleUse use) =>
        Read("Schedules", s => s.Row("Schedule", "For", "Target (°C)", "Hold (h)").Row("Long", typed, 732, 2)).Night.Shop.Schedules.ShouldHaveSingleItem().For.ShouldBe(use);

    // Left out silently, it would be replaced by a usual schedule that is shorter.
    [Theory]
    [InlineData("plastic")]
    [InlineData("without stones")]
    [InlineData("everything")]
    public void Read_ScheduleForNobodyKnowsWhat_IsNotUsedAndSaysSo(string typed)
    {
        var reading = Read("Schedules", s => s.Row("Schedule", "For", "Target (°C)", "Hold (h)").Row("Long", typed, 732, 2));

        reading.Night.Shop.Schedules.ShouldBeEmpty();
        var said = Said(reading).ShouldHaveSingleItem();
        $"{said.Seen} {said.Why} {said.Remedy}".ShouldBe(
            $"Schedule Long is for \"{typed}\", which is not wax, resin or stones. A mould that is burnt out by the schedule of something else is spoilt, so this one is not used, nor another in its place. "
            + "Type wax, resin or stones there, or leave the cell empty if the schedule is for wax and resin alike.");
        said.Subjects.ShouldBe([new Subject(SubjectKind.Schedule, "Long", ShopField.For)]);
    }

    [Fact]
    public void Read_ShopSheet_GivesEverySetting()
    {
        var settings = Read("Shop", s => s.Row("Setting", "Value", "Unit", "What it is for")
            .Row("Weights are of", "Pattern").Row("Pattern material", "wax").Row("Pattern density", 0.93, "g/cm³").Row("sprue wax density", "0,95")
            .Row("Casting method", "spin").Row("Crucible holds", 60, "ml").Row("Investment", "White").Row("Button share", new Cell(0.2, BookBuilder.Style.Percent)).Row("Button at least", 1.5, "ml")
            .Row("Melt loss", 1, "%").Row("Charge step", 1, "g").Row("Powder step", 0.5, "oz").Row("Gap between pieces", 3, "mm").Row("Gate length", 6, "mm")
            .Row("Gate diameter", 3, "mm").Row("Gate angle", 45, "degrees").Row("Night", "Friday").Row("Alloy \"gold\" is", "14k yellow")).Night.Shop.Settings;

        (settings.WeightsAreOf, settings.PatternMaterial, settings.CastingMethod, settings.Investment, settings.Night)
            .ShouldBe((WeightMeaning.Pattern, "wax", CastingMethod.Spin, "White", "Friday"));
        settings.PatternDensity!.Value.GramsPerCubicCentimeter.ShouldBe(0.93, 1e-9);
        settings.SprueWaxDensity!.Value.GramsPerCubicCentimeter.ShouldBe(0.95, 1e-9);
        (settings.CrucibleHolds!.Value.Milliliters, settings.ButtonAtLeast!.Value.Milliliters, settings.ChargeStep!.Value.Grams).ShouldBe((60, 1.5, 1));
        settings.PowderStep!.Value.Grams.ShouldBe(14.1747615625, 1e-9);
        settings.ButtonShare!.Value.Percent.ShouldBe(20, 1e-9);
        settings.MeltLoss!.Value.Percent.ShouldBe(1, 1e-9);
        (settings.GapBetweenPieces!.Value.Millimeters, settings.GateLength!.Value.Millimeters, settings.GateDiameter!.Value.Millimeters, settings.GateAngle!.Value.Degrees)
            .ShouldBe((3, 6, 3, 45));
        settings.AlloyMeanings["GOLD"].ShouldBe("14k yellow");
    }

    [Fact]
    public void Read_LiquidMeasuresWithoutCountry_AreThoseOfTheUnitedStatesAndSaidOnce()
    {
        var reading = Read("Flasks", s => s.Row("Size", "Owned", "Holds (pt)", "Water (ml)").Row("3 × 4", 2, 1, "8 fl oz").Row("3.5 × 5", 1, 2, "1 imp pt"));
        var shop = Read("Shop", s => s.Row("Setting", "Value", "Unit").Row("Mixing bowl", "2 qt").Row("Crucible holds", 2, "fl oz").Row("Water in", "fl oz"));

        var flask = reading.Night.Shop.FlaskSizes[0];
        (flask.Holds!.Value.Milliliters, flask.Water!.Value.Milliliters).ShouldBe((473.176473, 236.5882365));
        reading.Findings.Where(f => f.Id == "liquid-measure-is-us").Select(f => f.Seen).ShouldBe(
            ["Holds (pt): 1 was read as 473 ml, in measures of the United States.", "Water (ml): 8 fl oz was read as 237 ml, in measures of the United States."]);
        var settings = shop.Night.Shop.Settings;
        (settings.MixingBowl!.Value.Milliliters, settings.CrucibleHolds!.Value.Milliliters).ShouldBe((1892.705892, 59.147059125));
        settings.WaterIn.ShouldBe(WrittenVolume.UsFluidOunce);
        Said(shop).Select(f => f.Seen).ShouldBe(
            ["Mixing bowl: 2 qt was read as 1,893 ml, in measures of the United States.", "Crucible holds: 2 fl oz was read as 59 ml, in measures of the United States."]);
    }

    // NIST Handbook 44, Appendix C: an ounce is 28.349523125 g, a troy ounce 31.1034768 g.
    [Fact]
    public void Read_PlainOunces_AreAskedAboutForMetalAndNotedForPowder()
    {
        var alloys = Read("Alloys", s => s.Row("Alloy", "Density", "Fresh (oz)", "Re-melt (ozt)").Row("Sterling", 10.36, 10, 2).Row("Bronze", 8.8, 20, "3 oz"));
        var flasks = Read("Flasks", s => s.Row("Size", "Owned", "Powder (oz)").Row("3 × 4", 2, 40));
        var shop = Read("Shop", s => s.Row("Setting", "Value", "Unit").Row("Charge step", 0.1, "oz").Row("Powder step", 1, "oz"));

        alloys.Night.Shop.Alloys[0].Fresh!.Value.Grams.ShouldBe(283.49523125, 1e-9);
        alloys.Night.Shop.Alloys[0].Remelt!.Value.Grams.ShouldBe(62.2069536, 1e-9);
        alloys.Findings.Where(f => f.Id == "shop-plain-ounce").Select(f => f.Seen).ShouldBe(
        [
            "Fresh (oz): 10 was read as 283.5 g, in ordinary ounces of 28.35 g.",
            "Re-melt (ozt): 3 oz was read as 85.05 g, in ordinary ounces of 28.35 g.",
        ]);
        flasks.Findings.Single(f => f.Id == "shop-ounce-of-powder").Seen.ShouldBe("Powder (oz): 40 was read as 1,133.98 g, in ordinary ounces of 28.35 g, as powder and wax are sold.");
        Said(shop).Select(f => f.Seen).ShouldBe(["Charge step: 0.1 oz was read as 2.83 g, in ordinary ounces of 28.35 g."]);
    }

    [Fact]
    public void Read_BlankSetting_IsNotAnsweredButHasItsCell()
    {
        var reading = Read("Shop", s => s.Row("Setting", "Value", "Unit").Row("Melt loss", null, "%").Row("Alloy \"gold\" is", null));

        reading.Night.Shop.Settings.MeltLoss.ShouldBeNull();
        reading.Night.Shop.Settings.AlloyMeanings.ShouldBeEmpty();
        At(reading, Subject.Setting(SettingName.MeltLoss)).ShouldBe("Shop!B2");
        At(reading, Subject.Setting(SettingName.AlloyMeaning("gold"))).ShouldBe("Shop!B3");
        Said(reading).ShouldBeEmpty();
    }

    [Theory]
    [InlineData("Melt los", 1, "%", "setting-unknown", "The nearest is \"Melt loss\".")]
    [InlineData("Melt loss", "a bit", "%", "setting-unreadable", "Type a number in %.")]
    [InlineData("Melt loss", 1, "g", "setting-unreadable", "Type a number in %.")]
    [InlineData("Melt loss", -1, "%", "setting-unreadable", "Type a number in %.")]
    [InlineData("Button share", 0.2, "%", "setting-unreadable", "Type a number in %, such as 20.")]
    [InlineData("Crucible holds", 0, "ml", "setting-unreadable", "Type a number in ml.")]
    [InlineData("Weights are of", "both", null, "setting-unreadable", "Type pattern or finished metal.")]
    public void Read_SettingThatCannotBe_SaysWhatToType(string name, object value, string? unit, string id, string remedy)
    {
        var reading = Read("Shop", s => s.Row("Setting", "Value", "Unit").Row(name, value, unit));

        var finding = Said(reading).ShouldHaveSingleItem();
        (finding.Id, finding.Remedy).ShouldBe((id, remedy));
        At(reading, finding.Subjects[0]).ShouldBe("Shop!B2");
    }

    [Fact]
    public void Read_OurTreesSheet_GivesTheTreesInHand()
    {
        using var book = WithPieces(new BookBuilder()
            .Sheet("Trees", s => s.Row("Trees of tonight")
                .Row("Flask", "Size", "Pieces", "Base (g)", "Tree on base (g)", "Of it wax (g)", "State", "Remarks")
                .Row("A", "75 × 100", 12, 31.5, 58.25, 9, "waxed", "fine")
                .Row("B", "75 × 100", 8, null, null, null, "planned", "later")
                .Row("C", "65 × 65", 8, null, null, null, "in kiln"))
            .Name(OwnName.TreesSheet, "Trees!$A$1"));

        var reading = TestBooks.Read(book);

        reading.Night.Trees.Select(t => (t.Flask, t.Size, t.State)).ShouldBe([("A", "75 × 100", FlaskState.Waxed), ("B", "75 × 100", FlaskState.Planned), ("C", "65 × 65", FlaskState.InKiln)]);
        var tree = reading.Night.Trees[0];
        (tree.Base!.Value.Grams, tree.TreeOnBase!.Value.Grams, tree.OfItWax!.Value.Grams).ShouldBe((31.5, 58.25, 9));
        At(reading, Subject.Flask("B", ShopField.TreeOnBase)).ShouldBe("Trees!E4");
    }

    [Fact]
    public void Read_ASheetOfTheShopsCalledTrees_IsNotOurs() =>
        Read("Trees", s => s.Row("Flask", "State").Row("A", "poured")).Night.Trees.ShouldBeEmpty();

    // Planned anew, a flask that may be full of metal would lose its pieces to others.
    [Fact]
    public void Read_StateNobodyKnows_KeepsTheFlaskAndSaysSo()
    {
        using var book = WithPieces(new BookBuilder().Sheet("Trees", s => s.Row("Flask", "State").Row("A", "gegossen").Row("B", null)).Name(OwnName.TreesSheet, "Trees!$A$1"));

        var reading = TestBooks.Read(book);

        reading.Night.Trees.Select(t => (t.Flask, t.State)).ShouldBe([("A", FlaskState.Waxed), ("B", FlaskState.Planned)]);
        var said = Said(reading).ShouldHaveSingleItem();
        $"{said.Seen} {said.Why} {said.Remedy}".ShouldBe(
            "\"gegossen\" beside flask A on Trees is not a state. It counts as waxed, so that nothing in the flask is moved. Type planned, waxed, invested, in kiln or poured.");
        At(reading, said.Subjects[0]).ShouldBe("Trees!B2");
    }

    [Fact]
    public void Read_SheetWithoutKnownHeadings_IsNotTaken() =>
        Read("Alloys", s => s.Row("hello", "there").Row("a", "b")).ShopSheets.ShouldBeEmpty();

    private static BookReading Read(string sheet, Action<SheetBuilder> fill)
    {
        using var book = WithPieces(new BookBuilder().Sheet(sheet, fill));
        return TestBooks.Read(book);
    }

    private static MemoryStream WithPieces(BookBuilder builder) =>
        builder.Sheet("Pieces", s => s.Row("Piece", "Qty", "Pattern weight (g)", "Alloy").Row("Pin", 1, 2.5, "Bronze")).Build();

    private static IReadOnlyList<Finding> Said(BookReading reading) => reading.Findings;

    private static string? At(BookReading reading, Subject subject) => reading.Cells.Find(subject)?.ToString();
}
