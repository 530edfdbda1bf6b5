using System.Text;

namespace CastBook.Workbooks.Text;

/// <summary>Turns the bytes of a text file into text, in every encoding that office programs save.</summary>
internal static class TextDecoder
{
    private const int WesternEurope = 1252;

    /// <summary>The text: by its byte order mark; else UTF-16 where every other byte is zero, UTF-8 where it is valid, and windows-1252.</summary>
    /// <param name="bytes">The file's bytes.</param>
    public static string Decode(ReadOnlySpan<byte> bytes)
    {
        if (bytes.StartsWith<byte>([0xFF, 0xFE]))
        {
            return Encoding.Unicode.GetString(bytes[2..]);
        }

        if (bytes.StartsWith<byte>([0xFE, 0xFF]))
        {
            return Encoding.BigEndianUnicode.GetString(bytes[2..]);
        }

        if (bytes.StartsWith<byte>([0xEF, 0xBB, 0xBF]))
        {
            return Encoding.UTF8.GetString(bytes[3..]);
        }

        if (bytes.Length >= 4 && bytes.Length % 2 == 0 && (bytes[0] == 0) != (bytes[1] == 0))
        {
            return (bytes[0] == 0 ? Encoding.BigEndianUnicode : Encoding.Unicode).GetString(bytes);
        }

        return System.Text.Unicode.Utf8.IsValid(bytes)
            ? Encoding.UTF8.GetString(bytes)
            : CodePagesEncodingProvider.Instance.GetEncoding(WesternEurope)!.GetString(bytes);
    }
}
