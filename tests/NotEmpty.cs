using System.Linq.Expressions;

namespace CastBook;

/// <summary>What is asked of each of none is true, whatever it is: a test that asks it could not fail.</summary>
internal static class NotEmpty
{
    /// <summary>As Shouldly's own, which it stands before in every namespace of the tests, but there must be one at least.</summary>
    public static void ShouldAllBe<T>(this IEnumerable<T> actual, Expression<Func<T, bool>> each, string? customMessage = null)
    {
        var all = actual.ToList();
        all.ShouldNotBeEmpty(customMessage);
        ShouldBeEnumerableTestExtensions.ShouldAllBe(all, each, customMessage);
    }
}
