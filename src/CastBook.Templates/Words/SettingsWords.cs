namespace CastBook.Templates.Words;

/// <summary>What the Shop sheet says of itself and what is typed in its columns.</summary>
internal static class SettingsWords
{
    public static string Purpose => "Your answers and choices. An empty value means that you have not said.";

    public static string Setting => "The setting's name. Leave it as it is.";

    public static string Value => "Your answer.";

    public static string Unit => "The unit of the value.";

    public static string WhatFor => "What the setting does.";
}
