using System.Globalization;
using CsvHelper;
using CsvHelper.Configuration;

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

    /// <summary>How many numbers and marks of other people a file holds: the cells of the columns named behind <c># outside:</c>.</summary>
    public static int OutsideValues(string file)
    {
        const string Says = "# outside: ";
        var lines = File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "Published", file));
        var names = lines.Single(line => line.StartsWith(Says, StringComparison.Ordinal))[Says.Length..].Split(", ");
        var heading = lines.First(line => !line.StartsWith('#')).Split(',');
        var columns = names.Select(name => Array.IndexOf(heading, name)).ToList();
        columns.ShouldAllBe(column => column >= 0, $"{file} names a column that it does not have.");
        return Rows(file, 1).Sum(row => columns.Count(column => row[column] is not ("" or "0")));
    }

    public static IReadOnlyList<string[]> Rows(string file, int columns)
    {
        using var text = new StreamReader(Path.Combine(AppContext.BaseDirectory, "Published", file));
        using var parser = new CsvParser(text, new CsvConfiguration(CultureInfo.InvariantCulture) { AllowComments = true });
        var rows = new List<string[]>();
        parser.Read().ShouldBeTrue($"{file} has no heading line.");
        while (parser.Read())
        {
            rows.Add(parser.Record!);
        }

        rows.ShouldNotBeEmpty($"{file} has no rows.");
        rows.ShouldAllBe(row => row.Length >= columns, $"{file} has a row with too few columns.");
        return rows;
    }
}
