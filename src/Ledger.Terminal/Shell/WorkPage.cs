using Ledger.Terminal.Blocks;
using Ledger.Terminal.Pages;
using Ledger.Terminal.Pictures;

namespace Ledger.Terminal.Shell;

/// <summary>
/// Work on the file while it runs, and what came of it. Esc stops it; it is never left running behind the user's back.
/// </summary>
internal sealed class WorkPage : Page
{
    private const int Steps = 100;

    private readonly Work _work;
    private readonly TextPane _text = new() { X = 1, Width = Dim.Fill(), Height = Dim.Fill() };
    private readonly CancellationTokenSource _cancel = new();
    private Task _running = Task.CompletedTask;
    private UpkeepReport? _report;

    public WorkPage(Work work)
    {
        _work = work;
        Add(_text);
        Show(0);
    }

    /// <summary>Raised on the screens' thread when the work has ended.</summary>
    public event Action? Ended;

    public override string Heading => _work.Name;

    public override IReadOnlyList<string> Purpose =>
        ["Work on the ledger's file. Esc stops it while it runs, and nothing is left half done; afterwards Esc goes "
            + "back."];

    public override IReadOnlyList<ScreenAction> Actions => [];

    /// <summary>While it runs, no other screen can be gone to.</summary>
    public override bool TakesTyping => _report is null;

    /// <summary>Begins the work; the page must lie on the desk.</summary>
    public void Start()
    {
        var progress = new Steady(this);
        _running = Task.Run(() => _work.Do(progress, _cancel.Token)).ContinueWith(
            done => App?.Invoke(() => End(done.IsCompletedSuccessfully ? done.Result : Failed(done))),
            TaskScheduler.Default);
    }

    public override bool Stop()
    {
        if (_report is not null)
            return false;
        _cancel.Cancel();
        return true;
    }

    public override void Refresh()
    {
    }

    /// <summary>The work is told to stop, and what it does to the file is waited for.</summary>
    protected override void Dispose(bool disposing)
    {
        if (disposing)
        {
            _cancel.Cancel();
            _running.Wait();
            _cancel.Dispose();
        }

        base.Dispose(disposing);
    }

    private static UpkeepReport Failed(Task work) =>
        new(false, [work.Exception?.InnerException?.Message ?? "It was stopped; nothing is half done."]);

    private void End(UpkeepReport report)
    {
        _report = report;
        _text.Show([Block.Of(report.IsDone ? "Done" : "Not done", report.Sentences)]);
        Ended?.Invoke();
    }

    private void Show(double part) =>
        _text.Replace([Block.Of("At work", Gauge.Of((decimal)part * 100), "Esc stops it; nothing is left half done.")]);

    /// <summary>Passes on to the screen only what can be seen there.</summary>
    private sealed class Steady(WorkPage page) : IProgress<double>
    {
        private int _shown;

        public void Report(double value)
        {
            var step = (int)(value * Steps);
            if (step == _shown)
                return;
            _shown = step;
            page.App?.Invoke(() =>
            {
                if (page._report is null)
                    page.Show(value);
            });
        }
    }
}
