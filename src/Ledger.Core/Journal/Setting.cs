using Ledger.Core.Measures;

namespace Ledger.Core.Journal;

/// <summary>
/// One setting of the ledger: its name, what it is for, what it accepts, and how its value is written and read.
/// </summary>
public sealed partial record Setting
{
    private readonly Func<Settings, string> _write;
    private readonly Func<Settings, string, Settings?> _read;

    private Setting(string name, string purpose, string accepted, Func<Settings, string> write,
        Func<Settings, string, Settings?> read) =>
        (Name, Purpose, Accepted, _write, _read) = (name, purpose, accepted, write, read);

    /// <summary>The name, as commands and the journal know it.</summary>
    public string Name { get; }

    /// <summary>What it is for, in a sentence.</summary>
    public string Purpose { get; }

    /// <summary>The values it accepts, in words.</summary>
    public string Accepted { get; }

    /// <summary>The words among what it accepts, for lists to choose from; empty where there are none.</summary>
    public IReadOnlyList<string> AcceptedWords { get; private init; } = [];

    /// <summary>
    /// Whether it only says how things are shown: that follows the settings of today, whatever day is looked at.
    /// </summary>
    public bool IsOfDisplay => Name is "liquids" or "areas" or "theme";

    /// <summary>The setting of that name in any case, or null.</summary>
    public static Setting? Named(string name) => All.FirstOrDefault(setting => Is(name, setting.Name));

    /// <summary>The value that it has, as it is written; empty when it was never set and has none.</summary>
    public string Text(Settings settings) => _write(settings);

    /// <summary>
    /// The settings with this one changed, or null when the value is not accepted. Its words are read in any case.
    /// </summary>
    public Settings? Read(Settings settings, string value) =>
        _read(settings, AcceptedWords.FirstOrDefault(word => Is(value, word)) ?? value);

    private static bool Is(string written, string word) =>
        written.Trim().Equals(word, StringComparison.OrdinalIgnoreCase);

    private static Setting Whole(
        string name, string purpose, string what, int least, int most, Func<Settings, int> get,
        Func<Settings, int, Settings> with) => new(
        name, purpose, $"{what}, {least} to {most}", settings => Scaled.ToText(get(settings), 0),
        (settings, value) => Number(value, 1, least, most) is { } number ? with(settings, (int)number) : null);

    /// <summary>A number that is kept in thousandths.</summary>
    private static Setting Thousandths(
        string name, string purpose, string what, int least, int most, Func<Settings, int> get,
        Func<Settings, int, Settings> with) => new(
        name, purpose, $"{what}, {Scaled.InUnits(least, 1000)} to {Scaled.InUnits(most, 1000)}",
        settings => Scaled.InUnits(get(settings), 1000),
        (settings, value) => Number(value, 1000, least, most) is { } number ? with(settings, (int)number) : null);

    /// <summary>A limit that is kept in thousandths, or none.</summary>
    private static Setting Limit(
        string name, string purpose, string what, int least, int most, Func<Settings, int?> get,
        Func<Settings, int?, Settings> with) => new(
        name, purpose, $"{what}, {Scaled.InUnits(least, 1000)} to {Scaled.InUnits(most, 1000)}, or none",
        settings => get(settings) is { } limit ? Scaled.InUnits(limit, 1000) : "none",
        (settings, value) => value == "none" ? with(settings, null)
            : Number(value, 1000, least, most) is { } number
                ? with(settings, (int)number)
                : null) { AcceptedWords = ["none"] };

    private static Setting OneOf(
        string name, string purpose, IReadOnlyList<string> values, Func<Settings, string> get,
        Func<Settings, string, Settings> with) => new(
        name, purpose, string.Join(" or ", values), get,
        (settings, value) => values.Contains(value) ? with(settings, value) : null) { AcceptedWords = values };

    /// <summary>
    /// A number without a sign in base units, or null when it is finer than they are or outside what is accepted.
    /// </summary>
    private static long? Number(string value, long perUnit, long least, long most) =>
        decimal.TryParse(value, System.Globalization.NumberStyles.AllowDecimalPoint,
            System.Globalization.CultureInfo.InvariantCulture, out var number)
        && Scaled.ToBase(number, perUnit) is { } whole && whole >= least && whole <= most ? whole : null;
}
