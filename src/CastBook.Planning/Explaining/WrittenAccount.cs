using System.Globalization;
using CastBook.Planning.Shops;
using CastBook.Planning.Words;
using UnitsNet;

namespace CastBook.Planning.Explaining;

/// <summary>The last step of an account: what was reckoned in grams, millilitres and degrees Celsius, in the unit in which the shop wants it.</summary>
internal static class WrittenAccount
{
    /// <summary>The account as its cell shows it.</summary>
    /// <param name="account">The account.</param>
    /// <param name="answer">Which answer it is of, a constant of <see cref="AnswerField"/>.</param>
    /// <param name="units">The units of the shop.</param>
    public static Account Of(Account account, string answer, ShopUnits units) => Result(
        units.Metal.IsGrams ? account : account with { Inputs = [.. account.Inputs.Select(i => InBoth(i, units.Metal))] }, answer, units);

    // The formula counts in grams; who weighs in pennyweights must find again what was typed.
    private static AccountInput InBoth(AccountInput input, WrittenMass unit) =>
        input.Weighed is { } weight ? input with { Value = $"{input.Value} ({unit.SayFinely(weight)})" } : input;

    private static Account Result(Account account, string answer, ShopUnits units) => answer switch
    {
        AnswerField.ToBuyAsSold => ToBuy(account, units.Buying),
        AnswerField.Powder or AnswerField.MixPowder or AnswerField.Mix => In(account, units.Powder),
        _ => account.Unit switch
        {
            "g" => In(account, units.Metal),
            "ml" => In(account, units.Water),
            "°C" when answer is not AnswerField.StageTarget => In(account, units.Temperature),
            _ => account,
        },
    };

    private static Account In(Account account, WrittenMass unit) => unit.IsGrams || account is not { Unit: "g", Result: { } grams } ? account : Divided(
        account, Figures.Grams(Mass.FromGrams(grams)), Mass.FromGrams(grams) / unit.One, unit.One.Grams, "g", unit.Name);

    private static Account In(Account account, WrittenVolume unit) => unit == WrittenVolume.Millilitre || account.Result is not { } millilitres ? account : Divided(
        account, Figures.Millilitres(Volume.FromMilliliters(millilitres)), Volume.FromMilliliters(millilitres) / unit.One, unit.One.Milliliters, "ml", unit.Name);

    private static Account In(Account account, WrittenTemperature unit) => unit == WrittenTemperature.Celsius || account.Result is not { } celsius ? account : account with
    {
        Words = AccountWords.InUnit(account.Words, unit.Name),
        Numbers = string.Create(CultureInfo.InvariantCulture, $"{Figures.Plain(celsius)} °C × {unit.PerCelsius} + {unit.AtFreezing}"),
        Result = unit.Exactly(Temperature.FromDegreesCelsius(celsius)),
        Unit = unit.Name,
        Rounded = AccountWords.ToWholeDegree,
    };

    private static Account ToBuy(Account account, WrittenMass unit) => account.Result is not { } grams ? account : In(account, unit) with
    {
        Result = unit.UpIn(Mass.FromGrams(grams)),
        Unit = unit.Name,
        Rounded = AccountWords.UpToWhole(unit.SayExactly(unit.Least)),
    };

    private static Account Divided(Account account, string result, double quotient, double size, string from, string to)
    {
        var sum = account.Numbers.Length == 0 ? result : account.Numbers.AsSpan().ContainsAny("+−") ? $"({account.Numbers})" : account.Numbers;
        return account with
        {
            Words = AccountWords.InUnit(account.Words, to),
            Numbers = string.Create(CultureInfo.InvariantCulture, $"{sum} ÷ {size:0.##########} {from}/{to}"),
            Result = quotient,
            Unit = to,
        };
    }
}
