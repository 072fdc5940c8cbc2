using Ledger.Core.Measures;

namespace Ledger.Core.Sessions;

/// <summary>Developing times by group, in the user's own figures: "11", or "11 N-1=9 N+1=14".</summary>
public sealed record GroupTimes
{
    private const decimal Longest = 10_000;
    private readonly Dictionary<string, decimal> _minutes = new(StringComparer.OrdinalIgnoreCase);

    private GroupTimes(string text) => Text = text;

    /// <summary>As they are written.</summary>
    public string Text { get; }

    /// <summary>Nothing is said: the process's own time counts.</summary>
    public static GroupTimes None { get; } = new("");

    /// <summary>What is accepted.</summary>
    public const string Accepted = "minutes, alone or for a group: 11, or 11 N-1=9 N+1=14";

    /// <summary>Reads the times; null when the text is something else.</summary>
    public static GroupTimes? Read(string text)
    {
        var words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var times = new GroupTimes(string.Join(' ', words));
        foreach (var word in words)
        {
            var split = word.LastIndexOf('=');
            var group = split < 0 ? "" : word[..split];
            if (!decimal.TryParse(word[(split + 1)..], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture,
                out var minutes)
                || minutes is <= 0 or > Longest
                || split == 0)
                return null;
            times._minutes[group] = minutes;
        }

        return times;
    }

    /// <summary>The time of a group: its own, else the one for all, else the process's.</summary>
    public decimal? Of(string group, decimal? process) =>
        _minutes.TryGetValue(group.Trim(), out var own) ? own
        : _minutes.TryGetValue("", out var all) ? all
        : process;

    /// <summary>Whether a group has a time of its own.</summary>
    public bool HasOwn(string group) => group.Trim() is { Length: > 0 } name && _minutes.ContainsKey(name);

    /// <summary>A time as it is read: "11 min", "11 min 30 s".</summary>
    public static string Clock(decimal minutes)
    {
        var seconds = decimal.ToInt64(Math.Round(minutes * 60, MidpointRounding.AwayFromZero));
        var rest = seconds % 60 == 0 ? "" : $" {Scaled.ToText(seconds % 60, 0)} s";
        return $"{Scaled.ToText(seconds / 60, 0)} min{rest}";
    }

    /// <summary>Two are the same when they are written the same.</summary>
    public bool Equals(GroupTimes? other) => other is not null && other.Text == Text;

    /// <inheritdoc/>
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Text);

    /// <inheritdoc/>
    public override string ToString() => Text;
}
