namespace CastBook.Workbooks.Verifying;

/// <summary>Something an office program insists on, or it repairs or refuses the file. One file each; <see cref="PackageRules"/> lists them.</summary>
internal abstract class PackageRule
{
    /// <summary>What breaks the rule, a sentence each; the same fault gives the same sentence in input and output.</summary>
    /// <param name="book">The book.</param>
    public abstract IEnumerable<string> Faults(BookFacts book);
}
