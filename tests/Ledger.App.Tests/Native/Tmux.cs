namespace Ledger.App.Tests.Native;

/// <summary>A terminal of 80 by 24 that a test can type into and read.</summary>
public sealed class Tmux : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    private readonly string _server = $"trayledger-{Guid.NewGuid():N}";

    /// <summary>Runs a command line; its exit status is written when it ends.</summary>
    public Tmux(string commandLine) =>
        Do("new-session", "-d", "-x", "80", "-y", "24", $"{commandLine}; echo ended with $?; sleep 600");

    /// <summary>What tmux knows of the terminal, such as #{alternate_on}.</summary>
    public string Known(string format) => Do("display-message", "-p", format).Trim();

    public string Screen => Do("capture-pane", "-p");

    public void Press(string key) => Do("send-keys", key);

    /// <summary>Waits until a text stands on the screen.</summary>
    public void Await(string text)
    {
        var end = DateTime.UtcNow + Patience;
        while (!Screen.Contains(text, StringComparison.Ordinal))
        {
            Assert.True(DateTime.UtcNow < end, $"\"{text}\" does not appear on\n{Screen}");
            Thread.Sleep(100);
        }
    }

    public void Dispose() => Do("kill-server");

    private string Do(params string[] arguments) => PublishedBinary.Run("tmux", ["-L", _server, .. arguments]).Output;
}
