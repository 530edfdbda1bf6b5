namespace CastBook.Casting.Tests.Published;

/// <summary>Reads a table of this folder: comment lines begin with #, then one heading line, then rows.</summary>
public static class PublishedTable
{
    public static TheoryData<string, string> Two(string file)
    {
        var data = new TheoryData<string, string>();
        foreach (var row in Rows(file, 2))
        {
            data.Add(row[0], row[1]);
        }

        return data;
    }

    public static TheoryData<string, string, string> Three(string file)
    {
        var data = new TheoryData<string, string, string>();
        foreach (var row in Rows(file, 3))
        {
            data.Add(row[0], row[1], row[2]);
        }

        return data;
    }

    public static TheoryData<string, string, string, string> Four(string file)
    {
        var data = new TheoryData<string, string, string, string>();
        foreach (var row in Rows(file, 4))
        {
            data.Add(row[0], row[1], row[2], row[3]);
        }

        return data;
    }

    public static IReadOnlyList<string[]> Rows(string file, int columns)
    {
        var lines = File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "Published", file));
        var rows = lines.Where(line => line.Length > 0 && line[0] != '#').Skip(1).Select(line => line.Split(',')).ToList();

        rows.ShouldNotBeEmpty($"{file} has no rows.");
        rows.ShouldAllBe(row => row.Length >= columns, $"{file} has a row with too few columns.");
        return rows;
    }
}
