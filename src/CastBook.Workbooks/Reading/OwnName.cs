using System.Globalization;

namespace CastBook.Workbooks.Reading;

/// <summary>The hidden defined names by which CastBook knows again what is its own.</summary>
public static class OwnName
{
    /// <summary>What all of them begin with.</summary>
    public const string Prefix = "CastBook_";

    /// <summary>Heading cell of Metal each.</summary>
    public const string MetalEach = "CastBook_MetalEach";

    /// <summary>Heading cell of Metal.</summary>
    public const string Metal = "CastBook_Metal";

    /// <summary>Heading cell of Flask.</summary>
    public const string Flask = "CastBook_Flask";

    /// <summary>Heading cell of Mix.</summary>
    public const string Mix = "CastBook_Mix";

    /// <summary>Heading cell of Burnout.</summary>
    public const string Burnout = "CastBook_Burnout";

    /// <summary>Heading cell of Checks.</summary>
    public const string Checks = "CastBook_Checks";

    /// <summary>First cell of the Night plan sheet.</summary>
    public const string NightPlanSheet = "CastBook_NightPlanSheet";

    /// <summary>First cell of the Trees sheet.</summary>
    public const string TreesSheet = "CastBook_TreesSheet";

    /// <summary>First cell of the Mixes sheet.</summary>
    public const string MixesSheet = "CastBook_MixesSheet";

    /// <summary>First cell of the Clock sheet.</summary>
    public const string ClockSheet = "CastBook_ClockSheet";

    /// <summary>First cell of the Kiln sheet.</summary>
    public const string KilnSheet = "CastBook_KilnSheet";

    /// <summary>First cell of the Floors sheet.</summary>
    public const string FloorsSheet = "CastBook_FloorsSheet";

    /// <summary>First cell of the Metal sheet.</summary>
    public const string MetalSheet = "CastBook_MetalSheet";

    /// <summary>First cell of the Checks sheet.</summary>
    public const string ChecksSheet = "CastBook_ChecksSheet";

    /// <summary>First cell of the sheet that takes the computed values when they cannot stand beside the list.</summary>
    public const string ComputedSheet = "CastBook_ComputedSheet";

    /// <summary>First cell of a Shop sheet that CastBook added to ask its questions.</summary>
    public const string ShopQuestions = "CastBook_ShopQuestions";

    /// <summary>First cell of a Flasks sheet that CastBook added.</summary>
    public const string FlasksQuestions = "CastBook_FlasksQuestions";

    /// <summary>First cell of a Materials sheet that CastBook added.</summary>
    public const string MaterialsQuestions = "CastBook_MaterialsQuestions";

    /// <summary>First cell of an Alloys sheet that CastBook added.</summary>
    public const string AlloysQuestions = "CastBook_AlloysQuestions";

    /// <summary>First cell of a Crucibles sheet that CastBook added.</summary>
    public const string CruciblesQuestions = "CastBook_CruciblesQuestions";

    /// <summary>First cell of a Kilns sheet that CastBook added.</summary>
    public const string KilnsQuestions = "CastBook_KilnsQuestions";

    /// <summary>First cell of an Investments sheet that CastBook added.</summary>
    public const string InvestmentsQuestions = "CastBook_InvestmentsQuestions";

    /// <summary>First cell of a Schedules sheet that CastBook added.</summary>
    public const string SchedulesQuestions = "CastBook_SchedulesQuestions";

    /// <summary>The hidden name of a column in one of several lists, such as <c>CastBook_Flask_2</c>; the first list's bears no number.</summary>
    /// <param name="name">The column's name.</param>
    /// <param name="list">The list's number, from 1.</param>
    internal static string InList(string name, int list) =>
        list == 1 ? name : string.Create(CultureInfo.InvariantCulture, $"{name}_{list}");

    /// <summary>The column's name and the list's number of a hidden name; the other way round than <see cref="InList"/>.</summary>
    /// <param name="name">The hidden name.</param>
    internal static (string Name, int List) Split(string name)
    {
        var at = name.LastIndexOf('_');
        return at >= Prefix.Length && int.TryParse(name.AsSpan(at + 1), NumberStyles.None, CultureInfo.InvariantCulture, out var list) && list > 1
            ? (name[..at], list)
            : (name, 1);
    }

    /// <summary>Whether a name is that of a sheet with questions: the shop's from its first answer on.</summary>
    /// <param name="name">The name.</param>
    internal static bool IsQuestions(string name) => name.EndsWith("Questions", StringComparison.Ordinal);
}
