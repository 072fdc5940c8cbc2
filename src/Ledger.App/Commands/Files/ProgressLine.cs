namespace Ledger.App.Commands.Files;

/// <summary>How far long work is, on one line of the messages while somebody watches; silent otherwise.</summary>
internal sealed class ProgressLine(Surroundings around, string what) : IProgress<double>, IDisposable
{
    private const int Steps = 50;
    private int _shown = -1;

    public void Report(double value)
    {
        var step = (int)(value * Steps);
        if (!around.IsWatched || step == _shown)
            return;
        _shown = step;
        around.Error.Write('\r');
        around.Error.Write($"{what}: {step * 100 / Steps} %");
        around.Error.Flush();
    }

    /// <summary>Takes the line away, so that what follows stands at the beginning of one.</summary>
    public void Clear()
    {
        if (_shown >= 0)
        {
            around.Error.Write('\r');
            around.Error.Write(new string(' ', what.Length + 8));
            around.Error.Write('\r');
        }

        _shown = -1;
    }

    public void Dispose() => Clear();
}

/// <summary>Counts towards a total, for work that tells how many it has done.</summary>
/// <param name="progress">Who is told how far it is, from 0 to 1.</param>
/// <param name="total">How many there are.</param>
internal sealed class Counting(IProgress<double> progress, int total) : IProgress<int>
{
    public void Report(int value) => progress.Report(total == 0 ? 1 : (double)value / total);
}
