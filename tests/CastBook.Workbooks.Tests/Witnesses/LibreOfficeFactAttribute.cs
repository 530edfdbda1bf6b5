namespace CastBook.Workbooks.Tests.Witnesses;

/// <summary>A test that needs LibreOffice: it fails on a build machine that lacks it, and is skipped elsewhere.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class LibreOfficeFactAttribute : FactAttribute
{
    public LibreOfficeFactAttribute()
    {
        if (!Tools.IsBuildMachine && !Tools.HasLibreOffice)
        {
            Skip = "LibreOffice is not installed: apt-get install libreoffice-calc.";
        }
    }
}
