namespace CastBook.Casting.Metals;

/// <summary>
/// The words, marks and finenesses of the trade in English, German, French, Spanish, Italian and Portuguese. To teach another
/// one, add it to the line that means the same.
/// </summary>
internal static class AlloyWordTable
{
    /// <summary>How a number of carats is written behind the number, with the colour where one is glued to it.</summary>
    public const string Carats = """
        k = kt, kts, ct, cts, kar, karat, karats, karatig, karätig, carat, carats, carati, caratos, quilate, quilates
        k yellow = ky, kyg, kty, kyel
        k white = kw, kwg, ktw
        k rose = kr, krg, ktr, kp, kpg
        k gold = kgold
        """;

    /// <summary>
    /// What the words mean. The marks are the usual finenesses of the carat numbers; 999 and more is fine. Words for a leaded
    /// alloy, such as the German one for red casting brass, are left out on purpose: they are to be asked.
    /// </summary>
    public const string Words = """
        = alloy, legierung, alliage, aleación, lega, liga, casting, cast, grain, solid, massiv, massif, massive, macizo, massiccio, maciço
        = de, di, da, do, d, du, del, della, al, all, alla, allo, à l, the, of, ley, lei, punze, hallmark, hallmarked, stamped, mark
        silver = ag, silber, argent, plata, argento, prata, slv, arg
        gold = au, or, oro, ouro
        platinum = pt, plat, platin, platine, platino, platina
        palladium = pd, pall, paladio, palladio, paládio
        ruthenium = ru, rutenio, rutênio, ruténio
        iridium = ir, iridio, irídio
        cobalt = co, kobalt, cobalto
        nickel = ni, níquel, nichel, nichelio
        gallium = ga, galio, gálio, gallio
        germanium = ge, germanio, germânio
        platinum ruthenium = ptru
        platinum iridium = ptir
        platinum cobalt = ptco
        platinum palladium = ptpd
        palladium ruthenium = pdru
        palladium gallium = pdga
        yellow = y, yel, yell, gelb, jaune, amarillo, amarilla, giallo, amarelo, amarela
        white = w, wh, wht, weiß, grau, blanc, gris, blanco, bianco, branco
        rose = pink, rosé, rosa, rosado
        green = grün, vert, verde
        red = rot, rouge, rojo, roja, rosso, vermelho
        yellow gold = gelbgold, yg, gg
        white gold = weißgold, graugold, wg
        rose gold = rosegold, roségold
        red gold = rotgold, rg
        green gold = grüngold
        fine = pure, fein, fin, fino, fina, puro, pura, pur, 999, 9999, 1000
        fine silver = feinsilber
        fine gold = feingold, 24k
        22k = 916, 917
        21k = 875
        18k = 750
        14k = 585, 583
        10k = 417, 416
        9k = 375
        8k = 333
        925 = sterling, sterl, ster, stg, sterlingsilber, sterlingsilver, esterlina
        925 silver = plata de ley, prata de lei
        plain = standard, without deoxidant, no deoxidant, not deoxidised, ohne desoxidationsmittel, sans désoxydant, sin desoxidante, senza disossidante, sem desoxidante
        deoxidised = deox, deoxidized, with deoxidant, mit desoxidationsmittel, desoxidiert, désoxydé, avec désoxydant, desoxidada, desoxidado, con desoxidante, disossidato, con disossidante, com desoxidante
        bronze = bronce, bronzo
        brass = messing, laiton, latón, ottone, latão
        copper = cu, kupfer, cuivre, cobre, rame
        tin = sn, zinn, étain, estaño, stagno, estanho
        tin bronze = zinnbronze
        zinc = zn, zink, zinco
        silicon = si, silizium, silicium, silicio, silício
        silicon bronze = siliziumbronze
        aluminium = aluminum, alu, aluminio, alluminio, alumínio
        aluminium bronze = aluminiumbronze, alubronze
        nickelsilver = nickel silver, German silver, neusilber, alpaca, alpaka, alpacca, maillechort
        gunmetal = gun metal
        stainlesssteel = stainless steel, stainless, edelstahl, inox, acier inoxydable, acier inox, acero inoxidable, acciaio inossidabile, acciaio inox, aço inoxidável, aço inox
        scrap = old metal, mixed metal, unknown metal, unknown, sweeps, filings, lemel, schrott, bruch, altmetall, gekrätz, feilung, déchets, limaille, chatarra, limaduras, rottame, rottami, limatura, sucata, limalha
        CuSn = cu sn
        CuZn = cu zn
        """;
}
