using Ledger.Faults.Running;
using Ledger.Faults.Verdicts;

namespace Ledger.Faults.Scenarios;

/// <summary>Files are written beside the ledger: each is the old one, the whole new one or not there.</summary>
/// <param name="name">What is done.</param>
/// <param name="command">The command and its arguments.</param>
/// <param name="older">The file that is replaced and what it holds, if there is one.</param>
public sealed class Writing(string name, Func<Room, IReadOnlyList<string>> command,
    (string Name, string Text)? older = null) : Scenario(name)
{
    private Dictionary<string, string> _whole = [];
    private long _entries;

    /// <inheritdoc/>
    public override IReadOnlyList<string> Command(Room room) => command(room);

    /// <inheritdoc/>
    public override void Prepare(Room room)
    {
        room.KeepTheDemoYear();
        _entries = Proof.EntriesIn(room);
        if (older is var (file, text))
            File.WriteAllText(room.Path(file), text);
    }

    /// <inheritdoc/>
    public override void Learn(Room done) =>
        _whole = done.Files.Where(IsTarget).ToDictionary(file => file, file => Content(done, file));

    /// <inheritdoc/>
    public override IEnumerable<Flaw> Judge(Room room, Ran ran)
    {
        if (Proof.Of(room) is var ledger && (!ledger.IsWhole || ledger.Entries != _entries))
            yield return new(FlawKind.Lost,
                $"the ledger is not whole: {ledger.Trouble}, {ledger.Entries} entries of {_entries}");
        foreach (var (file, whole) in _whole)
        {
            var text = File.Exists(room.Path(file)) ? Content(room, file) : null;
            var isOld = text == (older?.Name == file ? Alike(older.Value.Text) : null);
            if (text != whole && !isOld)
                yield return new(FlawKind.HalfDone,
                    $"{file} is neither whole nor what it was ({text?.Length ?? 0} characters of {whole.Length})");
            else if (isOld && IsAcknowledged(ran))
                yield return new(FlawKind.Lost, $"{file} was not written, though the program ended with 0");
        }
    }

    /// <inheritdoc/>
    public override void RunNext(Room room) => room.Run([.. Command(room), "--replace"]);

    /// <inheritdoc/>
    public override bool MayStand(string file) => _whole.ContainsKey(file);

    private static bool IsTarget(string file) => !file.StartsWith("ledger.db", StringComparison.Ordinal);

    /// <summary>
    /// The text with its digits made alike, since some files hold the second at which they were written.
    /// </summary>
    private static string Content(Room room, string file) =>
        Alike(File.ReadAllText(room.Path(file)));

    private static string Alike(string text) => string.Concat(text.Select(c => char.IsAsciiDigit(c) ? '0' : c));
}
