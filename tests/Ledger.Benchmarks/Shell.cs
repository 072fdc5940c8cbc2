using System.Diagnostics;
using Microsoft.Data.Sqlite;
using Process = System.Diagnostics.Process;

namespace Ledger.Benchmarks;

/// <summary>Other processes: the sqlite3 shell, the native binary, tmux.</summary>
internal static class Shell
{
    private static readonly string[] Filled = ["entry", "session", "bath_work", "session_sheets",
        "movement", "opening"];

    public static string Run(string command, IReadOnlyList<string> arguments)
    {
        using var process = Process.Start(new ProcessStartInfo(command, arguments) { RedirectStandardOutput = true,
            RedirectStandardError = true })!;
        var errors = process.StandardError.ReadToEndAsync();
        var text = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return process.ExitCode == 0
            ? text
            : throw new InvalidOperationException($"{command} {string.Join(' ', arguments)}: {errors.Result}");
    }

    /// <summary>The most memory a process ever held, asked of the kernel through the shell's own accounting.</summary>
    public static double PeakMegabytes(string command, IReadOnlyList<string> arguments)
    {
        const string ask = "import resource,subprocess,sys; subprocess.run(sys.argv[1:], stdout=subprocess.DEVNULL); "
            + "print(resource.getrusage(resource.RUSAGE_CHILDREN).ru_maxrss)";
        return double.Parse(Run("python3", ["-c", ask, command, .. arguments]), CultureInfo.InvariantCulture) / 1024;
    }

    /// <summary>
    /// From the start of tmux with the program in it until the first screen stands there, less tmux's own start.
    /// </summary>
    public static TimeSpan FirstScreen(string binary, string ledger)
    {
        var own = Until("echo ready; sleep 5", "ready");
        var with = Until($"'{binary}' --file '{ledger}'", "Today");
        return with - own;
    }

    private static TimeSpan Until(string command, string text)
    {
        // A server that was just ended may still hold its socket, so each run has one of its own.
        var socket = $"trayledger-benchmark-{Guid.NewGuid():N}";
        var start = Stopwatch.GetTimestamp();
        Run("tmux", ["-L", socket, "new-session", "-d", "-x", "120", "-y", "40", command]);
        try
        {
            while (!Run("tmux", ["-L", socket, "capture-pane", "-p"]).Contains(text, StringComparison.Ordinal))
                Thread.Sleep(1);
            return Stopwatch.GetElapsedTime(start);
        }
        finally
        {
            Run("tmux", ["-L", socket, "kill-server"]);
        }
    }

    /// <summary>
    /// Writes the rows that <paramref name="from"/> has beyond <paramref name="before"/> as INSERT statements in one
    /// transaction.
    /// </summary>
    public static void Dump(string from, string before, string script)
    {
        using var connection = new SqliteConnection($"Data Source={from};Pooling=False");
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = $"ATTACH '{before}' AS before";
        command.ExecuteNonQuery();
        using var text = new StreamWriter(script);
        text.WriteLine("BEGIN IMMEDIATE;");
        foreach (var table in Filled)
        {
            command.CommandText = $"SELECT * FROM main.\"{table}\" EXCEPT SELECT * FROM before.\"{table}\"";
            using var reader = command.ExecuteReader();
            while (reader.Read())
                text.WriteLine(
                    $"INSERT INTO \"{table}\" VALUES ("
                        + $"{string.Join(',', Enumerable.Range(0, reader.FieldCount).Select(i => Literal(reader.GetValue(i))))});");
        }

        text.WriteLine("COMMIT;");
    }

    /// <summary>Lets the shell write into a ledger: its guards ask for a function that only the program has.</summary>
    public static void DropGuards(string ledger)
    {
        const string all =
            "SELECT 'DROP TRIGGER ' || name || ';' FROM sqlite_schema WHERE type = 'trigger' AND name LIKE 'guard%'";
        Run("sqlite3", [ledger, Run("sqlite3", [ledger, all])]);
    }

    private static string Literal(object value) => value switch
    {
        DBNull => "NULL",
        string text => $"'{text.Replace("'", "''", StringComparison.Ordinal)}'",
        _ => Convert.ToString(value, CultureInfo.InvariantCulture)!,
    };
}
