namespace Ledger.Exchange.Print;

/// <summary>An axis from zero in round steps: 1, 2 or 5 times a power of ten, six of them at most.</summary>
internal sealed class AxisScale
{
    private const int MostSteps = 6;

    public AxisScale(decimal most)
    {
        var step = 1m;
        while (most > step * MostSteps)
            step *= 10;
        while (step > 0.000_01m && most > 0 && most <= step * MostSteps / 10)
            step /= 10;
        Step = new[] { step / 5, step / 2, step }.FirstOrDefault(part => most <= part * MostSteps, step);
        Steps = Math.Max(1, (int)decimal.Ceiling(most / Step));
    }

    /// <summary>From one mark to the next.</summary>
    public decimal Step { get; }

    /// <summary>How many steps.</summary>
    public int Steps { get; }

    /// <summary>The end of the axis.</summary>
    public decimal End => Step * Steps;

    /// <summary>The marks from zero to the end.</summary>
    public IEnumerable<decimal> Marks => Enumerable.Range(0, Steps + 1).Select(i => i * Step);

    /// <summary>A mark with as many decimals as the step has.</summary>
    public string Text(decimal mark)
    {
        var decimals = 0;
        while (decimals < 6 && decimal.Truncate(Step * Power(decimals)) != Step * Power(decimals))
            decimals++;
        return mark.ToString(decimals == 0 ? "0" : "0." + new string('0', decimals),
            System.Globalization.CultureInfo.InvariantCulture);
    }

    private static decimal Power(int decimals) => (decimal)Math.Pow(10, decimals);
}
