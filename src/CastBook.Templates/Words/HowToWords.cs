namespace CastBook.Templates.Words;

/// <summary>The first sheet of a new book: a title and ten lines; where a line is empty stands the one about examples.</summary>
internal static class HowToWords
{
    /// <summary>A book for a casting night.</summary>
    public static string[] Night =>
    [
        "How to use this book",
        "1. Pieces: a line for each piece to cast. Only Piece, Qty, a weight or a volume, and Alloy are needed; every other column makes the plan better.",
        "2. Weigh a pattern as it goes on the tree: cured or waxed, supports off, without its sprue.",
        "3. Alloys: type density and temperatures from your supplier's data sheet, and your stock.",
        "4. Materials: type the density of your resin and wax, or weigh a solid test cube and type its weight and edge.",
        "5. Flasks and Crucibles: measure inside, and say how many you own. What nobody owns is not used.",
        "6. Investments, Kilns and Schedules: what your own data sheets say. The resin maker's burnout schedule belongs under Schedules.",
        "7. Shop: answers that hold for every line. Leave empty what you do not know; you will be asked. A unit may be changed wherever one stands.",
        "",
        "9. Save and close the book and give it to CastBook. It adds its own columns and sheets, and leaves yours as they are. Read its sheet Checks first.",
        "10. The makers' data sheets and local rules come first.",
    ];

    /// <summary>A list of pieces alone.</summary>
    public static string[] List =>
    [
        "How to use this book",
        "1. Pieces: a line for each piece to cast. Only Piece, Qty, a weight or a volume, and Alloy are needed.",
        "2. Weigh one pattern as it goes on the tree: cured or waxed, supports off, without its sprue. Or type its volume, as the drawing program gives it.",
        "3. Material: wax, resin, or the name you know it by. Alloy: sterling without deoxidant, 14k yellow 1N, tin bronze C90300, or your supplier's name for it; what can mean several is asked.",
        "4. Length, width and thickness decide how many pieces hang on a tree.",
        "5. Columns may be moved and renamed, and columns of your own may stand between them. A unit may be changed wherever one stands in a heading.",
        "6. Save and close the book and give it to CastBook. It works out the metal of each piece, and asks what it does not know on sheets that it adds.",
        "7. Or keep your flasks, alloys and materials in one shop file for all lists of a folder: castbook new shop makes one.",
        "",
        "9. Read the sheet Checks first: stops, then checks, then notes. Each says what to type and where.",
        "10. The makers' data sheets and local rules come first.",
    ];

    /// <summary>A shop file.</summary>
    public static string[] Shop =>
    [
        "How to use this shop file",
        "1. It holds what is the same every night, for all books of a folder. A sheet that a book has itself wins over the sheet here.",
        "2. Books find it by a file castbook.json beside them that says { \"shop\": \"shop.xlsx\" }, with this file's name.",
        "3. Alloys: type density and temperatures from your supplier's data sheet, and your stock.",
        "4. Materials: type the density of your resin and wax, or weigh a solid test cube and type its weight and edge.",
        "5. Flasks and Crucibles: measure inside, and say how many you own. What nobody owns is not used.",
        "6. Investments, Kilns and Schedules: what your own data sheets say. The resin maker's burnout schedule belongs under Schedules.",
        "7. Shop: answers that hold for every line. Leave empty what you do not know. A unit may be changed wherever one stands.",
        "",
        "9. Fill a book of the folder, not this one: CastBook only reads it here. castbook new list makes a list of pieces.",
        "10. The makers' data sheets and local rules come first.",
    ];

    /// <summary>A log of results.</summary>
    public static string[] Results =>
    [
        "How to use this log",
        "1. Results: after each pour, a line for each piece or tree. Only Piece, the day, Alloy, Good and Fault are needed.",
        "2. Write down what was really done: the wash, the cure, the temperatures on the displays. What was planned stands on the Night plan.",
        "3. Poured and Good: how many went into the mould, and how many came out well.",
        "4. Fault: the worst that was wrong, as it looks. Why it went wrong shows only later, over many lines.",
        "5. Remarks: where on the piece or the tree, and what you would do otherwise.",
        "6. Write down what came out well, too: only then can the lines be compared.",
        "7. Words: the names that the drop-down lists offer. Add your own alloys, materials and faults there.",
        "",
        "9. The list has filter buttons: choose a fault, and look at what its lines have in common.",
        "10. This book is yours to read. There is nothing in it to fill, so CastBook leaves it alone.",
    ];

    /// <summary>A shop file that only asks what a list leaves open.</summary>
    public static string[] Asking =>
    [
        "What only you know",
        "1. Answer on each sheet what you can. What stays empty is asked where it matters when a book is filled.",
        "2. Alloys and Materials: the names are those of your list. Type what the data sheets say; of a pattern material a solid test cube tells the density.",
        "3. Flasks, Crucibles and Kilns: a line for each. Measure inside.",
        "4. Shop: answers that hold for every line.",
        "5. Fill a book of the folder, not this one: CastBook only reads it here.",
        "6. The makers' data sheets and local rules come first.",
    ];

    public static string WithExamples =>
        "8. Lines that begin with Example: are those of an invented shop, nobody's data sheet. \"castbook clear-examples\" and the book's name takes them out.";

    public static string WithoutExamples => "8. Point at a cell to read what belongs into it; where a list opens, choose from it.";
}
