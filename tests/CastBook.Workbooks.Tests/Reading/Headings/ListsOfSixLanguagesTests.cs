using CastBook.Planning.Findings;
using CastBook.Planning.Shops;

namespace CastBook.Workbooks.Tests.Reading.Headings;

/// <summary>The same small list as shops in six countries would head it.</summary>
public sealed class ListsOfSixLanguagesTests
{
    public static TheoryData<string[]> Headings => new(
        ["Item", "Qty.", "Wax weight [g]", "Alloy", "Length (mm)", "Width (mm)", "Thickness (mm)", "Sprues", "Stones in", "Leave out"],
        ["Bezeichnung", "Stk.", "Wachsgewicht in g", "Legierung", "Länge (mm)", "Breite (mm)", "Dicke (mm)", "Anschnitte", "Mit Steinen", "Auslassen"],
        ["Désignation", "Qté", "Poids cire (g)", "Alliage", "Longueur (mm)", "Largeur (mm)", "Épaisseur (mm)", "Nb attaques", "Avec pierres", "Ne pas couler"],
        ["Pieza", "Cant.", "Peso cera (g)", "Aleación", "Largo (mm)", "Ancho (mm)", "Grosor (mm)", "Bebederos", "Con piedras", "No fundir"],
        ["Articolo", "Q.tà", "Peso cera, g", "Lega", "Lunghezza (mm)", "Larghezza (mm)", "Spessore (mm)", "N. attacchi", "Pietre in cera", "Non fondere"],
        ["Peça", "Qtd.", "Peso da cera (g)", "Liga", "Comprimento (mm)", "Largura (mm)", "Espessura (mm)", "Gitos", "Com pedras", "Não fundir"]);

    [Theory]
    [MemberData(nameof(Headings))]
    public void Read_ListOfOneLanguage_ReadsEveryColumn(string[] headings)
    {
        using var book = BookBuilder.Pieces([.. headings], ["Pin", 3, 1.5, "Bronze", 30, 8, 2, 1, "x", null]);

        var reading = TestBooks.Read(book);

        var pin = reading.Night.Pieces.ShouldHaveSingleItem();
        (pin.Name, pin.Quantity, pin.Weight!.Value.Grams, pin.Alloy, pin.Material).ShouldBe(("Pin", 3, 1.5, "Bronze", "wax"));
        (pin.Box!.Value.Length.Millimeters, pin.Box!.Value.Width.Millimeters, pin.Box!.Value.Thickness!.Value.Millimeters).ShouldBe((30, 8, 2));
        reading.Night.WeightsAreOf.ShouldBe(WeightMeaning.Pattern);
        reading.Lists[0].Columns.ShouldBe(
            new Dictionary<string, int>
            {
                [PieceField.Piece] = 1,
                [PieceField.Quantity] = 2,
                [PieceField.PatternMass] = 3,
                [PieceField.Alloy] = 4,
                [PieceField.Length] = 5,
                [PieceField.Width] = 6,
                [PieceField.Thickness] = 7,
                [PieceField.Gates] = 8,
                [PieceField.StonesIn] = 9,
                [PieceField.LeaveOut] = 10,
            },
            ignoreOrder: true);
    }

    public static TheoryData<string[]> HeadingsOfSculptors => new(
        ["Sculpture", "No. of casts", "Wax weight (kg)", "Alloy", "Height (cm)", "Wall thickness (mm)"],
        ["Skulptur", "Anzahl Abgüsse", "Wachsgewicht (kg)", "Legierung", "Höhe (cm)", "Wandstärke (mm)"],
        ["Sculpture", "Exemplaires", "Poids cire (kg)", "Alliage", "Hauteur (cm)", "Épaisseur de paroi (mm)"],
        ["Escultura", "N.º de ejemplares", "Peso cera (kg)", "Aleación", "Altura (cm)", "Espesor de pared (mm)"],
        ["Opera", "N. copie", "Peso cera (kg)", "Metallo", "Altezza (cm)", "Spessore della parete (mm)"],
        ["Obra", "N.º de exemplares", "Peso da cera (kg)", "Liga", "Altura (cm)", "Espessura da parede (mm)"]);

    // A hollow bust is not as thick as its wall, or it would be hung as a plate.
    [Theory]
    [MemberData(nameof(HeadingsOfSculptors))]
    public void Read_ListOfASculptor_TakesTheWallForASectionAndNoSize(string[] headings)
    {
        using var book = BookBuilder.Pieces([.. headings], ["Heron", 2, 1.85, "Bronze", 38, 5]);

        var heron = TestBooks.Read(book).Night.Pieces.ShouldHaveSingleItem();

        (heron.Name, heron.Quantity, heron.Weight!.Value.Grams, heron.Alloy).ShouldBe(("Heron", 2, 1850, "Bronze"));
        heron.FinestSection!.Value.Millimeters.ShouldBe(5);
        heron.Box?.Thickness.ShouldBeNull();
    }

    [Fact]
    public void Read_GrInALanguageOfGrams_IsReadAndSaid()
    {
        using var book = BookBuilder.Pieces(["Désignation", "Qté", "Poids cire (gr)", "Alliage"], ["Broche", 3, 1.5, "Bronze"]);

        var reading = TestBooks.Read(book);

        reading.Night.Pieces[0].Weight!.Value.Grams.ShouldBe(1.5);
        var note = reading.Findings.Single(f => f.Id == "unit-gr-read-as-grams");
        note.Seen.ShouldBe("\"Poids cire (gr)\" was read in grams.");
        note.Remedy.ShouldBe("If gr means grains there, write grain in the heading.");
    }

    // French "nombre" counts, Spanish "nombre" names.
    [Fact]
    public void Read_WordOfTwoLanguages_IsThatOfTheOtherHeadings()
    {
        using var french = BookBuilder.Pieces(["Désignation", "Nombre", "Poids (g)", "Alliage"], ["Broche", 3, 1.5, "Bronze"]);
        using var spanish = BookBuilder.Pieces(["Nombre", "Cantidad", "Peso (g)", "Aleación"], ["Broche", 3, 1.5, "Bronze"]);

        TestBooks.Read(french).Lists[0].Columns[PieceField.Quantity].ShouldBe(2);
        TestBooks.Read(spanish).Lists[0].Columns[PieceField.Piece].ShouldBe(1);
    }
}
