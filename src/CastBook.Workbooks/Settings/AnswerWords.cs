using CastBook.Casting.Names;

namespace CastBook.Workbooks.Settings;

/// <summary>
/// What the words mean with which a shop answers where there is a choice, in English, German, French, Spanish, Italian and
/// Portuguese. To teach another one, add it to the line that means the same.
/// </summary>
internal static class AnswerWords
{
    private static readonly TradeWords Table = new(
        """
        = the, der, die, das, le, la, les, il, lo, o, a, and, und, et, y, e, too, auch, aussi, también, anche, também, with, mit, avec, con, com, by, in, im, en, à, sous, al, bajo, sob, flask, flasks, küvette, küvetten, cylindre, cilindro, cilindros, cilindri
        vacuum = vakuum, vide, vacío, vuoto, sottovuoto, vácuo
        perforated = gelocht, gelochte, perforiert, perforierte, perforé, perforée, perforado, perforada, perfurado, perfurada, perforato, perforata, forato, forata
        solid = geschlossen, geschlossene, massiv, vollwandig, plein, pleine, cerrado, sólido, chiuso, pieno, fechado, maciço
        spin = spinning, centrifugal, centrifuge, schleuder, schleudern, schleuderguss, zentrifuge, zentrifugal, centrifugeuse, centrifugation, fronde, centrífuga, centrifugado, centrifugação
        gravity = gravity pour, gravity poured, gravity casting, poured, schwerkraft, schwerkraftguss, standguss, freier guss, gravité, par gravité, coulée par gravité, gravedad, por gravedad, gravità, per gravità, gravidade, por gravidade
        wax = waxes, wachs, cire, cera
        resin = resins, harz, kunstharz, résine, resina
        castable resin = castable resin, gießharz
        stones = stone, stein, steine, steinen, pierre, pierres, piedra, piedras, pietra, pietre, pedra, pedras
        gypsum = gypsum bonded, gypsumbonded, plaster, gips, gipsgebunden, plâtre, yeso, gesso
        phosphate = phosphate bonded, phosphatebonded, phosphat, phosphatgebunden, fosfato
        high temperature = hightemperature, hochtemperatur, haute température, alta temperatura
        platinum = platin, platine, platino, platina
        quartz = quarz, cuarzo, quarzo, quartzo
        cristobalite = cristobalit, cristobalita
        both = beide, beides, les deux, ambos, ambas, entrambi, entrambe
        pattern = patterns, modell, modelle, wachsmodell, modèle, modèles, modelo, modelos, modello, modelli
        metal = metall, métal, metallo, cast metal, guss
        finished = fertig, fertiges, fertigguss, fini, finie, acabado, terminado, finito
        piece = pieces, stück, teil, pièce, pieza, pezzo, peça
        alone = allein, alleine, einzeln, nur, only, seul, seule, sola, solo, só, sozinha, sozinho
        without = no, ohne, sans, sin, senza, sem
        gates = gate, sprue, sprues, anguss, angüsse, angüssen, gusskanal, gusskanäle, gusskanälen, attaque, attaques, bebedero, bebederos, colata, canale, canali, canal, canales, canais, gito, gitos
        or = oder, ou
        ring = rings, band, bands, signet, signets, solitaire, solitaires, shank, shanks, hoop, hoops, ringe, ringen, trauring, trauringe, ehering, eheringe, siegelring, siegelringe, wappenring, wappenringe, verlobungsring, verlobungsringe, vorsteckring, vorsteckringe, fingerring, fingerringe, damenring, damenringe, herrenring, herrenringe, bandring, bandringe, solitärring, solitärringe, memoirering, memoireringe, partnerring, partnerringe, freundschaftsring, freundschaftsringe, spannring, spannringe, reif, reife, reifen, siegel, solitär, bague, bagues, anneau, anneaux, alliance, alliances, chevalière, chevalières, jonc, joncs, anillo, anillos, sortija, sortijas, alianza, alianzas, sello, sellos, solitario, solitarios, cintillo, cintillos, aro, aros, anello, anelli, fede, fedi, fedina, fedine, vera, veretta, verette, chevalier, fascetta, fascette, solitari, anel, anéis, aliança, alianças, sinete, sinetes, solitário, solitários, argola, argolas
        other = others, box, flat, plate, disc, disk, bar, pendant, pendants, charm, charms, brooch, brooches, pin, pins, stud, studs, cufflink, cufflinks, cross, figure, andere, anderes, sonstige, sonstiges, flach, platte, scheibe, anhänger, brosche, stecker, kreuz, figur, autre, autres, plat, plaque, disque, pendentif, pendentifs, breloque, breloques, broche, broches, croix, figurine, otro, otra, otros, otras, plano, plana, placa, disco, colgante, colgantes, dije, dijes, cruz, figura, altro, altra, altri, altre, piatto, piatta, piastra, ciondolo, ciondoli, pendente, pendenti, spilla, spille, croce, outro, outra, outros, outras, pingente, pingentes, berloque, berloques
        round = rund, kreisrund, rond, ronde, redondo, redonda, tondo, tonda, rotondo, circular, circulaire, circolare
        square = rectangular, oblong, eckig, viereckig, rechteckig, quadratisch, carré, carrée, rectangulaire, cuadrado, cuadrada, quadrato, quadrata, rettangolare, quadrado, quadrada, retangular
        """);

    /// <summary>
    /// Whether the shape of a piece is a ring; missing where nobody can tell. Of German words their last part may say so, as in
    /// <c>Siegelring</c>; a word that may also mean something else, such as <c>band</c> or <c>aro</c>, means a ring, which takes more room.
    /// </summary>
    /// <param name="shape">The shape as typed.</param>
    public static bool? IsRing(string shape)
    {
        var words = Table.Of(shape);
        return words.Any(word => word.Contains("RING", StringComparison.Ordinal)) ? true
            : words.Count == 0 || words.Any(word => word is "OTHER" or "SQUARE") ? false
            : null;
    }

    /// <summary>Whether a piece is a ring by its name, and nothing else.</summary>
    /// <param name="name">The name, such as <c>Band, hammered 7 mm</c>.</param>
    public static bool NamesRing(string name) => Table.Of(name) is var words && words.Contains("RING") && !words.Contains("OTHER");

    /// <summary>What the words of an answer mean, in the order of the alphabet, so that their own order does not matter.</summary>
    /// <param name="text">The answer as typed.</param>
    public static string Meant(string text)
    {
        var words = Table.Of(text).ToArray();
        Array.Sort(words, StringComparer.Ordinal);
        return string.Join(' ', words);
    }
}
