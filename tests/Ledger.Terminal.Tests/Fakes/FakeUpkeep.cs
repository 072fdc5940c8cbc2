namespace Ledger.Terminal.Tests.Fakes;

/// <summary>Upkeep that remembers what it was asked for; the work ends when the test lets it.</summary>
internal sealed class FakeUpkeep : IUpkeep
{
    public List<string> Asked { get; } = [];

    /// <summary>What the work does between its beginning and its end.</summary>
    public Action<IProgress<double>, CancellationToken> Work { get; init; } = (_, _) => { };

    public IReadOnlyList<string> ImportKinds => ["items", "sessions"];

    public UpkeepReport Check(IProgress<double> progress, CancellationToken cancel) => Do("check", progress, cancel);

    public UpkeepReport BackUp(string path) => Do($"back up {path}", new Progress<double>(), default);

    public UpkeepReport Export(string folder, bool isReplacing, IProgress<double> progress, CancellationToken cancel) =>
        Do($"export {folder} {isReplacing}", progress, cancel);

    public UpkeepReport Import(string path, string? kind, bool isDry, IProgress<double> progress,
        CancellationToken cancel) =>
        Do($"import {path} {kind ?? "folder"} {(isDry ? "dry" : "wet")}", progress, cancel);

    public UpkeepReport WriteCalendar(string path) => Do($"calendar {path}", new Progress<double>(), default);

    private UpkeepReport Do(string what, IProgress<double> progress, CancellationToken cancel)
    {
        Asked.Add(what);
        Work(progress, cancel);
        return cancel.IsCancellationRequested ? new(false, ["Stopped; nothing is half done."])
            : new(true, [$"{what}: all is well."]);
    }
}
