using Ledger.Faults.Injection;
using Ledger.Faults.Running;

namespace Ledger.Faults.Scenarios;

/// <summary>An entry is typed on the screens; it is there once the screen says so.</summary>
public sealed class OnTheScreens() : Posting("record on the screens", 1, null, _ => [])
{
    private const string Ended = "ended with ";

    private (string Key, string Then)[] Keys =>
        [("2", "Corvane Fen 80"), ("c", "What was counted"), ("47", "47"), ("Tab", "47"), ("spilt", "spilt"),
            ("F8", Recorded), ("C-q", Ended)];

    /// <inheritdoc/>
    public override bool IsAcknowledged(Ran ran) => ran.Output.Contains(Recorded, StringComparison.Ordinal);

    /// <summary>What is drawn is no promise, and there is far too much of it.</summary>
    public override bool IsOfInterest(string call) => !call.EndsWith("the output", StringComparison.Ordinal);

    /// <inheritdoc/>
    public override Ran Run(Room room, Fault? fault)
    {
        try
        {
            return Type(room, fault);
        }
        catch (TimeoutException trouble)
        {
            return new(-1, trouble.Message, "", TimeSpan.Zero, room.Calls);
        }
    }

    /// <inheritdoc/>
    public override void RunNext(Room room) => room.Run("show", "today");

    private Ran Type(Room room, Fault? fault)
    {
        var variables = string.Join(' ', room.Faulty(fault).Select(variable => $"{variable.Key}={variable.Value}"));
        using var terminal = new Tmux($"env {variables} {NativeBinary.FilePath} --file {room.Ledger}");
        var watch = System.Diagnostics.Stopwatch.StartNew();
        var seen = terminal.Await("Today", Ended);
        foreach (var (key, then) in Keys)
        {
            if (seen.Contains(Ended, StringComparison.Ordinal))
                break;
            terminal.Press(key);
            // A fault shows a sentence in place of what was expected; the next key is pressed all the same.
            seen = fault is { Kills: false } && key == "F8"
                ? Settled(terminal)
                : terminal.Await(then, Ended, "same key again");
        }

        if (terminal.Await(Ended, "same key again").Contains("same key again", StringComparison.Ordinal))
            terminal.Press("C-q");
        var screen = terminal.Await(Ended);
        return new(StatusIn(screen), seen + screen, "recorded", watch.Elapsed, room.Calls);
    }

    private static string Settled(Tmux terminal)
    {
        Thread.Sleep(1000);
        return terminal.Screen;
    }

    private static int StatusIn(string screen) =>
        int.Parse(screen[(screen.IndexOf(Ended, StringComparison.Ordinal) + Ended.Length)..].Split()[0],
            System.Globalization.CultureInfo.InvariantCulture);
}
