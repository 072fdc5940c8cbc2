namespace Ledger.App.Values;

/// <summary>
/// A setting as the command line gives it: left alone when nothing was said, taken away when "none" was said.
/// </summary>
/// <param name="IsGiven">Whether it was given.</param>
/// <param name="Value">What was given; null for "none".</param>
internal readonly record struct OptionValue<T>(bool IsGiven, T? Value)
{
    private const string None = "none";

    /// <summary>An option that accepts a value or "none".</summary>
    public static Option<OptionValue<T>> Option(string name, string value, Func<string, T> read, string description) =>
        Typed.Option(
            name, value,
            text => new OptionValue<T>(true,
                text.Equals(None, StringComparison.OrdinalIgnoreCase) ? default : read(text)), description);

    /// <summary>What was said, or else what was known.</summary>
    public T? Or(T? known) => IsGiven ? Value : known;
}
