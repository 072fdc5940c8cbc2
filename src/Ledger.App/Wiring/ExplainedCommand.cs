namespace Ledger.App.Wiring;

/// <summary>A command whose own help tells more than the one line that stands in a list of commands.</summary>
/// <param name="name">Its name.</param>
/// <param name="summary">What it is for, in a sentence.</param>
/// <param name="details">How it works, and examples: a line that begins with "Example" and the indented ones below
/// it.</param>
internal abstract class ExplainedCommand(string name, string summary, string details) : Command(name, summary)
{
    private const string Mark = "Example";

    /// <summary>What its own help adds: how it works, without the examples.</summary>
    public string Details =>
        string.Join('\n', Lines(details).Where(line => !line.IsExample).Select(line => line.Text)).Trim('\n');

    /// <summary>Examples of the whole command line, each on a line or more, as they stand in the help.</summary>
    public string Examples => string.Join('\n', Lines(details).Where(line => line.IsExample).Select(line => line.Text));

    /// <summary>What there is beside, a line each: the tables that it writes, and their columns.</summary>
    public virtual IEnumerable<string> More => [];

    private static IEnumerable<(string Text, bool IsExample)> Lines(string details)
    {
        var isExample = false;
        foreach (var line in details.ReplaceLineEndings("\n").Split('\n'))
        {
            isExample = line.StartsWith(Mark, StringComparison.Ordinal) || (isExample && line.StartsWith(' '));
            yield return (line, isExample);
        }
    }
}
