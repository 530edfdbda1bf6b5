namespace CastBook.Casting.Heat;

/// <summary>Finds where a function crosses nought.</summary>
internal static class Root
{
    private const int Halvings = 60;

    /// <summary>Halves a span that holds one crossing until it is as narrow as the numbers allow.</summary>
    /// <param name="function">The function, with different signs at the two ends.</param>
    /// <param name="from">One end of the span.</param>
    /// <param name="to">The other end.</param>
    /// <returns>The place of the crossing.</returns>
    public static double Between(Func<double, double> function, double from, double to)
    {
        var startsBelow = function(from) < 0;
        for (var i = 0; i < Halvings; i++)
        {
            var middle = (from + to) / 2;
            if (function(middle) < 0 == startsBelow)
            {
                from = middle;
            }
            else
            {
                to = middle;
            }
        }

        return (from + to) / 2;
    }
}
