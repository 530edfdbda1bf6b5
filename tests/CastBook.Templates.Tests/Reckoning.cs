using System.Globalization;

namespace CastBook.Templates.Tests;

/// <summary>Reckons a formula as a person with a calculator does; units are not looked at.</summary>
internal sealed class Reckoning
{
    private readonly string text;
    private int at;

    private Reckoning(string text) => this.text = text;

    public static double Of(string formula)
    {
        var plain = string.Concat(formula.Where(c => char.IsAsciiDigit(c) || "().+−×÷".Contains(c, StringComparison.Ordinal)));
        var reckoning = new Reckoning(plain);
        var result = reckoning.Sum();
        reckoning.at.ShouldBe(plain.Length, formula);
        return result;
    }

    private char Next => at < text.Length ? text[at] : '\0';

    private double Sum()
    {
        var sum = Product();
        while (Next is '+' or '−')
        {
            sum += text[at++] == '+' ? Product() : -Product();
        }

        return sum;
    }

    private double Product()
    {
        var product = Number();
        while (Next is '×' or '÷')
        {
            product = text[at++] == '×' ? product * Number() : product / Number();
        }

        return product;
    }

    private double Number()
    {
        if (Next == '(')
        {
            at++;
            var inner = Sum();
            text[at++].ShouldBe(')');
            return inner;
        }

        var from = at;
        while (char.IsAsciiDigit(Next) || Next == '.')
        {
            at++;
        }

        return double.Parse(text.AsSpan(from, at - from), CultureInfo.InvariantCulture);
    }
}
