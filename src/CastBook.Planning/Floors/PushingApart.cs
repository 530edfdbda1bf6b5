namespace CastBook.Planning.Floors;

/// <summary>Lets circles that lie upon each other or over the wall push themselves apart, from one start after another.</summary>
/// <remarks>
/// The energy is the sum of the squares of all overlaps; it is let down by the method named below. A start is a random
/// one, or the last place of rest with its most pressed circle put down elsewhere.
/// Source: Bitzek and others, Structural Relaxation Made Simple, Phys. Rev. Lett. 97, 170201 (2006), for the descent.
/// </remarks>
internal sealed class PushingApart(FloorArea area, double[] radii)
{
    private const int Steps = 1500;
    private const int TriesFromOneStart = 8;
    private const double LeastForceMm = 1e-7;

    private readonly Chance chance = new(7);
    private readonly double[] x = new double[radii.Length];
    private readonly double[] y = new double[radii.Length];
    private readonly double[] forceX = new double[radii.Length];
    private readonly double[] forceY = new double[radii.Length];
    private readonly double[] speedX = new double[radii.Length];
    private readonly double[] speedY = new double[radii.Length];
    private readonly double[] pressed = new double[radii.Length];
    private int tries;

    /// <summary>Tries once more, from another start.</summary>
    /// <returns>Where the circles came to rest, overlapping or not; the caller looks.</returns>
    public (double X, double Y)[] Try()
    {
        if (tries++ % TriesFromOneStart == 0)
        {
            for (var i = 0; i < radii.Length; i++)
            {
                PutDown(i);
            }
        }
        else
        {
            PutDown(Array.IndexOf(pressed, pressed.Max()));
        }

        ComeToRest();
        return [.. x.Zip(y)];
    }

    private void PutDown(int circle)
    {
        x[circle] = ((2 * chance.Next()) - 1) * (area.HalfWidthMm - radii[circle]);
        y[circle] = ((2 * chance.Next()) - 1) * (area.HalfDepthMm - radii[circle]);
    }

    private void ComeToRest()
    {
        const double StartStep = 0.1;
        const double LongestStep = 0.5;
        const double StartMix = 0.1;
        Array.Clear(speedX);
        Array.Clear(speedY);
        var (step, mix, downhill) = (StartStep, StartMix, 0);
        for (var n = 0; n < Steps; n++)
        {
            var (force, power, speed) = Push();
            if (force < LeastForceMm)
            {
                return;
            }

            if (power > 0)
            {
                // Down hill: steer the speed towards the force, and go faster.
                var turn = mix * speed / force;
                for (var i = 0; i < radii.Length; i++)
                {
                    speedX[i] = ((1 - mix) * speedX[i]) + (turn * forceX[i]);
                    speedY[i] = ((1 - mix) * speedY[i]) + (turn * forceY[i]);
                }

                if (++downhill > 5)
                {
                    step = Math.Min(step * 1.1, LongestStep);
                    mix *= 0.99;
                }
            }
            else
            {
                Array.Clear(speedX);
                Array.Clear(speedY);
                (step, mix, downhill) = (step * 0.5, StartMix, 0);
            }

            Move(step);
        }
    }

    private void Move(double step)
    {
        for (var i = 0; i < radii.Length; i++)
        {
            speedX[i] += step * forceX[i];
            speedY[i] += step * forceY[i];
            x[i] += step * speedX[i];
            y[i] += step * speedY[i];
        }
    }

    private (double Force, double Power, double Speed) Push()
    {
        Array.Clear(pressed);
        for (var i = 0; i < radii.Length; i++)
        {
            var (outX, outY) = area.Overhang(x[i], y[i], radii[i]);
            (forceX[i], forceY[i]) = (-outX, -outY);
            pressed[i] = Math.Abs(outX) + Math.Abs(outY);
            for (var j = 0; j < i; j++)
            {
                PushPair(i, j);
            }
        }

        var (force, power, speed) = (0.0, 0.0, 0.0);
        for (var i = 0; i < radii.Length; i++)
        {
            force += (forceX[i] * forceX[i]) + (forceY[i] * forceY[i]);
            power += (forceX[i] * speedX[i]) + (forceY[i] * speedY[i]);
            speed += (speedX[i] * speedX[i]) + (speedY[i] * speedY[i]);
        }

        return (Math.Sqrt(force), power, Math.Sqrt(speed));
    }

    private void PushPair(int i, int j)
    {
        var dx = x[i] - x[j];
        var dy = y[i] - y[j];
        var reach = radii[i] + radii[j];
        var square = (dx * dx) + (dy * dy);
        if (square >= reach * reach)
        {
            return;
        }

        var distance = Math.Sqrt(square);
        var overlap = reach - distance;

        // Two upon the same spot part sideways.
        var (ux, uy) = distance > 0 ? (dx / distance, dy / distance) : (1.0, 0.0);
        forceX[i] += ux * overlap;
        forceY[i] += uy * overlap;
        forceX[j] -= ux * overlap;
        forceY[j] -= uy * overlap;
        pressed[i] += overlap;
        pressed[j] += overlap;
    }
}
