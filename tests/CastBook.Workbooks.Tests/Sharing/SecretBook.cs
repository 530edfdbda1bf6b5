using System.IO.Compression;
using System.Text;

namespace CastBook.Workbooks.Tests.Sharing;

/// <summary>A book with a secret in every place where an office program or a person may leave one.</summary>
internal static class SecretBook
{
    private const string Main = "xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"";
    private const string R = "xmlns:r=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships\"";
    private const string Office = "http://schemas.openxmlformats.org/officeDocument/2006/relationships/";
    private const string Sheet = "application/vnd.openxmlformats-officedocument.spreadsheetml.";

    /// <summary>The parts that hang on the workbook or a sheet and hold a secret: name, type, source, relationship.</summary>
    private static readonly (string Name, string Type, string Source, string Relation)[] Hanging =
    [
        ("docProps/core.xml", "application/vnd.openxmlformats-package.core-properties+xml", "", "core-properties"),
        ("docProps/app.xml", "application/vnd.openxmlformats-officedocument.extended-properties+xml", "", "extended-properties"),
        ("docProps/custom.xml", "application/vnd.openxmlformats-officedocument.custom-properties+xml", "", "custom-properties"),
        ("docProps/thumbnail.jpeg", "image/jpeg", "", "thumbnail"),
        ("customXml/item1.xml", "application/xml", "", "customXml"),
        ("xl/vbaProject.bin", "application/vnd.ms-office.vbaProject", "xl/workbook.xml", "vbaProject"),
        ("xl/persons/person.xml", "application/vnd.ms-excel.person+xml", "xl/workbook.xml", "person"),
        ("xl/connections.xml", Sheet + "connections+xml", "xl/workbook.xml", "connections"),
        ("xl/externalLinks/externalLink1.xml", Sheet + "externalLink+xml", "xl/workbook.xml", "externalLink"),
        ("xl/pivotCache/pivotCacheDefinition1.xml", Sheet + "pivotCacheDefinition+xml", "xl/workbook.xml", "pivotCacheDefinition"),
        ("xl/pivotCache/pivotCacheRecords1.xml", Sheet + "pivotCacheRecords+xml", "xl/pivotCache/pivotCacheDefinition1.xml", "pivotCacheRecords"),
        ("xl/slicerCaches/slicerCache1.xml", "application/vnd.ms-excel.slicerCache+xml", "xl/workbook.xml", "slicerCache"),
        ("xl/revisions/revisionHeaders.xml", Sheet + "revisionHeaders+xml", "xl/workbook.xml", "revisionHeaders"),
        ("xl/richData/rdrichvalue.xml", "application/vnd.ms-excel.rdrichvalue+xml", "xl/workbook.xml", "rdRichValue"),
        ("xl/future/strange.bin", "application/vnd.nobody-knows", "xl/workbook.xml", "strange"),
        ("xl/comments1.xml", Sheet + "comments+xml", "xl/worksheets/sheet1.xml", "comments"),
        ("xl/threadedComments/threadedComment1.xml", "application/vnd.ms-excel.threadedcomments+xml", "xl/worksheets/sheet1.xml", "threadedComment"),
        ("xl/printerSettings/printerSettings1.bin", Sheet + "printerSettings", "xl/worksheets/sheet1.xml", "printerSettings"),
        ("xl/embeddings/oleObject1.bin", "application/vnd.openxmlformats-officedocument.oleObject", "xl/worksheets/sheet1.xml", "oleObject"),
        ("xl/drawings/drawing1.xml", "application/vnd.openxmlformats-officedocument.drawing+xml", "xl/worksheets/sheet1.xml", "drawing"),
        ("xl/charts/chart1.xml", "application/vnd.openxmlformats-officedocument.drawingml.chart+xml", "xl/drawings/drawing1.xml", "chart"),
        ("xl/media/image1.png", "image/png", "xl/drawings/drawing1.xml", "image"),
        ("xl/queryTables/queryTable1.xml", Sheet + "queryTable+xml", "xl/worksheets/sheet1.xml", "queryTable"),
        ("xl/customProperty1.bin", Sheet + "customProperty", "xl/worksheets/sheet1.xml", "customProperty"),
    ];

    /// <summary>The book.</summary>
    /// <param name="s">Gives the secrets.</param>
    public static byte[] Make(Secrets s)
    {
        var output = new MemoryStream();
        using (var zip = new ZipArchive(output, ZipArchiveMode.Create, leaveOpen: true))
        {
            zip.Comment = s["ZipComment"];
            foreach (var (name, text) in Parts(s))
            {
                Put(zip, name, Encoding.UTF8.GetBytes(text), s);
            }

            foreach (var part in Hanging)
            {
                var place = string.Concat(part.Name.Where(char.IsAsciiLetter));
                Put(zip, part.Name, [.. Encoding.UTF8.GetBytes($"<part {Main} a=\"{s[place]}\">{s[place + "Text"]}</part>"), .. Encoding.Unicode.GetBytes(s[place + "Wide"])], s);
            }

            Put(zip, $"xl/media/{s["PartName"]}.png", Encoding.UTF8.GetBytes(s["Loose"]), s);
        }

        return output.ToArray();
    }

    private static void Put(ZipArchive zip, string name, byte[] content, Secrets s)
    {
        var entry = zip.CreateEntry(name);
        entry.Comment = s["EntryComment"];
        using var stream = entry.Open();
        stream.Write(content);
    }

    private static IEnumerable<(string Name, string Text)> Parts(Secrets s) =>
    [
        ("[Content_Types].xml", Types()),
        ("_rels/.rels", Relations([("rIdBook", Office + "officeDocument", "/xl/workbook.xml", false), .. Of("")])),
        ("xl/_rels/workbook.xml.rels", Relations(
        [
            .. Enumerable.Range(1, 5).Select(i => ($"rId{i}", Office + "worksheet", $"/xl/worksheets/sheet{i}.xml", false)),
            ("rIdStyles", Office + "styles", "/xl/styles.xml", false), ("rIdStrings", Office + "sharedStrings", "/xl/sharedStrings.xml", false),
            ("rIdTheme", Office + "theme", "/xl/theme/theme1.xml", false), .. Of("xl/workbook.xml"),
        ])),
        ("xl/worksheets/_rels/sheet1.xml.rels", Relations(
        [
            ("rIdTable", Office + "table", "/xl/tables/table1.xml", false), ("rIdLink", Office + "hyperlink", $"https://{s["LinkTarget"]}.invalid/", true), .. Of("xl/worksheets/sheet1.xml"),
        ])),
        ("xl/drawings/_rels/drawing1.xml.rels", Relations([.. Of("xl/drawings/drawing1.xml")])),
        ("xl/pivotCache/_rels/pivotCacheDefinition1.xml.rels", Relations([.. Of("xl/pivotCache/pivotCacheDefinition1.xml")])),
        ("xl/workbook.xml", Workbook(s)),
        ("xl/styles.xml", Styles(s)),
        ("xl/theme/theme1.xml", Theme(s)),
        ("xl/sharedStrings.xml", Strings(s)),
        ("xl/tables/table1.xml", Table(s)),
        ("xl/worksheets/sheet1.xml", Pieces(s)),
        ("xl/worksheets/sheet2.xml", Shop(s)),
        ("xl/worksheets/sheet3.xml", Alloys(s)),
        ("xl/worksheets/sheet4.xml", Plain(s["HiddenSheetCell"])),
        ("xl/worksheets/sheet5.xml", Plain(s["StrangeSheetCell"])),
    ];

    private static string Workbook(Secrets s) =>
        $"<?xml version=\"1.0\"?><!-- {s["Comment"]} --><?made by {s["Instruction"]}?><workbook {Main} {R} xmlns:x15ac=\"urn:x15ac\" xmlns:mc=\"http://schemas.openxmlformats.org/markup-compatibility/2006\">"
        + $"<fileVersion appName=\"{s["AppName"]}\"/><fileSharing userName=\"{s["UserName"]}\" hashValue=\"{s["Hash"]}\"/><workbookPr codeName=\"{s["CodeName"]}\"/>"
        + $"<mc:AlternateContent><mc:Choice Requires=\"x15\"><x15ac:absPath url=\"C:\\{s["Path"]}\\\"/></mc:Choice></mc:AlternateContent>"
        + $"<workbookProtection workbookPassword=\"{s["Password"]}\"/><bookViews><workbookView/></bookViews><sheets><sheet name=\"Pieces\" sheetId=\"1\" r:id=\"rId1\"/><sheet name=\"Shop\" sheetId=\"2\" r:id=\"rId2\"/>"
        + $"<sheet name=\"Alloys\" sheetId=\"3\" r:id=\"rId3\"/><sheet name=\"{s["HiddenSheet"]}\" sheetId=\"4\" state=\"veryHidden\" r:id=\"rId4\"/><sheet name=\"{s["StrangeSheet"]}\" sheetId=\"5\" r:id=\"rId5\"/></sheets>"
        + $"<definedNames><definedName name=\"Weights\" comment=\"{s["NameComment"]}\" description=\"{s["NameText"]}\">Pieces!$C$5:$C$8</definedName>"
        + $"<definedName name=\"{s["NameOfText"]}\">\"{s["NameLiteral"]}\"</definedName><definedName name=\"HiddenName\" hidden=\"1\">\"{s["HiddenNameText"]}\"</definedName>"
        + $"<definedName name=\"Ours\">Pieces!{s["NameReference"]}</definedName></definedNames>"
        + $"<pivotCaches><pivotCache cacheId=\"1\" r:id=\"rId99\"/></pivotCaches><extLst><ext uri=\"{s["Extension"]}\">{s["ExtensionText"]}</ext></extLst></workbook>";

    private static string Styles(Secrets s) =>
        $"<styleSheet {Main}><numFmts count=\"2\"><numFmt numFmtId=\"164\" formatCode=\"0.0 &quot;{s["FormatLiteral"]}&quot;\"/><numFmt numFmtId=\"165\" formatCode=\"[${s["FormatSign"]}-407] 0.00 &quot;g&quot;\"/></numFmts>"
        + "<fonts count=\"1\"><font><sz val=\"11\"/><name val=\"Calibri\"/></font></fonts><fills count=\"2\"><fill><patternFill patternType=\"none\"/></fill><fill><patternFill patternType=\"gray125\"/></fill></fills>"
        + "<borders count=\"1\"><border><left/><right/><top/><bottom/><diagonal/></border></borders><cellStyleXfs count=\"2\"><xf numFmtId=\"0\" fontId=\"0\" fillId=\"0\" borderId=\"0\"/><xf numFmtId=\"0\" fontId=\"0\" fillId=\"0\" borderId=\"0\"/></cellStyleXfs>"
        + "<cellXfs count=\"3\"><xf numFmtId=\"0\" fontId=\"0\" fillId=\"0\" borderId=\"0\" xfId=\"0\"/><xf numFmtId=\"164\" fontId=\"0\" fillId=\"0\" borderId=\"0\" xfId=\"1\" applyNumberFormat=\"1\"/><xf numFmtId=\"165\" fontId=\"0\" fillId=\"0\" borderId=\"0\" xfId=\"0\" applyNumberFormat=\"1\"/></cellXfs>"
        + $"<cellStyles count=\"2\"><cellStyle name=\"Normal\" xfId=\"0\" builtinId=\"0\"/><cellStyle name=\"{s["StyleName"]}\" xfId=\"1\"/></cellStyles>"
        + $"<dxfs count=\"1\"><dxf><font><b/></font></dxf></dxfs><tableStyles count=\"1\" defaultTableStyle=\"{s["DefaultTableStyle"]}\"><tableStyle name=\"{s["TableStyle"]}\"/></tableStyles><extLst><ext>{s["StyleExtension"]}</ext></extLst></styleSheet>";

    private static string Theme(Secrets s) =>
        $"<a:theme xmlns:a=\"http://schemas.openxmlformats.org/drawingml/2006/main\" name=\"{s["ThemeName"]}\"><a:themeElements><a:clrScheme name=\"{s["ColourScheme"]}\">"
        + string.Concat("dk1 lt1 dk2 lt2 accent1 accent2 accent3 accent4 accent5 accent6 hlink folHlink".Split(' ').Select(c => $"<a:{c}><a:srgbClr val=\"10A0B0\"/></a:{c}>"))
        + $"</a:clrScheme><a:fontScheme name=\"{s["FontScheme"]}\"><a:majorFont><a:latin typeface=\"Cambria\"/></a:majorFont><a:minorFont><a:latin typeface=\"Calibri\"/></a:minorFont></a:fontScheme></a:themeElements><a:extLst>{s["ThemeExtension"]}</a:extLst></a:theme>";

    private static string Strings(Secrets s) =>
        $"<sst {Main} count=\"4\" uniqueCount=\"4\"><si><t>{s["SharedString"]}</t></si><si><r><rPr><b/></rPr><t>{s["RichText"]}</t></r><rPh sb=\"0\" eb=\"1\"><t>{s["Phonetic"]}</t></rPh></si><si><t>{s["UnusedString"]}</t></si><si><t>Customer</t></si></sst>";

    private static string Table(Secrets s) =>
        $"<table {Main} id=\"1\" name=\"{s["TableName"]}\" displayName=\"Jobs\" comment=\"{s["TableComment"]}\" ref=\"A4:F9\" totalsRowCount=\"1\" headerRowCellStyle=\"{s["TableCellStyle"]}\"><autoFilter ref=\"A4:F8\"><filterColumn colId=\"0\"><filters><filter val=\"{s["FilterValue"]}\"/></filters></filterColumn></autoFilter>"
        + $"<sortState ref=\"A5:F8\"><sortCondition ref=\"A5\" customList=\"{s["SortList"]}\"/></sortState><tableColumns count=\"6\">"
        + $"<tableColumn id=\"1\" name=\"Piece\" totalsRowLabel=\"{s["TotalsLabel"]}\" uniqueName=\"{s["UniqueName"]}\"/><tableColumn id=\"2\" name=\"Qty\"/><tableColumn id=\"3\" name=\"Pattern weight (g)\"/><tableColumn id=\"4\" name=\"Alloy\"/><tableColumn id=\"5\" name=\"Customer\"/>"
        + $"<tableColumn id=\"6\" name=\"Sum (g)\"><calculatedColumnFormula>Jobs[[#This Row],[Qty]]*LEN(\"{s["ColumnFormula"]}\")</calculatedColumnFormula></tableColumn></tableColumns><tableStyleInfo name=\"{s["TableStyleUsed"]}\" showRowStripes=\"1\"/></table>";

    private static string Pieces(Secrets s)
    {
        string Text(string cell, string place) => $"<c r=\"{cell}\" t=\"inlineStr\"><is><t>{s[place]}</t></is></c>";
        string Head(string cell, string text) => $"<c r=\"{cell}\" t=\"inlineStr\"><is><t>{text}</t></is></c>";
        return $"<worksheet {Main} {R}><sheetPr codeName=\"{s["SheetCodeName"]}\"><tabColor rgb=\"FF112233\"/></sheetPr><sheetViews><sheetView workbookViewId=\"0\"><pane ySplit=\"4\" topLeftCell=\"A5\" state=\"frozen\"/></sheetView></sheetViews>"
            + "<cols><col min=\"1\" max=\"1\" width=\"31.5\" customWidth=\"1\"/><col min=\"5\" max=\"5\" width=\"9\" hidden=\"1\" customWidth=\"1\"/></cols><sheetData>"
            + $"<row r=\"1\">{Text("A1", "Title")}</row><row r=\"4\">{Head("A4", "Piece")}{Head("B4", "Qty")}{Head("C4", "Pattern weight (g)")}{Head("D4", "Alloy")}<c r=\"E4\" t=\"s\"><v>3</v></c>{Head("F4", "Sum (g)")}{Text("H4", "BesideTheHeadings")}</row>"
            + $"<row r=\"5\"><c r=\"A5\" t=\"s\"><v>0</v></c><c r=\"B5\"><v>2</v></c><c r=\"C5\" s=\"1\"><v>4.5</v></c>{Head("D5", "sterling silver")}{Text("E5", "Customer")}<c r=\"F5\" t=\"str\"><f>B5*C5</f><v>{s["CachedValue"]}</v></c></row>"
            + $"<row r=\"6\"><c r=\"A6\" t=\"s\"><v>1</v></c><c r=\"B6\"><v>1</v></c><c r=\"C6\"><v>3</v></c>{Head("D6", "sterling silver")}<c r=\"E6\" t=\"str\"><f>IF(B6=1,\"{s["FormulaText"]}\",\"\")</f><v>1</v></c><c r=\"F6\"><f>C6*{314}.159</f></c></row>"
            + $"<row r=\"7\" hidden=\"1\">{Text("A7", "HiddenRow")}<c r=\"B7\"><f>[1]{s["LinkedSheet"]}!A1</f><v>1</v></c><c r=\"C7\"><f>{s["UserFunction"]}(A7)</f></c></row>"
            + $"<row r=\"8\">{Text("A8", "LastRow")}</row><row r=\"9\">{Text("A9", "TotalsRow")}</row><row r=\"12\">{Text("C12", "BelowTheList")}</row></sheetData>"
            + $"<sheetProtection sheet=\"1\" password=\"{s["SheetPassword"]}\"/><protectedRanges><protectedRange sqref=\"A5\" name=\"{s["ProtectedRange"]}\"/></protectedRanges><scenarios><scenario name=\"{s["Scenario"]}\" user=\"{s["ScenarioUser"]}\"/></scenarios>"
            + $"<conditionalFormatting sqref=\"A5:A8\"><cfRule type=\"containsText\" dxfId=\"0\" priority=\"1\" operator=\"containsText\" text=\"{s["MarkText"]}\"><formula>NOT(ISERROR(SEARCH(\"{s["MarkFormula"]}\",A5)))</formula></cfRule>"
            + "<cfRule type=\"cellIs\" dxfId=\"0\" priority=\"2\" operator=\"greaterThan\"><formula>50</formula></cfRule></conditionalFormatting>"
            + $"<dataValidations count=\"3\"><dataValidation type=\"list\" allowBlank=\"1\" promptTitle=\"{s["PromptTitle"]}\" prompt=\"{s["Prompt"]}\" errorTitle=\"{s["ErrorTitle"]}\" error=\"{s["Error"]}\" sqref=\"D5:D99\"><formula1>\"sterling silver,tin bronze\"</formula1></dataValidation>"
            + $"<dataValidation type=\"list\" sqref=\"E5:E99\"><formula1>\"{s["ListItem"]},{s["SecondItem"]}\"</formula1></dataValidation><dataValidation type=\"decimal\" operator=\"greaterThan\" sqref=\"C5:C99\"><formula1>0</formula1></dataValidation></dataValidations>"
            + $"<hyperlinks><hyperlink ref=\"A5\" r:id=\"rIdLink\" tooltip=\"{s["Tooltip"]}\" display=\"{s["Display"]}\"/></hyperlinks><pageMargins left=\"0.7\" right=\"0.7\" top=\"0.7\" bottom=\"0.7\" header=\"0.3\" footer=\"0.3\"/>"
            + $"<pageSetup orientation=\"landscape\" r:id=\"rIdPrinter\"/><headerFooter><oddHeader>&amp;L{s["Header"]}</oddHeader><oddFooter>&amp;R&amp;P / &amp;N</oddFooter></headerFooter><drawing r:id=\"rIdDrawing\"/>"
            + $"<tableParts count=\"1\"><tablePart r:id=\"rIdTable\"/></tableParts><extLst><ext uri=\"{s["SheetExtension"]}\">{s["SheetExtensionText"]}</ext></extLst></worksheet>";
    }

    private static string Shop(Secrets s)
    {
        string Row(int row, string name, string value, string unit, string text) =>
            $"<row r=\"{row}\">{Inline($"A{row}", name)}{(value.All(c => char.IsDigit(c) || c == '.') ? $"<c r=\"B{row}\"><v>{value}</v></c>" : Inline($"B{row}", value))}{Inline($"C{row}", unit)}{Inline($"D{row}", text)}</row>";
        return $"<worksheet {Main}><sheetData><row r=\"1\">{Inline("A1", "Setting")}{Inline("B1", "Value")}{Inline("C1", "Unit")}{Inline("D1", "What it is for")}</row>"
            + Row(2, "Weights are of", "pattern", "", s["SettingRemark"]) + Row(3, "Crucible holds", "60", "ml", "") + Row(4, s["UnknownSetting"], s["UnknownValue"], "", "")
            + Row(5, "Night", s["Night"], "", "") + Row(6, $"Alloy \"{s["AlloyWord"]}\" is", s["AlloyMeaning"], "", "") + Row(7, "Pattern density", s["UnreadableSetting"], "", "") + "</sheetData></worksheet>";
    }

    private static string Alloys(Secrets s) =>
        $"<worksheet {Main}><sheetData><row r=\"1\">{Inline("A1", "Alloy")}{Inline("B1", "Density (g/cm³)")}{Inline("C1", "Fresh (g)")}{Inline("D1", "Price (per g)")}{Inline("E1", "Supplier")}</row>"
        + $"<row r=\"2\">{Inline("A2", "sterling silver")}<c r=\"B2\"><f>1036/100</f><v>10.36</v></c><c r=\"C2\"><v>91827.25</v></c><c r=\"D2\"><v>73645.75</v></c>{Inline("E2", s["Supplier"])}</row>"
        + $"<row r=\"3\">{Inline("A3", "tin bronze")}{Inline("B3", $"ask {s["DensityRemark"]}")}</row><row r=\"5\">{Inline("A5", $"{s["SheetRemark"]} says so and nobody else does.")}</row></sheetData></worksheet>";

    private static string Plain(string text) => $"<worksheet {Main}><sheetData><row r=\"1\">{Inline("A1", text)}</row></sheetData></worksheet>";

    private static string Inline(string cell, string text) => text.Length == 0 ? "" : $"<c r=\"{cell}\" t=\"inlineStr\"><is><t>{System.Security.SecurityElement.Escape(text)}</t></is></c>";

    private static IEnumerable<(string Id, string Type, string Target, bool IsExternal)> Of(string source) =>
        Hanging.Where(h => h.Source == source).Select((h, i) => ($"rIdHanging{i}", Office + h.Relation, "/" + h.Name, false));

    private static string Relations(IEnumerable<(string Id, string Type, string Target, bool IsExternal)> all) =>
        "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">"
        + string.Concat(all.Select(r => $"<Relationship Id=\"{r.Id}\" Type=\"{r.Type}\" Target=\"{r.Target}\"{(r.IsExternal ? " TargetMode=\"External\"" : "")}/>")) + "</Relationships>";

    private static string Types() =>
        "<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\"><Default Extension=\"rels\" ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/><Default Extension=\"png\" ContentType=\"image/png\"/>"
        + "<Override PartName=\"/xl/workbook.xml\" ContentType=\"application/vnd.ms-excel.sheet.macroEnabled.main+xml\"/>"
        + string.Concat(Enumerable.Range(1, 5).Select(i => $"<Override PartName=\"/xl/worksheets/sheet{i}.xml\" ContentType=\"{Sheet}worksheet+xml\"/>"))
        + $"<Override PartName=\"/xl/styles.xml\" ContentType=\"{Sheet}styles+xml\"/><Override PartName=\"/xl/sharedStrings.xml\" ContentType=\"{Sheet}sharedStrings+xml\"/><Override PartName=\"/xl/tables/table1.xml\" ContentType=\"{Sheet}table+xml\"/>"
        + "<Override PartName=\"/xl/theme/theme1.xml\" ContentType=\"application/vnd.openxmlformats-officedocument.theme+xml\"/>"
        + string.Concat(Hanging.Select(h => $"<Override PartName=\"/{h.Name}\" ContentType=\"{h.Type}\"/>")) + "</Types>";
}
