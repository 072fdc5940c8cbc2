using System.Data;

namespace Ledger.Storage.Files;

/// <summary>
/// A connection that compiles a statement once when it is run again and again. Deriving, importing and drawing a screen
/// run the same few hundred texts thousands of times, and SQLite spends nearly half of that on reading their text. What
/// is run a single time, as by most commands, is not kept.
/// </summary>
internal sealed class ReusingConnection(string connectionString) : SqliteConnection(connectionString)
{
    /// <summary>Each text that was run; the command that keeps it compiled from the second time on.</summary>
    private readonly Dictionary<string, Compiled?> _statements = new(StringComparer.Ordinal);

    public override SqliteCommand CreateCommand() => new Reusing { Connection = this, CommandTimeout = DefaultTimeout };

    /// <summary>The command that keeps a text compiled; null when it is to be compiled for this time only.</summary>
    private Compiled? Keeping(string text)
    {
        // Some pragmas act while they are compiled, and a definition of the schema is run once.
        if (!IsReadOrWritten(text) || _statements.TryAdd(text, null))
            return null;
        var kept = _statements[text] ??= new(new(text, this));
        return kept.IsBusy ? null : kept;
    }

    private static bool IsReadOrWritten(string text)
    {
        var start = text.AsSpan().TrimStart();
        return start.StartsWith("SELECT") || start.StartsWith("INSERT") || start.StartsWith("UPDATE")
            || start.StartsWith("DELETE")
            || start.StartsWith("WITH");
    }

    /// <summary>A command whose text and parameters are run by the one that keeps the text compiled.</summary>
    private sealed class Reusing : SqliteCommand
    {
        public override SqliteDataReader ExecuteReader(CommandBehavior behavior) =>
            ((ReusingConnection)Connection!).Keeping(CommandText)?.Run(this, behavior) ?? base.ExecuteReader(behavior);
    }

    private sealed class Compiled(SqliteCommand command)
    {
        private SqliteDataReader? _last;

        /// <summary>The rows of an earlier run are still being read.</summary>
        public bool IsBusy => _last is { IsClosed: false };

        public SqliteDataReader Run(SqliteCommand asked, CommandBehavior behavior)
        {
            command.Parameters.Clear();
            foreach (SqliteParameter parameter in asked.Parameters)
                command.Parameters.Add(parameter);
            command.CommandTimeout = asked.CommandTimeout;
            return _last = command.ExecuteReader(behavior);
        }
    }
}
