using System.Security;

namespace CastBook.Workbooks.Tests.Witnesses;

/// <summary>Lets LibreOffice do to books what people do: <c>tests/witness/edits.bas</c> has the edits by name.</summary>
internal static class LibreOfficeEdits
{
    private const string DocType = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<!DOCTYPE {0} PUBLIC \"-//OpenOffice.org//DTD OfficeDocument 1.0//EN\" \"{1}.dtd\">\n";

    /// <summary>The book after each of the edits, all in one call.</summary>
    public static Dictionary<string, byte[]> Of(byte[] book, IEnumerable<string> edits) =>
        Tools.InFolder(edits.Select(e => (e + ".xlsx", book)), (folder, paths) =>
        {
            Directory.CreateDirectory(Path.Combine(folder, "out"));
            var profile = $"-env:UserInstallation=file://{folder}/profile";

            // The first start fills a new profile, and would write over a macro that is there already.
            Tools.Run("soffice", ["--headless", "--norestore", "--terminate_after_init", profile]);
            InstallMacro(Path.Combine(folder, "profile", "user", "basic", "Standard"));
            Tools.Run("soffice", ["--headless", "--norestore", profile, $"macro:///Standard.Edits.EditAll(\"{folder}\")"]);
            return paths.ToDictionary(p => Path.GetFileNameWithoutExtension(p), p => File.ReadAllBytes(Path.Combine(folder, "out", Path.GetFileName(p))));
        });

    private static void InstallMacro(string library)
    {
        File.WriteAllText(Path.Combine(library, "script.xlb"), Head("library:library", "library")
            + "<library:library xmlns:library=\"http://openoffice.org/2000/library\" library:name=\"Standard\" library:readonly=\"false\" library:passwordprotected=\"false\"><library:element library:name=\"Edits\"/></library:library>");
        File.WriteAllText(Path.Combine(library, "Edits.xba"), Head("script:module", "module")
            + "<script:module xmlns:script=\"http://openoffice.org/2000/script\" script:name=\"Edits\" script:language=\"StarBasic\">"
            + SecurityElement.Escape(File.ReadAllText(Path.Combine(Tools.WitnessFolder, "edits.bas"))) + "</script:module>");
    }

    private static string Head(string root, string type) => DocType.Replace("{0}", root, StringComparison.Ordinal).Replace("{1}", type, StringComparison.Ordinal);
}
