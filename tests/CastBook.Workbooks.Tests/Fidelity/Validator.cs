using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Validation;

namespace CastBook.Workbooks.Tests.Fidelity;

/// <summary>The Open XML SDK's validator as a witness. It says some things of sound books too, so only what is new counts.</summary>
internal static class Validator
{
    /// <summary>What the validator says of a book now that it did not say before.</summary>
    public static IReadOnlyList<string> NewMessages(byte[] before, byte[] after)
    {
        var messages = Messages(after);
        foreach (var message in Messages(before))
        {
            messages.Remove(message);
        }

        return messages;
    }

    public static List<string> Messages(byte[] book)
    {
        using var document = SpreadsheetDocument.Open(new MemoryStream(book), isEditable: false);
        return [.. new OpenXmlValidator(FileFormatVersions.Office2019).Validate(document).Select(e => $"{e.Part?.Uri} {e.Path?.XPath} {e.Description}")];
    }
}
