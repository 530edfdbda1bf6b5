namespace CastBook.Workbooks.Tests.Witnesses;

/// <summary>A test that needs libraries for Node.js: it fails on a build machine that lacks them, and is skipped elsewhere.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class NodeFactAttribute : FactAttribute
{
    public NodeFactAttribute()
    {
        if (!Tools.IsBuildMachine && !Tools.HasNode)
        {
            Skip = "The libraries for Node.js are not installed: npm ci --prefix tests/witness.";
        }
    }
}
