using System.Runtime.InteropServices;

namespace CastBook.Workbooks.Files;

/// <summary>Gives a file a name that is free, of many who want it to one.</summary>
internal static partial class FreeName
{
    private const int NameIsTaken = 17;

    /// <summary>Gives a file a name, beside its own or in place of it; false where that name is taken.</summary>
    /// <remarks>
    /// Moving a file is one step on Windows. On Unix it looks first and renames then, so that of two who look at once the second takes the
    /// name from the first. A hard link is made in one step; where a file system has none, a new file is, and takes the content a moment later.
    /// </remarks>
    /// <param name="file">Full path of the file.</param>
    /// <param name="name">Full path of the name.</param>
    /// <exception cref="IOException">The file is gone, or nothing can be made there.</exception>
    public static bool TryGive(string file, string name)
    {
        try
        {
            if (OperatingSystem.IsWindows())
            {
                File.Move(file, name);
                return true;
            }

            if (Link(file, name) == 0)
            {
                return true;
            }

            if (Marshal.GetLastPInvokeError() == NameIsTaken)
            {
                return false;
            }

            var content = File.ReadAllBytes(file);
            using var made = new FileStream(name, FileMode.CreateNew, FileAccess.Write, FileShare.Read, 1);
            made.Write(content);
            return true;
        }
        catch (IOException) when (File.Exists(name))
        {
            return false;
        }
    }

    [LibraryImport("libc", EntryPoint = "link", SetLastError = true, StringMarshalling = StringMarshalling.Utf8)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int Link(string file, string name);
}
