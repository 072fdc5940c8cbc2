namespace Ledger.Terminal.Pictures;

/// <summary>The signs that pictures are drawn with: chosen here once, by what the terminal can write.</summary>
internal sealed record Signs
{
    private static readonly string[] _localeVariables = ["LC_ALL", "LC_CTYPE", "LANG"];

    /// <summary>Plain characters, for any terminal.</summary>
    public static Signs Plain { get; } = new();

    /// <summary>
    /// Block elements and lines (Unicode, Block Elements and Box Drawing), where the locale is UTF-8.
    /// </summary>
    public static Signs Blocks { get; } = new()
    {
        Parts = "▏▎▍▌▋▊▉█", Steps = "▁▂▃▄▅▆▇█", Rest = '·', Open = "", Close = "", Bar = "█",
        Ahead = '░', Level = '╌', Arrival = '▲', Test = '●', Fit = '·', Upright = '│', Corner = '└',
        Along = '─', Soon = '╌', Heavy = '━', HeavyUpright = '┃', Up = '▲', Down = '▼',
    };

    /// <summary>Those that are used from the start of the screens on.</summary>
    public static Signs Here { get; private set; } = Plain;

    /// <summary>How far a cell is filled from its left, in equal parts; the last is full.</summary>
    public string Parts { get; private init; } = "#";

    /// <summary>How far a cell is filled from its bottom, in equal parts; the last is full.</summary>
    public string Steps { get; private init; } = "#";

    /// <summary>What is not filled.</summary>
    public char Rest { get; private init; } = '.';

    /// <summary>Before a gauge.</summary>
    public string Open { get; private init; } = "[";

    /// <summary>Behind a gauge.</summary>
    public string Close { get; private init; } = "]";

    /// <summary>A cell of a bar.</summary>
    public string Bar { get; private init; } = "#";

    /// <summary>What is expected.</summary>
    public char Ahead { get; private init; } = 'o';

    /// <summary>The line of a level or a limit.</summary>
    public char Level { get; private init; } = '-';

    /// <summary>A delivery that is expected.</summary>
    public char Arrival { get; private init; } = '^';

    /// <summary>A test.</summary>
    public char Test { get; private init; } = 'o';

    /// <summary>The line through tests.</summary>
    public char Fit { get; private init; } = '.';

    /// <summary>An axis that stands.</summary>
    public char Upright { get; private init; } = '|';

    /// <summary>Where two axes meet.</summary>
    public char Corner { get; private init; } = '+';

    /// <summary>An axis that lies.</summary>
    public char Along { get; private init; } = '-';

    /// <summary>Its part that is still to come.</summary>
    public char Soon { get; private init; } = '.';

    /// <summary>A line that is strong.</summary>
    public char Heavy { get; private init; } = '=';

    /// <summary>A line that is strong, upright.</summary>
    public char HeavyUpright { get; private init; } = '#';

    /// <summary>There is more above.</summary>
    public char Up { get; private init; } = '^';

    /// <summary>There is more below.</summary>
    public char Down { get; private init; } = 'v';

    /// <summary>Draws from now on as the environment lets it.</summary>
    /// <param name="variable">A variable of the environment.</param>
    public static void Choose(Func<string, string?> variable) => Here = IsUnicode(variable) ? Blocks : Plain;

    /// <summary>
    /// Whether the locale is UTF-8: of LC_ALL, LC_CTYPE and LANG the first that is set decides (POSIX.1-2017, Base
    /// Definitions, 8.2).
    /// </summary>
    /// <param name="variable">A variable of the environment.</param>
    public static bool IsUnicode(Func<string, string?> variable)
    {
        var locale = _localeVariables.Select(variable).FirstOrDefault(value => value is { Length: > 0 }) ?? "";
        return variable("TERM") is not "dumb" && (OperatingSystem.IsWindows()
            || locale.Replace("-", "", StringComparison.Ordinal).EndsWith("utf8", StringComparison.OrdinalIgnoreCase));
    }

    /// <summary>A bar of so many of a cell's parts, within a width.</summary>
    /// <param name="part">How much of the whole width is filled, from 0 to 1; what is drawn is never more.</param>
    /// <param name="cells">The width.</param>
    /// <param name="least">The fewest parts that are drawn of what is more than nothing.</param>
    public string Filled(decimal part, int cells, int least = 0)
    {
        var parts = Math.Max(part > 0 ? least : 0, (int)decimal.Floor(Math.Clamp(part, 0, 1) * cells * Parts.Length));
        var (full, rest) = (parts / Parts.Length, parts % Parts.Length);
        return new string(Parts[^1], full) + (rest == 0 ? "" : Parts[rest - 1].ToString());
    }
}
