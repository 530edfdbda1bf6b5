namespace CastBook.Workbooks.Tests.Fidelity.RandomBooks;

/// <summary>Parts that random books have beside their sheets.</summary>
internal static class RandomParts
{
    /// <summary>Formats 0 to 4: plain, date, bold, unlocked, text.</summary>
    public const string Styles =
        "<~styleSheet {xmlns}><~numFmts count=\"1\"><~numFmt numFmtId=\"164\" formatCode=\"0.00\\ &quot;g&quot;\"/></~numFmts>"
        + "<~fonts count=\"2\"><~font><~sz val=\"11\"/><~name val=\"Calibri\"/></~font><~font><~b/><~sz val=\"11\"/><~name val=\"Calibri\"/></~font></~fonts>"
        + "<~fills count=\"2\"><~fill><~patternFill patternType=\"none\"/></~fill><~fill><~patternFill patternType=\"gray125\"/></~fill></~fills>"
        + "<~borders count=\"1\"><~border><~left/><~right/><~top/><~bottom/><~diagonal/></~border></~borders>"
        + "<~cellStyleXfs count=\"1\"><~xf numFmtId=\"0\" fontId=\"0\" fillId=\"0\" borderId=\"0\"/></~cellStyleXfs>"
        + "<~cellXfs count=\"5\"><~xf numFmtId=\"0\" fontId=\"0\" fillId=\"0\" borderId=\"0\" xfId=\"0\"/><~xf numFmtId=\"14\" fontId=\"0\" fillId=\"0\" borderId=\"0\" xfId=\"0\" applyNumberFormat=\"1\"/>"
        + "<~xf numFmtId=\"164\" fontId=\"1\" fillId=\"0\" borderId=\"0\" xfId=\"0\" applyFont=\"1\"/><~xf numFmtId=\"0\" fontId=\"0\" fillId=\"0\" borderId=\"0\" xfId=\"0\" applyProtection=\"1\"><~protection locked=\"0\"/></~xf>"
        + "<~xf numFmtId=\"49\" fontId=\"0\" fillId=\"0\" borderId=\"0\" xfId=\"0\" applyNumberFormat=\"1\"/></~cellXfs>"
        + "<~cellStyles count=\"1\"><~cellStyle name=\"Normal\" xfId=\"0\" builtinId=\"0\"/></~cellStyles><~dxfs count=\"1\"><~dxf><~font><~i/></~font></~dxf></~dxfs></~styleSheet>";

    /// <summary>A bar chart of some cells.</summary>
    public static string Chart(string cells) =>
        "<c:chartSpace xmlns:c=\"http://schemas.openxmlformats.org/drawingml/2006/chart\" xmlns:a=\"http://schemas.openxmlformats.org/drawingml/2006/main\"><c:chart><c:plotArea><c:layout/>"
        + "<c:barChart><c:barDir val=\"col\"/><c:grouping val=\"clustered\"/><c:varyColors val=\"0\"/><c:ser><c:idx val=\"0\"/><c:order val=\"0\"/><c:val><c:numRef><c:f>"
        + cells + "</c:f></c:numRef></c:val></c:ser><c:axId val=\"1\"/><c:axId val=\"2\"/></c:barChart><c:catAx><c:axId val=\"1\"/><c:scaling/><c:delete val=\"0\"/><c:axPos val=\"b\"/><c:crossAx val=\"2\"/></c:catAx>"
        + "<c:valAx><c:axId val=\"2\"/><c:scaling/><c:delete val=\"0\"/><c:axPos val=\"l\"/><c:crossAx val=\"1\"/></c:valAx></c:plotArea><c:plotVisOnly val=\"1\"/></c:chart></c:chartSpace>";

    /// <summary>A drawing with a chart and a text box.</summary>
    public const string Drawing =
        "<xdr:wsDr xmlns:xdr=\"http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing\" xmlns:a=\"http://schemas.openxmlformats.org/drawingml/2006/main\" xmlns:r=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships\">"
        + "<xdr:twoCellAnchor><xdr:from><xdr:col>1</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>30</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:from><xdr:to><xdr:col>5</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>40</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:to>"
        + "<xdr:graphicFrame macro=\"\"><xdr:nvGraphicFramePr><xdr:cNvPr id=\"2\" name=\"Chart 1\"/><xdr:cNvGraphicFramePr/></xdr:nvGraphicFramePr><xdr:xfrm><a:off x=\"0\" y=\"0\"/><a:ext cx=\"0\" cy=\"0\"/></xdr:xfrm>"
        + "<a:graphic><a:graphicData uri=\"http://schemas.openxmlformats.org/drawingml/2006/chart\"><c:chart xmlns:c=\"http://schemas.openxmlformats.org/drawingml/2006/chart\" r:id=\"rId1\"/></a:graphicData></a:graphic></xdr:graphicFrame><xdr:clientData/></xdr:twoCellAnchor></xdr:wsDr>";

    /// <summary>Something of a newer program, wrapped so that older ones pass it over.</summary>
    public const string Alternate =
        "<mc:AlternateContent xmlns:mc=\"http://schemas.openxmlformats.org/markup-compatibility/2006\"><mc:Choice Requires=\"x14\" xmlns:x14=\"http://schemas.microsoft.com/office/spreadsheetml/2009/9/main\"/><mc:Fallback/></mc:AlternateContent>";

    /// <summary>A thread of comments on a cell.</summary>
    public static string Thread(string cell) =>
        "<ThreadedComments xmlns=\"http://schemas.microsoft.com/office/spreadsheetml/2018/threadedcomments\"><threadedComment ref=\"" + cell
        + "\" dT=\"2026-03-01T08:00:00.00\" personId=\"{7C0FFEE0-0001-4000-8000-000000000002}\" id=\"{7C0FFEE0-0001-4000-8000-000000000001}\"><text>With supports?</text></threadedComment></ThreadedComments>";

    /// <summary>The drawing behind a note, with a form button that is no well-formed XML.</summary>
    public static string NoteDrawing(int row, int column, bool button, string lineEnd) => string.Join(lineEnd,
        "<xml xmlns:v=\"urn:schemas-microsoft-com:vml\" xmlns:o=\"urn:schemas-microsoft-com:office:office\" xmlns:x=\"urn:schemas-microsoft-com:office:excel\">",
        " <o:shapelayout v:ext=\"edit\"><o:idmap v:ext=\"edit\" data=\"1\"/></o:shapelayout>",
        button ? " <v:shape id=\"_x0000_s1030\" type=\"#_x0000_t201\" o:button=\"t\"><v:textbox><div>Fill<br></div></v:textbox><x:ClientData ObjectType=\"Button\"><x:Anchor>14, 0, 0, 0, 16, 0, 2, 0</x:Anchor></x:ClientData></v:shape>" : "",
        " <v:shape id=\"_x0000_s1025\" type=\"#_x0000_t202\" style='position:absolute;",
        "  visibility:hidden'>", "  <x:ClientData ObjectType=\"Note\"><x:MoveWithCells/>", "   <x:Anchor>", $"    {column}, 15, {row - 1}, 2, {column + 2}, 31, {row + 3}, 1</x:Anchor>",
        $"   <x:Row>{row - 1}</x:Row><x:Column>{column - 1}</x:Column>", "  </x:ClientData>", " </v:shape>", "</xml>");
}
