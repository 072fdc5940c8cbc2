using Ledger.Core.Measures;

namespace Ledger.Core.Sessions;

/// <summary>Working volumes by format, written as "4x5=600 11x14=2000" in millilitres.</summary>
public sealed record FormatVolumes
{
    private readonly IReadOnlyDictionary<string, Volume> _volumes;

    private FormatVolumes(IReadOnlyDictionary<string, Volume> volumes, string text) =>
        (_volumes, Text) = (volumes, text);

    /// <summary>As it is written.</summary>
    public string Text { get; }

    /// <summary>What is accepted.</summary>
    public const string Accepted = "a format and its millilitres, such as 4x5=600 11x14=2000";

    /// <summary>Reads the volumes; null when the text is something else.</summary>
    public static FormatVolumes? Read(string text)
    {
        var volumes = new Dictionary<string, Volume>();
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var parts = word.Split('=');
            if (parts.Length != 2
                || Format.CodeOf(parts[0]) is not { } format
                || !decimal.TryParse(parts[1], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture,
                    out var millilitres)
                || millilitres is <= 0 or > 1_000_000
                || Scaled.ToBase(millilitres, 1000) is not { } microlitres)
                return null;
            volumes[format] = Volume.FromMicrolitres(microlitres);
        }

        return volumes.Count == 0 ? null
            : new(volumes,
                string.Join(' ', volumes.Select(pair => $"{pair.Key}={Scaled.ToText(pair.Value.Millilitres, 3)}")));
    }

    /// <summary>The volume of a format; null when it has none of its own.</summary>
    public Volume? Of(Format format) => _volumes.TryGetValue(format.Code, out var volume) ? volume : null;

    /// <summary>Two are the same when they are written the same.</summary>
    public bool Equals(FormatVolumes? other) => other is not null && other.Text == Text;

    /// <inheritdoc/>
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Text);

    /// <inheritdoc/>
    public override string ToString() => Text;
}
