using CastBook.Casting.Metals;
using CastBook.Planning.Findings;
using CastBook.Planning.Metals;
using CastBook.Planning.Shops;
using UnitsNet;

namespace CastBook.Planning.Tests.Metals;

public sealed class AlloyBookTests
{
    [Fact]
    public void Resolve_SeveralMeanings_StopsOnceWithTheChoices()
    {
        var plan = NightPlanner.Plan(Wrenmoor.Night(Ring("sterling"), Ring("Sterling"), Ring("Bench silver")));

        var finding = plan.The("alloy-ambiguous");
        finding.Subjects.ShouldBe(
            [Subject.Setting("Alloy \"sterling\" is"), Subject.Piece(0, PieceField.Alloy), Subject.Piece(1, PieceField.Alloy)]);
        finding.Text().ShouldBe(
            "\"sterling\" can mean \"sterling without deoxidant\" or \"deoxidised sterling\". They differ in density, pour temperature or quench; the supplier's data sheet says which it is. "
            + "Type one of these names in the list, or answer 'Alloy \"sterling\" is' on the Shop sheet.");
        plan.Pieces[0].MetalEach.ShouldBeNull();
        plan.Pieces[2].Status.ShouldBe(PieceStatus.Planned);
    }

    // The usual ones first; the Shop sheet names the rest.
    [Fact]
    public void Resolve_PlainSilver_NamesTheSterlingsFirst()
    {
        var finding = NightPlanner.Plan(Wrenmoor.Night(Wrenmoor.Shop with { Alloys = [] }, Ring("silver"))).The("alloy-ambiguous");

        finding.Seen.ShouldStartWith("\"silver\" can mean \"sterling without deoxidant\", \"deoxidised sterling\", ");
        finding.Seen.ShouldEndWith(" or one of 8 more.");
        finding.Remedy.ShouldBe("Type one of these names in the list, or answer 'Alloy \"silver\" is' on the Shop sheet, which names all 14.");
        var guide = SettingGuide.Of("Alloy \"silver\" is").WhatFor;
        guide.ShouldStartWith(
            "Which alloy the rows mean: sterling without deoxidant (10.36 g/cm³, poured at 960 °C); deoxidised sterling (10.36 g/cm³, poured at 1,010 °C); fine silver (10.49 g/cm³); ");
        BuiltInAlloys.Named("silver").ShouldAllBe(a => guide.Contains(a.Name, StringComparison.Ordinal));
    }

    [Fact]
    public void Resolve_AnswerThatNobodyKnows_IsAskedAboutInItsCell()
    {
        var finding = NightPlanner.Plan(Wrenmoor.Night(Answered("silver", "sterlin"), Ring("silver"))).The("alloy-unknown");

        finding.Subjects.ShouldBe([Subject.Setting("Alloy \"silver\" is"), Subject.Piece(0, PieceField.Alloy)]);
        finding.Seen.ShouldBe("No alloy is called \"sterlin\", the answer for \"silver\".");
        finding.Remedy.ShouldStartWith("Type the name you mean (the nearest are \"deoxidised sterling\" and \"sterling without deoxidant\"), ");
    }

    [Fact]
    public void Resolve_AnswerThatMeansSeveral_SaysWhoseAnswerItIs() =>
        NightPlanner.Plan(Wrenmoor.Night(Answered("bronze", "brass"), Ring("bronze"))).The("alloy-ambiguous").Seen
            .ShouldStartWith("\"brass\", the answer for \"bronze\", can mean \"silicon brass C87500\", ");

    // One question for one alloy, however its rows spell it.
    [Fact]
    public void Resolve_SeveralSpellingsOfOneOpenName_AreOneQuestion()
    {
        var plan = NightPlanner.Plan(Wrenmoor.Night(Ring("Ag 925"), Ring("Sterlingsilber"), Ring("argento 925")));

        var finding = plan.The("alloy-ambiguous");
        finding.Subjects.Count.ShouldBe(4);
        finding.Seen.ShouldBe(
            "\"Ag 925\", \"Sterlingsilber\" and \"argento 925\" can mean \"sterling without deoxidant\" or \"deoxidised sterling\".");
        finding.Remedy.ShouldBe("Type one of these names in the list, or answer 'Alloy \"Ag 925\" is' on the Shop sheet.");
    }

    [Fact]
    public void Resolve_AnswerToAnotherSpelling_IsTaken()
    {
        var shop = Wrenmoor.Shop with
        {
            Settings = Wrenmoor.Answered with { AlloyMeanings = new Dictionary<string, string> { ["Ag 925"] = "deoxidised sterling" } },
        };

        NightPlanner.Plan(Wrenmoor.Night(shop, Ring("plata de ley"))).Flasks[0].MetalTemperature!.Value.DegreesCelsius.ShouldBe(1010, 1e-9);
    }

    [Fact]
    public void Resolve_MoreChoicesThanHelp_CountsTheRest()
    {
        var plan = NightPlanner.Plan(Wrenmoor.Night(Ring("or jaune")));

        plan.The("alloy-ambiguous").Seen.ShouldMatch("^\"or jaune\" can mean (\"[^\"]+\", ){5}\"[^\"]+\" or one of \\d+ more\\.$");
    }

    [Theory]
    [InlineData("bronze", "Bell bronze")]
    [InlineData("Bronzo", "Bell bronze")]
    [InlineData("silver", "Bench silver")]
    public void Resolve_OnlySuchAlloyOfTheShop_IsTakenAndNoted(string written, string row)
    {
        var plan = NightPlanner.Plan(Wrenmoor.Night(Ring(written), Ring(written)));

        plan.Flasks.ShouldHaveSingleItem().Alloy.ShouldBe(row);
        plan.The("alloy-taken-as").Text().ShouldBe(
            $"\"{written}\" is taken as \"{row}\", the only such alloy on the Alloys sheet. "
            + $"To change it, type another name in the list, or 'Alloy \"{written}\" is' on the Shop sheet.");
    }

    [Fact]
    public void Resolve_SeveralSuchAlloysOfTheShop_ChoosesAmongThem()
    {
        var second = Wrenmoor.Bronze with { Alloy = Wrenmoor.Bronze.Alloy with { Name = "Gunmetal bronze" } };

        var plan = NightPlanner.Plan(Wrenmoor.Night(Wrenmoor.Shop with { Alloys = [.. Wrenmoor.Shop.Alloys, second] }, Ring("bronce")));

        plan.The("alloy-ambiguous").Seen.ShouldBe("\"bronce\" can mean \"Bell bronze\" or \"Gunmetal bronze\".");
    }

    [Theory]
    [InlineData("750 Gelbgold", "18k yellow")]
    [InlineData("house metal", "Bench silver")]
    [InlineData("BENCH-SILVER", "Bench silver")]
    public void Resolve_RowInOtherWords_IsFoundWithoutANote(string written, string row)
    {
        var silver = Wrenmoor.Silver with { Alloy = Wrenmoor.Silver.Alloy with { OtherNames = ["House metal"] } };
        var gold = Wrenmoor.Silver with { Alloy = Wrenmoor.Silver.Alloy with { Name = "18k yellow" } };

        var plan = NightPlanner.Plan(Wrenmoor.Night(Wrenmoor.Shop with { Alloys = [silver, gold] }, Ring(written)));

        plan.Flasks.ShouldHaveSingleItem().Alloy.ShouldBe(row);
        plan.Ids().ShouldNotContain("alloy-taken-as");
    }

    // A name that is known without numbers asks for the numbers, not for another spelling.
    [Fact]
    public void Resolve_NameWithoutNumbers_AsksForThem()
    {
        var plan = NightPlanner.Plan(Wrenmoor.Night(Ring("CuSn12"), Ring("Bronze Cu Sn 12")));

        plan.Stops().ShouldBe(["alloy-density-missing"]);
        plan.The("alloy-density-missing").Text().ShouldBe(
            "No density is known for CuSn12. The metal follows from it. Type its density or its composition on the Alloys sheet.");
    }

    // Nobody guesses whether a shop's SS is sterling silver or steel, but the only such metal it owns is taken and said.
    [Fact]
    public void Resolve_SS_IsAskedUnlessTheShopOwnsOneSuchAlloy()
    {
        var plan = NightPlanner.Plan(Wrenmoor.Night(Ring("SS")));

        plan.The("alloy-ambiguous").Seen.ShouldBe("\"SS\" can mean \"sterling without deoxidant\", \"deoxidised sterling\" or \"stainless steel\".");
        var sterling = Wrenmoor.Silver with { Alloy = Wrenmoor.Silver.Alloy with { Name = "Sterling without deoxidant" } };
        var owned = NightPlanner.Plan(Wrenmoor.Night(Wrenmoor.Shop with { Alloys = [sterling] }, Ring("SS")));
        owned.Stops().ShouldBeEmpty();
        owned.The("alloy-taken-as").Seen.ShouldBe("\"SS\" is taken as \"Sterling without deoxidant\", the only such alloy on the Alloys sheet.");
    }

    [Fact]
    public void Resolve_LeadedAlloyByItsDesignation_IsRefusedAndNotAsked()
    {
        var plan = NightPlanner.Plan(Wrenmoor.Night(Ring("Messing CuZn39Pb3")));

        plan.Stops().ShouldBe(["alloy-refused"]);
        plan.The("alloy-refused").Seen.ShouldBe("Messing CuZn39Pb3 has lead in its composition.");
    }

    [Fact]
    public void Resolve_UnknownCarats_NamesTheNearest() =>
        NightPlanner.Plan(Wrenmoor.Night(Ring("16 ct white gold"))).The("alloy-unknown").Text().ShouldBe(
            "No alloy is called \"16 ct white gold\". The metal follows from its density. Type the name you mean "
            + "(the nearest are \"10k nickel white\", \"10k palladium white\" and \"14k nickel white\"), or add the alloy with its density to the Alloys sheet.");

    [Theory]
    [InlineData("Rotgold 750", true)]
    [InlineData("18k pink 4N", true)]
    [InlineData("oro rosso 18 kt", true)]
    [InlineData("or jaune 750", false)]
    [InlineData("red bronze", false)]
    public void IsRedGold_NameInAnyLanguage_IsKnown(string name, bool expected) =>
        new KnownAlloy(name, new Alloy { Name = name }, null, 0).IsRedGold.ShouldBe(expected);

    // "Gold" beside a crucible means fine gold, as makers mean it, whatever gold the shop casts.
    [Fact]
    public void DensityOf_GoldOfARating_IsFineGold()
    {
        var own = new ShopAlloy { Alloy = new Alloy { Name = "18k house gold", Density = Density.FromGramsPerCubicCentimeter(15.4) } };

        new AlloyBook(Wrenmoor.Shop with { Alloys = [own] }, new FindingList()).DensityOf("Gold")!.Value.GramsPerCubicCentimeter.ShouldBe(19.32, 1e-9);
    }

    [Fact]
    public void Resolve_AnsweredMeaning_IsTaken()
    {
        var shop = Wrenmoor.Shop with
        {
            Settings = Wrenmoor.Answered with
            {
                AlloyMeanings = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase) { ["Sterling"] = "deoxidised sterling" },
            },
        };

        var plan = NightPlanner.Plan(Wrenmoor.Night(shop, Ring("sterling")));

        plan.Stops().ShouldNotContain("alloy-ambiguous");
        plan.Flasks[0].Alloy.ShouldBe("deoxidised sterling");
        plan.Flasks[0].MetalTemperature!.Value.DegreesCelsius.ShouldBe(1010, 1e-9);
    }

    [Fact]
    public void Resolve_OneOfTheMeaningsOnTheShopsSheet_IsTaken()
    {
        var shop = Wrenmoor.Shop with
        {
            Alloys = [new ShopAlloy { Alloy = new Alloy { Name = "Deoxidised Sterling" }, Fresh = Mass.FromGrams(900) }],
        };

        var plan = NightPlanner.Plan(Wrenmoor.Night(shop, Ring("sterling")));

        plan.Stops().ShouldBe(["flask-temperature-missing"]);
        plan.Metal.ShouldHaveSingleItem().Alloy.ShouldBe("Deoxidised Sterling");
        plan.Metal[0].Fresh!.Value.Grams.ShouldBe(900, 1e-9);
        plan.Flasks[0].MetalTemperature!.Value.DegreesCelsius.ShouldBe(1010, 1e-9);
    }

    [Fact]
    public void Resolve_ShopsRow_WinsOverBuiltInValues()
    {
        var own = new ShopAlloy { Alloy = new Alloy { Name = "Plain sterling", Density = Density.FromGramsPerCubicCentimeter(10) } };

        var plan = NightPlanner.Plan(Wrenmoor.Night(Wrenmoor.Shop with { Alloys = [own] }, Ring("plain-sterling")));

        plan.Pieces[0].MetalEach!.Value.Grams.ShouldBe(20, 1e-9);
        plan.Flasks[0].MetalTemperature!.Value.DegreesCelsius.ShouldBe(960, 1e-9);
    }

    // Plain and deoxidised sterling are poured 50 °C apart, so a row that says only "sterling silver" gets no temperature of either.
    [Fact]
    public void Resolve_ShopsRowOfAnAmbiguousName_AsksForTheTemperature()
    {
        var own = new ShopAlloy { Alloy = new Alloy { Name = "Sterling silver", Density = Density.FromGramsPerCubicCentimeter(10.36) } };

        var plan = NightPlanner.Plan(Wrenmoor.Night(Wrenmoor.Shop with { Alloys = [own] }, Ring("sterling silver")));

        plan.Flasks[0].MetalTemperature.ShouldBeNull();
        plan.Findings.Select(f => f.Id).ShouldContain("metal-temperature-missing");
    }

    [Fact]
    public void Resolve_TwoSpellingsOfOneAlloy_ShareAFlask()
    {
        var plan = NightPlanner.Plan(Wrenmoor.Night(Ring("bench silver"), Ring("Bench-Silver")));

        plan.Flasks.ShouldHaveSingleItem();
        plan.Metal.ShouldHaveSingleItem().Alloy.ShouldBe("Bench silver");
    }

    /// <summary>None rather than a silly one: nothing that is built in is like these.</summary>
    [Theory]
    [InlineData("Argentum blend")]
    [InlineData("mystery nuggets")]
    [InlineData("10k purple")]
    public void Resolve_UnknownNameThatIsLikeNoOther_ProposesNone(string name) =>
        NightPlanner.Plan(Wrenmoor.Night(Ring(name))).The("alloy-unknown").Remedy.ShouldBe("Type the name you mean, or add the alloy with its density to the Alloys sheet.");

    [Theory]
    [InlineData("Clay")]
    [InlineData("silver clay")]
    [InlineData("Bronze-clay (medium fire)")]
    public void Resolve_Clay_CannotBeCast(string name)
    {
        var plan = NightPlanner.Plan(Wrenmoor.Night(Ring(name), Ring("Bench silver")));

        var finding = plan.The("alloy-is-clay");
        finding.Severity.ShouldBe(Severity.Stop);
        finding.Subjects.ShouldBe([Subject.Piece(0, PieceField.Alloy)]);
        finding.Text().ShouldBe(
            $"\"{name}\" is clay: it is shaped by hand and fired, and cannot be cast. Nothing of it goes into a flask. "
            + "Leave the row out, with yes in a column Leave out. If a piece made of something else is to be cast, type the alloy that you pour.");
        plan.Findings.ShouldNotContain(f => f.Id == "alloy-unknown");
        plan.Pieces[0].MetalEach.ShouldBeNull();
        plan.Pieces[1].Status.ShouldBe(PieceStatus.Planned);
    }

    [Fact]
    public void Resolve_UnknownName_StopsWithTheNearest()
    {
        var plan = NightPlanner.Plan(Wrenmoor.Night(Ring("Bel bronz"), Ring("Bel bronz")));

        var finding = plan.The("alloy-unknown");
        finding.Subjects.Count.ShouldBe(2);
        finding.Seen.ShouldBe("No alloy is called \"Bel bronz\".");
        finding.Remedy.ShouldStartWith("Type the name you mean (the nearest are \"Bell bronze\", ");
    }

    // By hand: 1 / (0.9/10.49 + 0.1/8.96) with pure metals near 10.49 and 8.96 is about 10.3 g/cm³; silver and copper mix by it.
    [Fact]
    public void Resolve_CompositionOnly_GivesTheDensity()
    {
        Composition.TryParse("Ag 900 Cu 100", out var composition, out _).ShouldBeTrue();
        var own = new ShopAlloy { Alloy = new Alloy { Name = "Coin", Composition = composition } };

        var plan = NightPlanner.Plan(Wrenmoor.Night(Wrenmoor.Shop with { Alloys = [own] }, Ring("coin")));

        plan.Pieces[0].MetalEach!.Value.Grams.ShouldBe(20.6, 0.1);
        plan.Ids().ShouldNotContain("alloy-density-from-composition");
    }

    [Fact]
    public void Resolve_ZincInTheComposition_IsChecked()
    {
        Composition.TryParse("Cu 850 Zn 150", out var composition, out _).ShouldBeTrue();
        var own = new ShopAlloy { Alloy = new Alloy { Name = "Bell brass", Composition = composition } };

        var plan = NightPlanner.Plan(Wrenmoor.Night(Wrenmoor.Shop with { Alloys = [own] }, Ring("Bell brass")));

        plan.The("alloy-density-from-composition").Text().ShouldBe(
            "The density of Bell brass, 8.63 g/cm³, is worked out from its composition. With zinc in it, measured alloys are up to 3 % denser "
            + "than that, and take as much more metal. Type its measured density on the Alloys sheet.");
        plan.The("alloy-fumes").Text().ShouldBe(
            "Bell brass has zinc in its composition. It boils off as a white fume that makes people ill, and each melt has less of it. "
            + "Draw the fume off, melt no hotter than the alloy's data sheet says, and use fresh metal for at least half of each melt.");
    }

    [Fact]
    public void Resolve_ElementNobodyCompared_IsSaid()
    {
        var plan = NightPlanner.Plan(Wrenmoor.Night(Own("House white", "Au 750 Ag 150 Pd 100"), Ring("House white")));

        plan.The("alloy-density-from-composition").Why.ShouldBe(
            "With palladium in it, nobody has compared that with measured alloys, and the metal follows from it.");
        plan.Ids().ShouldNotContain("alloy-fumes");
    }

    // Source of the rule: an authority's fineness requirements, 584 ‰ is 375 where nothing stands between 375 and 585.
    [Fact]
    public void Resolve_FourteenCaratsOf584_MayBeStampedInAmericaOnly()
    {
        var plan = NightPlanner.Plan(Wrenmoor.Night(Own("House 14k", "Au 584 Ag 104 Cu 312"), Ring("House 14k")));

        plan.The("alloy-mark-in-america-only").Text().ShouldBe(
            "House 14k has 584 parts of gold in a thousand, which is under 585. In the United States it may be stamped 14K; where thousandths are stamped, 375.");
    }

    // By hand: 100 parts hold 10 of copper, which are 7.5 % of 133⅓ parts: 33⅓ of fine silver, rounded up so that the mark is reached.
    [Fact]
    public void Resolve_SterlingOf900_IsBelowItsMark()
    {
        var plan = NightPlanner.Plan(Wrenmoor.Night(Own("House sterling", "Ag 900 Cu 100"), Ring("House sterling")));

        plan.The("alloy-below-its-mark").Text().ShouldBe(
            "House sterling is named for 925 parts of silver in a thousand; its composition has 900. A mark is a least value: pieces of it may not bear that one. "
            + "Correct the composition on the Alloys sheet, or give the alloy another name; 33.4 parts by weight of fine silver to each 100 of it make good what is missing.");
    }

    // By hand: 100 parts hold 10 of copper, which may be a hundredth of the whole: 900 parts of fine silver.
    [Fact]
    public void Resolve_FarBelowAFineMark_SaysNothingOfFineMetal()
    {
        var plan = NightPlanner.Plan(Wrenmoor.Night(Own("House silver 990", "Ag 900 Cu 100"), Ring("House silver 990")));

        plan.The("alloy-below-its-mark").Remedy.ShouldBe("Correct the composition on the Alloys sheet, or give the alloy another name.");
    }

    [Theory]
    [InlineData("House sterling", "Ag 925 Cu 75.4")]
    [InlineData("House 18k", "Au 752 Ag 124 Cu 124")]
    [InlineData("House bronze", "Cu 900 Sn 100")]
    public void Resolve_NameThatIsKept_HasNoFindingAboutMarks(string name, string composition)
    {
        var plan = NightPlanner.Plan(Wrenmoor.Night(Own(name, composition), Ring(name)));

        plan.Ids().ShouldNotContain("alloy-below-its-mark");
        plan.Ids().ShouldNotContain("alloy-mark-in-america-only");
    }

    [Theory]
    [InlineData("Silver scrap")]
    [InlineData("Schrott Silber")]
    [InlineData("rottame d'argento")]
    public void Resolve_ScrapOfUnknownComposition_IsChecked(string name)
    {
        var own = new ShopAlloy { Alloy = new Alloy { Name = name, Density = Density.FromGramsPerCubicCentimeter(10.2) } };

        var plan = NightPlanner.Plan(Wrenmoor.Night(Wrenmoor.Shop with { Alloys = [own] }, Ring(name)));

        plan.The("alloy-is-scrap").Text().ShouldBe(
            $"{name} is scrap, and nobody has said what is in it. Lead, cadmium or solder in it poison the air and crack the castings; its density and pour "
            + "temperature may be others. Have it assayed and type its composition on the Alloys sheet, or send it to be refined.");
    }

    [Fact]
    public void Resolve_ScrapOfKnownComposition_IsNotChecked() =>
        NightPlanner.Plan(Wrenmoor.Night(Own("Assayed scrap", "Ag 925 Cu 75"), Ring("Assayed scrap"))).Ids().ShouldNotContain("alloy-is-scrap");

    [Fact]
    public void Resolve_BuiltInNumbers_KeepTheirSourceOnlyWhereTheShopHasNone()
    {
        var own = new ShopAlloy { Alloy = new Alloy { Name = "Sterling without deoxidant", Density = Density.FromGramsPerCubicCentimeter(10) } };

        var sources = new AlloyBook(Wrenmoor.Shop with { Alloys = [own] }, new FindingList()).Resolve("sterling without deoxidant", 0).Known!.Alloy.Sources;

        sources.Density.ShouldBeNull();
        sources.MetalTemperature!.Words.ShouldBe("common practice");
    }

    // Zinc lowers the melting range: to pour it at what sterling of silver and copper wants boils it off.
    [Fact]
    public void Resolve_OwnCompositionUnderABuiltInName_AsksForItsTemperatures()
    {
        var other = NightPlanner.Plan(Wrenmoor.Night(Own("sterling without deoxidant", "Ag 925 Cu 55 Zn 20"), Ring("sterling without deoxidant")));
        var rounded = NightPlanner.Plan(Wrenmoor.Night(Own("sterling without deoxidant", "Ag 927 Cu 73"), Ring("sterling without deoxidant")));

        other.Stops().ShouldBe(["metal-temperature-missing", "flask-temperature-missing"], ignoreOrder: true);
        other.Flasks[0].MetalTemperature.ShouldBeNull();
        rounded.Stops().ShouldBeEmpty();
        rounded.Flasks[0].MetalTemperature!.Value.DegreesCelsius.ShouldBe(960, 1e-9);
    }

    [Fact]
    public void Resolve_NoDensity_StopsAtTheAlloysRow()
    {
        var own = new ShopAlloy { Alloy = new Alloy { Name = "Mystery" } };

        var plan = NightPlanner.Plan(Wrenmoor.Night(Wrenmoor.Shop with { Alloys = [own] }, Ring("Mystery"), Ring("Mystery")));

        plan.Stops().ShouldBe(["alloy-density-missing"]);
        plan.The("alloy-density-missing").Subjects.ShouldBe(
            [new Subject(SubjectKind.Alloy, "Mystery", ShopField.Density), Subject.Piece(0, PieceField.Alloy), Subject.Piece(1, PieceField.Alloy)]);
        plan.Flasks.ShouldBeEmpty();
    }

    [Fact]
    public void Resolve_LeadInTheComposition_IsRefused()
    {
        Composition.TryParse("Cu 850 Sn 50 Pb 100", out var composition, out _).ShouldBeTrue();
        var own = new ShopAlloy { Alloy = new Alloy { Name = "Old bronze", Composition = composition, Density = Density.FromGramsPerCubicCentimeter(8.9) } };

        var plan = NightPlanner.Plan(Wrenmoor.Night(Wrenmoor.Shop with { Alloys = [own] }, Ring("Old bronze")));

        plan.Stops().ShouldBe(["alloy-refused"]);
        plan.The("alloy-refused").Text().ShouldBe(
            "Old bronze has lead in its composition. Its fume is poisonous; no piece of it was put into a flask. Use another alloy.");
        plan.Pieces[0].MetalEach!.Value.Grams.ShouldBe(17.8, 1e-9);
        plan.Flasks.ShouldBeEmpty();
    }

    [Fact]
    public void Resolve_LeadInACompositionThatCannotBeRead_IsRefused()
    {
        Elements.TryGet("Pb", out var lead).ShouldBeTrue();
        var own = new ShopAlloy { Alloy = new Alloy { Name = "Old bronze", Density = Density.FromGramsPerCubicCentimeter(8.9) }, Poisons = [lead] };

        var plan = NightPlanner.Plan(Wrenmoor.Night(Wrenmoor.Shop with { Alloys = [own] }, Ring("Old bronze")));

        plan.The("alloy-refused").Seen.ShouldBe("Old bronze has lead in its composition.");
        plan.Flasks.ShouldBeEmpty();
    }

    [Fact]
    public void Resolve_RedGoldWithStones_IsNotPlanned()
    {
        var red = BuiltInAlloys.All.First(a => a.Name.Contains("red", StringComparison.Ordinal) && a.Name.Contains("18k", StringComparison.Ordinal)).Name;

        var plan = NightPlanner.Plan(Wrenmoor.Night(Ring(red) with { StonesIn = true }));

        plan.Stops().ShouldBe(["stones-in-red-gold"]);
        plan.The("stones-in-red-gold").Subjects.ShouldBe([Subject.Piece(0, PieceField.StonesIn)]);
        plan.Flasks.ShouldBeEmpty();
    }

    [Fact]
    public void Resolve_PlatinumInGypsum_IsNotPlanned()
    {
        var platinum = BuiltInAlloys.All.First(a => a.NeedsHighTemperatureInvestment).Name;

        var plan = NightPlanner.Plan(Wrenmoor.Night(Ring(platinum), Ring("Bench silver")));

        plan.Stops().ShouldBe(["needs-high-temperature-investment"]);
        plan.Pieces.Select(p => p.Status).ShouldBe([PieceStatus.NotPlanned, PieceStatus.Planned]);
    }

    // The shop's own name for it is none of ours: its parts tell, and where it has none its name.
    [Fact]
    public void Resolve_PlatinumOfTheShopsOwn_IsNotPlannedInGypsum()
    {
        var byParts = NightPlanner.Plan(Wrenmoor.Night(Own("House 950", "Pt 950 Ru 50"), Ring("House 950")));
        var named = new ShopAlloy { Alloy = new Alloy { Name = "Platine de Tarn", Density = Density.FromGramsPerCubicCentimeter(20.7) } };
        var byName = NightPlanner.Plan(Wrenmoor.Night(Wrenmoor.Shop with { Alloys = [named] }, Ring("Platine de Tarn")));

        byParts.The("needs-high-temperature-investment").Seen.ShouldBe("House 950 cannot be cast in gypsum-bonded investment.");
        byParts.Flasks.ShouldBeEmpty();
        byName.The("needs-high-temperature-investment").Seen.ShouldBe("Platine de Tarn cannot be cast in gypsum-bonded investment.");
        byName.Flasks.ShouldBeEmpty();
    }

    [Theory]
    [InlineData("House palladium", true)]
    [InlineData("Pt 900 Tarn", true)]
    [InlineData("inox 316", true)]
    [InlineData("18k palladium white", false)]
    [InlineData("palladium white gold, house", false)]
    [InlineData("platinum sterling", false)]
    [InlineData("House bronze", false)]
    public void NeedsHighTemperatureInvestment_NameWithoutParts_Tells(string name, bool expected) =>
        new KnownAlloy(name, new Alloy { Name = name }, null, 0).NeedsHighTemperatureInvestment.ShouldBe(expected);

    [Theory]
    [InlineData("Au 750 Pd 250", false)]
    [InlineData("Pd 500 Ag 500", true)]
    public void NeedsHighTemperatureInvestment_Parts_TellMoreThanTheName(string composition, bool expected)
    {
        Composition.TryParse(composition, out var parts, out _).ShouldBeTrue();

        new KnownAlloy("House palladium", new Alloy { Name = "House palladium", Composition = parts }, null, 0).NeedsHighTemperatureInvestment.ShouldBe(expected);
    }

    [Fact]
    public void Resolve_PlatinumInAPowderOfAKindThatNobodyCanRead_IsNotPlanned()
    {
        var platinum = BuiltInAlloys.All.First(a => a.NeedsHighTemperatureInvestment).Name;
        var shop = Wrenmoor.Shop with { Investments = [Wrenmoor.Shop.Investments[0] with { Kind = null, Unreadable = new HashSet<string> { ShopField.Kind } }] };

        NightPlanner.Plan(Wrenmoor.Night(shop, Ring(platinum))).Stops().ShouldContain("needs-high-temperature-investment");
    }

    private static Shop Own(string name, string composition)
    {
        Composition.TryParse(composition, out var parts, out var why).ShouldBeTrue($"{why}");
        return Wrenmoor.Shop with { Alloys = [new ShopAlloy { Alloy = new Alloy { Name = name, Composition = parts } }] };
    }

    private static Piece Ring(string alloy) => Wrenmoor.Ring() with { Alloy = alloy };

    private static Shop Answered(string name, string answer) => Wrenmoor.Shop with
    {
        Alloys = [],
        Settings = Wrenmoor.Answered with { AlloyMeanings = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase) { [name] = answer } },
    };
}
