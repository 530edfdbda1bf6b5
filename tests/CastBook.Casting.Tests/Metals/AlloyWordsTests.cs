using CastBook.Casting.Metals;

namespace CastBook.Casting.Tests.Metals;

public class AlloyWordsTests
{
    [Theory]
    [InlineData("18k yellow", "18K YELLOW")]
    [InlineData("18 ct. Yellow Gold", "18K YELLOW")]
    [InlineData("18-Karat yellow", "18K YELLOW")]
    [InlineData("18KY", "18K YELLOW")]
    [InlineData("10K yel", "10K YELLOW")]
    [InlineData("14Kyel.", "14K YELLOW")]
    [InlineData("14k wht", "14K WHITE")]
    [InlineData("14kt WG", "14K WHITE")]
    [InlineData("14k Y", "14K YELLOW")]
    [InlineData("18 carat", "18K")]
    [InlineData("fine gold", "FINE GOLD")]
    [InlineData("Gun-Metal", "GUNMETAL")]
    [InlineData("CuSn10Zn2", "CUSN 10 ZINC 2")]
    [InlineData("Cu Sn 10 Zn 2", "CUSN 10 ZINC 2")]
    [InlineData("14k (585)", "14K")]
    [InlineData("Ag 92.5 %", "925")]
    [InlineData("", "")]
    [InlineData(" . ", "")]
    public void Of_Name_LeavesWhatNamesTheAlloy(string name, string expected) =>
        string.Join(' ', AlloyWords.Of(name)).ShouldBe(expected);

    // Each row is one alloy in the words of several shops; sources: common practice of the trade in each language.
    [Theory]
    [InlineData("925", "Ag 925", "Ag925", "AG-925", ".925", "0,925", "925/000", "925/1000", "925 ‰", "Ster.", "sterl.", "STG", "sterling", "Sterling 925",
        "sterling silver", "Sterlingsilber", "Silber 925", "argent 925", "plata 925", "plata de ley", "Plata de ley 925", "argento 925", "prata 925", "prata de lei")]
    [InlineData("deoxidised sterling", "deox sterling silver", "925 deoxidized", "Ag 925 mit Desoxidationsmittel", "argent 925 désoxydé", "sterling with deoxidant")]
    [InlineData("sterling without deoxidant", "plain sterling", "standard sterling silver", "Silber 925 ohne Desoxidationsmittel")]
    [InlineData("14k", "14 kt", "14ct", "14 carats", "14 quilates", "14 carati", "585", "585/000", "Au585", "Au 585", "Gold 585", ".585", "58,5%", "oro 585", "583")]
    [InlineData("18k yellow", "750 Gelbgold", "Gelbgold 750", "GELBGOLD 18 Karat", "or jaune 750", "oro giallo 18 kt", "oro amarillo 18k", "ouro amarelo 750", "18KYG", "750 GG")]
    [InlineData("18k white", "Weißgold 750", "Weissgold 18 kt", "or gris 750", "or blanc 18 carats", "oro bianco 18 kt", "oro blanco 18k", "ouro branco 18k")]
    [InlineData("14k red", "Rotgold 585", "or rouge 585", "oro rosso 14 kt", "oro rojo 14k", "ouro vermelho 14k")]
    [InlineData("rose gold", "pink gold", "Roségold", "Rose\u0301gold", "Rosegold", "or rose", "oro rosa", "ouro rosé")]
    [InlineData("ouro 18k", "oro 18 kt", "or 18 carats", "Gold 750", "18k", "750")]
    [InlineData("fine silver", "fine silver 999", "Feinsilber", "Ag 999", "Ag 999,9", "argent fin", "plata fina", "argento puro", "prata fina")]
    [InlineData("fine gold", "Feingold", "24k", "24 ct gold", "Au 999.9", "or fin", "oro fino", "ouro puro")]
    [InlineData("brass", "Messing", "laiton", "latón", "laton", "ottone", "latão")]
    [InlineData("bronze", "Bronze", "bronce", "bronzo", "BRONZE")]
    [InlineData("tin bronze", "Zinnbronze", "bronze à l'étain", "bronce de estaño", "bronzo allo stagno", "bronze de estanho")]
    [InlineData("platinum 950", "Pt950", "Pt 950/1000", "Platin 950", "platine 950", "platino 950", "platina 950")]
    [InlineData("18k green", "Grüngold 750", "or vert 18 carats", "oro verde 750", "ouro verde 18k", "18 kt green gold")]
    [InlineData("palladium 950 ruthenium", "PdRu 950", "Pd950/Ru", "paladio rutenio 950")]
    [InlineData("silver scrap", "Schrott Silber", "chatarra de plata", "rottame d'argento", "sucata de prata")]
    [InlineData("palladium 950", "Pd950", "Pd 950", "paladio 950", "palladio 950", "paládio 950")]
    public void Key_OneAlloyInManyWords_IsTheSame(string name, params string[] others)
    {
        foreach (var other in others)
        {
            AlloyWords.Key(other).ShouldBe(AlloyWords.Key(name), other);
        }
    }

    [Theory]
    [InlineData("18k yellow", "14k yellow")]
    [InlineData("18k", "18 silver")]
    [InlineData("silver 585", "585")]
    [InlineData("gold 925", "925")]
    [InlineData("584", "585")]
    [InlineData("14k 750", "14k")]
    [InlineData("white gold", "white bronze")]
    [InlineData("nickel silver", "silver")]
    [InlineData("CuSn10", "CuSn12")]
    [InlineData("Rotguss", "gunmetal")]
    public void Key_AlloysThatDiffer_Differ(string one, string other) => AlloyWords.Key(one).ShouldNotBe(AlloyWords.Key(other));

    [Fact]
    public void Key_WordsInAnyOrder_IsTheSame() => AlloyWords.Key("yellow gold 18k").ShouldBe(AlloyWords.Key("18ct yellow"));
}
