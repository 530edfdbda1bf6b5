namespace CastBook.Workbooks.Reading.Values;

/// <summary>In which unit the numbers of a column stand, as long as all of them stand in one, whether its heading names it or the cells do.</summary>
internal struct SeenUnit
{
    // Far below what tells two units apart, far above float dust.
    private const double Near = 1e-9;

    private double factor;
    private bool isMixed;

    /// <summary>What one of the unit is in the base unit; missing where no number was seen, or numbers in several units.</summary>
    public readonly double? Factor => factor > 0 && !isMixed ? factor : null;

    /// <summary>Looks at a number.</summary>
    /// <param name="reading">The number as read.</param>
    public void See(NumberReading reading)
    {
        if (reading.Outcome != ReadOutcome.Read || reading.Typed == 0)
        {
            return;
        }

        var own = reading.Value / reading.Typed;
        isMixed |= factor > 0 && !IsNear(own, factor);
        factor = own;
    }

    /// <summary>Whether two factors are those of one unit.</summary>
    /// <param name="one">A factor.</param>
    /// <param name="other">Another.</param>
    public static bool IsNear(double one, double other) => Math.Abs(one - other) <= other * Near;
}
