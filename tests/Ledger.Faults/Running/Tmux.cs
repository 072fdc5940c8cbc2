namespace Ledger.Faults.Running;

/// <summary>A terminal of 80 by 24 that a test can type into and read.</summary>
public sealed class Tmux : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    private readonly string _server = $"trayledger-{Guid.NewGuid():N}";

    /// <summary>
    /// Runs a command line; its exit status is written when it ends, on a line of its own: a program that was killed
    /// leaves the cursor where it was.
    /// </summary>
    public Tmux(string commandLine) => Do(
        "new-session", "-d", "-x", "80", "-y", "24",
        $"{commandLine}; printf '\\r\\033[Kended with %d\\n' $?; sleep 600");

    /// <summary>Whether there is tmux here.</summary>
    public static bool IsHere => Executables.Has("tmux");

    /// <summary>What stands on the screen.</summary>
    public string Screen => Do("capture-pane", "-p");

    /// <summary>What tmux knows of the terminal, such as #{alternate_on}.</summary>
    public string Known(string format) => Do("display-message", "-p", format).Trim();

    /// <summary>Presses a key, by tmux's name for it, or types a text.</summary>
    public void Press(string key) => Do("send-keys", key);

    /// <summary>Writes all that the program sends from now on to a file.</summary>
    public void Listen(string file) => Do("pipe-pane", $"cat > '{file}'");

    /// <summary>Waits until one of some texts stands on the screen; returns the screen.</summary>
    /// <exception cref="TimeoutException">None does.</exception>
    public string Await(params string[] texts)
    {
        var end = DateTime.UtcNow + Patience;
        while (true)
        {
            var screen = Screen;
            if (texts.Any(text => screen.Contains(text, StringComparison.Ordinal)))
                return screen;
            if (DateTime.UtcNow > end)
                throw new TimeoutException($"\"{string.Join("\" or \"", texts)}\" does not appear on\n{screen}");
            Thread.Sleep(50);
        }
    }

    /// <inheritdoc/>
    public void Dispose() => Do("kill-server");

    private string Do(params string[] arguments) => Executables.Run("tmux", ["-L", _server, .. arguments]).Output;
}
