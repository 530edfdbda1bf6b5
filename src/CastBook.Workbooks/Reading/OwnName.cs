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

    /// <summary>Whether a name is that of a sheet with questions: the shop's from its first answer on.</summary>
    /// <param name="name">The name.</param>
    internal static bool IsQuestions(string name) => name.EndsWith("Questions", StringComparison.Ordinal);
}
