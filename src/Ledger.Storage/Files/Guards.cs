namespace Ledger.Storage.Files;

/// <summary>
/// Triggers that refuse every change to a ledger's tables which does not come from this program: what happened, what
/// is derived from it, and definitions alike. They are made from the tables that are there, so no table can be
/// forgotten. The program passes by a function on its connections; another program lacks it, and its name is what that
/// program is told. INSERT is guarded too, since INSERT OR REPLACE deletes rows without the triggers for DELETE.
/// </summary>
internal static class Guards
{
    /// <summary>How the names of all guards begin, and of nothing else.</summary>
    public const string Prefix = "guard_";

    private const string Function = "only_trayledger_writes_here";
    private static readonly string[] Acts = ["DELETE", "INSERT", "UPDATE"];

    /// <summary>Lets a connection of the program write.</summary>
    public static void Pass(SqliteConnection connection) =>
        connection.CreateFunction(Function, () => 1L, isDeterministic: true);

    /// <summary>Takes every guard away, so that migrations may change tables.</summary>
    public static void Drop(SqliteConnection connection)
    {
        foreach (var name in connection.Texts(
            $"SELECT name FROM sqlite_schema WHERE type = 'trigger' AND substr(name, 1, {Prefix.Length}) = '{Prefix}'"))
            connection.Run($"DROP TRIGGER \"{name}\"");
    }

    /// <summary>Guards every table, in place of the guards that are there.</summary>
    public static void Create(SqliteConnection connection)
    {
        Drop(connection);
        foreach (var table in connection.Texts(
            $"SELECT name FROM sqlite_schema WHERE type = 'table' AND {Schema.IsTheLedgers} ORDER BY name"))
            foreach (var act in Acts)
                connection.Run(
                    $"""
                    CREATE TRIGGER "{Prefix}{table}_{act.ToLowerInvariant()}"
                    BEFORE {act} ON "{table}" WHEN {Function}() IS NOT 1
                    BEGIN
                        SELECT RAISE(ABORT,
                            'only trayledger changes {table}; to change what was recorded, record an undo');
                    END
                    """);
    }
}
