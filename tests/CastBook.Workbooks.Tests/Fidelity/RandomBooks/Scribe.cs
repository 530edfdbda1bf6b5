using System.Text;
using System.Text.RegularExpressions;

namespace CastBook.Workbooks.Tests.Fidelity.RandomBooks;

/// <summary>
/// Writes the same markup in one of the many ways that writers of workbooks do: prefixes, quotes, blanks, line ends,
/// comments, instructions, encodings, and the two families of namespaces.
/// </summary>
internal sealed partial class Scribe(Random random)
{
    private static readonly (string Transitional, string Strict)[] Families =
    [
        ("http://schemas.openxmlformats.org/spreadsheetml/2006/main", "http://purl.oclc.org/ooxml/spreadsheetml/main"),
        ("http://schemas.openxmlformats.org/officeDocument/2006/relationships", "http://purl.oclc.org/ooxml/officeDocument/relationships"),
        ("http://schemas.openxmlformats.org/drawingml/2006/", "http://purl.oclc.org/ooxml/drawingml/"),
    ];

    private readonly string prefix = random.Next(4) == 0 ? "x:" : "";
    private readonly string gap = random.Next(4) switch { 0 => "\r\n", 1 => "\n  ", _ => "" };
    private readonly bool oddQuotes = random.Next(3) == 0;
    private readonly bool remarks = random.Next(4) == 0;
    private readonly int encoding = random.Next(10);

    /// <summary>Whether the book is written in the Strict family of namespaces.</summary>
    public bool IsStrict { get; } = random.Next(5) == 0;

    /// <summary>A part of the spreadsheet: <c>~</c> stands where the prefix belongs, <c>{xmlns}</c> for its declaration.</summary>
    public byte[] Spreadsheet(string xml)
    {
        var main = $"xmlns{(prefix.Length > 0 ? ":" + prefix[..^1] : "")}=\"{Families[0].Transitional}\" xmlns:r=\"{Families[1].Transitional}\"";
        return Other(xml.Replace("</~", "</" + prefix, StringComparison.Ordinal).Replace("<~", "<" + prefix, StringComparison.Ordinal)
            .Replace("{xmlns}", main, StringComparison.Ordinal));
    }

    /// <summary>Any other part of the book.</summary>
    public byte[] Other(string xml)
    {
        foreach (var (transitional, strict) in IsStrict ? Families : [])
        {
            xml = xml.Replace(transitional, strict, StringComparison.Ordinal);
        }

        return Encoded(Between().Replace(Attribute().Replace(xml, Quoted), Spaced));
    }

    /// <summary>A part that has to be in plain UTF-8: content types and relationships.</summary>
    public byte[] Plain(string xml) => Encoding.UTF8.GetBytes(IsStrict ? xml.Replace(Families[1].Transitional, Families[1].Strict, StringComparison.Ordinal) : xml);

    private byte[] Encoded(string xml)
    {
        string Declared(string name) => $"<?xml version=\"1.0\" encoding=\"{name}\" standalone=\"yes\"?>{gap}{xml}";
        return encoding switch
        {
            0 => [0xFF, 0xFE, .. Encoding.Unicode.GetBytes(Declared("UTF-16"))],
            1 => [0xFE, 0xFF, .. Encoding.BigEndianUnicode.GetBytes(Declared("utf-16"))],
            2 => [0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(Declared("utf-8"))],
            3 => Encoding.UTF8.GetBytes(xml),
            4 => Encoding.Latin1.GetBytes(string.Concat(Declared("ISO-8859-1").EnumerateRunes().Select(r => r.Value > 0xFF ? $"&#{r.Value};" : r.ToString()))),
            _ => Encoding.UTF8.GetBytes(Declared("UTF-8")),
        };
    }

    private string Quoted(Match attribute) => !oddQuotes || random.Next(2) == 0 || attribute.Value.Contains('\'', StringComparison.Ordinal)
        ? attribute.Value
        : $"{(random.Next(2) == 0 ? " " : "\n\t")}{attribute.Groups[1].Value}{(random.Next(4) == 0 ? " = " : "=")}'{attribute.Groups[2].Value}'";

    private string Spaced(Match between) => remarks && random.Next(12) == 0
        ? $"{between.Groups[1].Value}{(random.Next(2) == 0 ? "<!-- kept: <c r=\"A1\"/> -->" : "<?shop kept?>")}"
        : between.Groups[1].Value + gap;

    [GeneratedRegex(" ([\\w:]+)=\"([^\"<]*)\"")]
    private static partial Regex Attribute();

    /// <summary>The end of an element that another one follows: where blanks mean nothing. Text stands nowhere beside elements but in runs.</summary>
    [GeneratedRegex(@"((?:</[\w:]+|<[\w:]+(?: [^<>]*)?/)>)(?=<[\w:])")]
    private static partial Regex Between();
}
