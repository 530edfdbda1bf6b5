using System.Runtime.InteropServices;
using System.Runtime.Versioning;

namespace CastBook.Workbooks.Files;

/// <summary>Whose a file is: a file that takes another's place goes to the same person and group, as far as the system lets us give it away.</summary>
/// <remarks>
/// .NET knows the mode of a file and not its owner. On Linux two calls of the system tell and set it: statx(2), whose record is laid out
/// alike on every machine, and chown(2). Elsewhere the file belongs to whoever made it.
/// </remarks>
internal static partial class FileOwner
{
    // Of struct statx in linux/stat.h, which is 256 bytes long: where the owner stands, and the group behind it.
    private const int Length = 256;
    private const int OwnerAt = 20;
    private const int GroupAt = 24;

    // AT_FDCWD in linux/fcntl.h, and STATX_UID | STATX_GID in linux/stat.h.
    private const int HereOnwards = -100;
    private const uint OwnerAndGroup = 0x18;

    // As either argument of chown: leave it as it is.
    private const uint Unchanged = uint.MaxValue;

    /// <summary>Gives a file to the owner and the group of another; of what this user may not give away nothing changes.</summary>
    /// <param name="like">The file whose owner and group are wanted.</param>
    /// <param name="file">The file to give to them. Its mode is to be set after this: giving a file away may take rights from it.</param>
    public static void Keep(string like, string file)
    {
        if (!OperatingSystem.IsLinux() || Of(like) is not { } wanted || Of(file) is not { } now || wanted == now)
        {
            return;
        }

        // Only an administrator gives a file to somebody else; to a group of one's own everybody may.
        if (Change(file, wanted.Owner, wanted.Group) != 0)
        {
            _ = Change(file, Unchanged, wanted.Group);
        }
    }

    [SupportedOSPlatform("linux")]
    private static (uint Owner, uint Group)? Of(string file)
    {
        var record = new byte[Length];
        return Read(HereOnwards, file, 0, OwnerAndGroup, record) == 0
            ? (BitConverter.ToUInt32(record, OwnerAt), BitConverter.ToUInt32(record, GroupAt))
            : null;
    }

    [LibraryImport("libc", EntryPoint = "statx", StringMarshalling = StringMarshalling.Utf8)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int Read(int from, string path, int flags, uint wanted, [Out] byte[] record);

    [LibraryImport("libc", EntryPoint = "chown", StringMarshalling = StringMarshalling.Utf8)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int Change(string path, uint owner, uint group);
}
