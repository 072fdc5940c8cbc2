namespace Ledger.Terminal.Pages;

/// <summary>Work on the file that may take a while.</summary>
/// <param name="Name">What it is called while it runs.</param>
/// <param name="Do">Does it; it tells how far it is, from 0 to 1, and ends early when it is told to.</param>
internal sealed record Work(string Name, Func<IProgress<double>, CancellationToken, UpkeepReport> Do);
