namespace Ledger.Terminal.Pages;

/// <summary>The main screens in the order of their digits: the only place where a digit is chosen.</summary>
internal static class MainDigits
{
    /// <summary>Their names.</summary>
    public static IReadOnlyList<string> Names { get; } =
        ["Today", "Shelf", "Baths", "Sessions", "Costs", "Journal", "Holders", "Reorder", "File"];

    /// <summary>A screen with its digit, as sentences name it.</summary>
    public static string To(string screen) => $"{screen} ({Of(screen)})";

    /// <summary>The digit of a screen.</summary>
    public static string Of(string screen) =>
        (Names.ToList().IndexOf(screen) + 1).ToString(CultureInfo.InvariantCulture);
}
