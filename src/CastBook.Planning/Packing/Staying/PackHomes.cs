namespace CastBook.Planning.Packing.Staying;

/// <summary>Where pieces stood before: which flask of a plan is which of those, and how many pieces are in another.</summary>
internal sealed class PackHomes
{
    private readonly int[][] counts;
    private readonly IReadOnlyList<PackedFlask> homes;

    /// <summary>Counts the pieces.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="homes">The flasks that stood.</param>
    public PackHomes(PackProblem problem, IReadOnlyList<PackedFlask> homes)
    {
        this.homes = homes;
        counts = [.. homes.Select(_ => new int[problem.Items.Length])];
        IsAnywhere = new bool[problem.Items.Length];
        for (var i = 0; i < homes.Count; i++)
        {
            foreach (var (item, count) in homes[i].Content)
            {
                counts[i][item] = count;
                IsAnywhere[item] = true;
                Pieces += count;
            }
        }
    }

    /// <summary>How many there are.</summary>
    public int Count => homes.Count;

    /// <summary>How many pieces stood in them.</summary>
    public int Pieces { get; }

    /// <summary>Whether any of a piece stood anywhere, by piece.</summary>
    public bool[] IsAnywhere { get; }

    /// <summary>The size of a flask.</summary>
    /// <param name="home">The flask.</param>
    public int SizeOf(int home) => homes[home].Size;

    /// <summary>How many pieces stood in a flask.</summary>
    /// <param name="home">The flask.</param>
    public int PiecesOf(int home) => counts[home].Sum();

    /// <summary>How many of a piece stood in a flask.</summary>
    /// <param name="home">The flask; less than 0 for none.</param>
    /// <param name="item">The piece.</param>
    public int In(int home, int item) => home < 0 ? 0 : counts[home][item];

    /// <summary>The one that a flask is named after, for each flask of a plan, so that fewest pieces have moved; less than 0 for none.</summary>
    /// <param name="plan">The plan.</param>
    public int[] Of(PackPlan plan) => BestPairs.Of(
        plan.Flasks.Count, Count, (flask, home) => plan.Flasks[flask].Pin == homes[home].Pin ? Stayed(plan.Flasks[flask], home) : 0);

    /// <summary>How many pieces of a flask stood in it before.</summary>
    /// <param name="flask">The flask.</param>
    /// <param name="home">What it was; less than 0 for none.</param>
    public int Stayed(PackedFlask flask, int home) => home < 0 ? 0 : flask.Content.Sum(c => Math.Min(c.Count, counts[home][c.Item]));

    /// <summary>How many pieces of a plan stood before in the flask that they are in.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="named">What each flask was.</param>
    public int Stayed(PackPlan plan, IReadOnlyList<int> named) => plan.Flasks.Select((f, i) => Stayed(f, named[i])).Sum();

    /// <summary>How many pieces of a plan are in another flask than they stood in before, its flasks being named so that these are fewest.</summary>
    /// <param name="plan">The plan.</param>
    public int Moved(PackPlan plan) => Pieces - Stayed(plan, Of(plan));
}
