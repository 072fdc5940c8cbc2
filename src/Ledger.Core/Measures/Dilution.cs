namespace Ledger.Core.Measures;

/// <summary>
/// How a working solution is made: "1+39" is one part of the source to 39 parts of water, "1+1+100" one part each of A
/// and B to 100. "1+0" is the undiluted source. Always written with a plus: the colon is read two ways in the trade.
/// </summary>
public sealed record Dilution
{
    private const int Decimals = 6;
    private const decimal MostParts = 100_000;

    private readonly decimal[] _parts;
    private readonly decimal _sum;

    private Dilution(decimal[] parts, string text)
    {
        _parts = parts;
        _sum = parts.Sum();
        Text = text;
    }

    /// <summary>The dilution as it is written, without blanks: "1+39".</summary>
    public string Text { get; }

    /// <summary>The undiluted source.</summary>
    public static Dilution Undiluted { get; } = Parse("1+0");

    /// <summary>How many parts there are with the water: 2 for "1+39", 3 for "1+1+100".</summary>
    public int PartCount => _parts.Length;

    /// <summary>Reads "1+39"; the message of a failure says what is accepted.</summary>
    /// <exception cref="FormatException">Not a dilution, or written with a colon.</exception>
    public static Dilution Parse(string text) =>
        TryParse(text, out var dilution, out var problem) ? dilution : throw new FormatException(problem);

    /// <summary>Reads "1+39", or says in a sentence why not.</summary>
    public static bool TryParse(
        string text,
        [System.Diagnostics.CodeAnalysis.NotNullWhen(true)] out Dilution? dilution,
        [System.Diagnostics.CodeAnalysis.NotNullWhen(false)] out string? problem)
    {
        dilution = null;
        var plain = text.Replace(" ", "", StringComparison.Ordinal);
        if (Enum.GetValues<RatioReading>().All(reading => CanRead(plain, reading)))
        {
            problem = $"\"{plain}\" is read two ways: write {AcceptedFor(plain)}";
            return false;
        }

        var parts = new List<decimal>();
        foreach (var part in plain.Split('+'))
            if (decimal.TryParse(part, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value)
                && value <= MostParts && value == Math.Round(value, Decimals))
                parts.Add(value);
            else
                parts.Add(-1);

        if (parts.Count < 2 || parts[0] <= 0 || parts.Any(part => part < 0))
        {
            problem = $"\"{text}\" is not a dilution; write {AcceptedFor(text)}";
            return false;
        }

        problem = null;
        dilution = new([.. parts], string.Join('+', parts.Select(part => Scaled.ToText(part, Decimals))));
        return true;
    }

    /// <summary>Reads a ratio written with a colon, once the user has said how it is meant.</summary>
    /// <exception cref="FormatException">Not a ratio, or one part of one in all read as parts of the total of less than
    /// one.</exception>
    public static Dilution FromRatio(string ratio, RatioReading reading)
    {
        var parts = ratio.Split(':');
        if (parts.Length != 2
            || !decimal.TryParse(parts[0], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var source)
            || !decimal.TryParse(parts[1], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var other))
            throw new FormatException($"\"{ratio}\" is not a ratio such as 1:4");
        var water = reading == RatioReading.PartsOfWater ? other : other - source;
        return Parse(string.Create(CultureInfo.InvariantCulture, $"{source}+{water}"));
    }

    /// <summary>
    /// The source needed for <paramref name="total"/> of working solution: total × part ÷ sum of the parts, to the
    /// nearest microlitre. Of several sources each takes the difference of rounded running totals, so that together
    /// they never exceed the total.
    /// </summary>
    /// <param name="total">The working solution to make.</param>
    /// <param name="part">Which part of a multi-part dilution, counting from 0.</param>
    public Volume SourceIn(Volume total, int part = 0)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(part, PartCount);
        return First(part + 1, total) - First(part, total);
    }

    /// <summary>
    /// The water for <paramref name="total"/>: what the other parts leave, so that nothing is lost by rounding.
    /// </summary>
    public Volume WaterIn(Volume total) => total - First(PartCount - 1, total);

    /// <summary>
    /// How much of another part goes with so much of the first: its part ÷ the first one's, to the nearest microlitre.
    /// </summary>
    /// <param name="first">What is taken of the first part.</param>
    /// <param name="part">Which other part, counting from 1: 1 is B.</param>
    public Volume PartWith(Volume first, int part)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(part, PartCount - 1);
        return Volume.FromMicrolitres(
            decimal.ToInt64(Math.Round(first.Microlitres * _parts[part] / _parts[0], MidpointRounding.AwayFromZero)));
    }

    /// <summary>How many parts there are beside the first and the water: 0 for "1+39", 1 for "1+2+100".</summary>
    public int OtherPartCount => PartCount - 2;

    /// <summary>The working solution that so much of the (first) source makes.</summary>
    public Volume TotalFrom(Volume source) =>
        Volume.FromMicrolitres(
            decimal.ToInt64(Math.Round(source.Microlitres * _sum / _parts[0], MidpointRounding.AwayFromZero)));

    /// <summary>Two dilutions are the same when they are written the same.</summary>
    public bool Equals(Dilution? other) => other is not null && other.Text == Text;

    /// <inheritdoc/>
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Text);

    /// <summary>"1+39".</summary>
    public override string ToString() => Text;

    /// <summary>What the first so many parts take together.</summary>
    private Volume First(int parts, Volume total) => Volume.FromMicrolitres(
        decimal.ToInt64(Math.Round(total.Microlitres * _parts[..parts].Sum() / _sum, MidpointRounding.AwayFromZero)));

    /// <summary>
    /// What is accepted in place of a text that is no dilution, continuing "accepted is": of a ratio with a colon, both
    /// its readings.
    /// </summary>
    public static string AcceptedFor(string text)
    {
        var ratio = text.Replace(" ", "", StringComparison.Ordinal);
        return Enum.GetValues<RatioReading>().All(reading => CanRead(ratio, reading))
            ? $"{FromRatio(ratio, RatioReading.PartsOfWater)} if the second figure is the water, "
                + $"or {FromRatio(ratio, RatioReading.PartsInAll)} if it is all parts together"
            : "the parts with a plus, such as 1+39 (1+0 is undiluted)";
    }

    private static bool CanRead(string ratio, RatioReading reading)
    {
        try
        {
            FromRatio(ratio, reading);
            return true;
        }
        catch (FormatException)
        {
            return false;
        }
    }
}
