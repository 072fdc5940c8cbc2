using System.Text.Json;

namespace Ledger.Storage.Files;

/// <summary>Says in a sentence what SQLite's error codes mean for the user's file.</summary>
internal static class Trouble
{
    private const int Perm = 3, Busy = 5, Locked = 6, ReadOnly = 8, InputOutput = 10, Corrupt =
        11, Full = 13, CannotOpen = 14, NotADatabase = 26;

    /// <summary>
    /// The index of the log, which reading needs too, could not be given its size (SQLITE_IOERR_SHMSIZE): there is no
    /// room for it.
    /// </summary>
    private const int NoRoomForIndex = 10 | (19 << 8);

    public static LedgerFileException With(string path, SqliteException trouble) => new(
        trouble.SqliteErrorCode switch
        {
            InputOutput when trouble.SqliteExtendedErrorCode == NoRoomForIndex =>
                $"the disk of {path} is full, and to read a ledger needs a little room beside it too; nothing was "
                    + "changed. Make room and try again",
            Busy or Locked =>
                $"{path} is locked by another program that is writing to it; wait for it to finish and try again",
            ReadOnly or Perm =>
                $"{path} cannot be written to; nothing was changed. Check the rights of the file and of its folder",
            Full => $"the disk of {path} is full; nothing was changed. Make room and try again",
            InputOutput => $"{path} could not be read or written; nothing was changed. Check the disk",
            Corrupt => $"{path} is damaged; restore a backup with `trayledger backup --restore FILE`",
            NotADatabase => $"{path} is not a ledger: it is not an SQLite file. Name another file with --file",
            CannotOpen => $"{path} cannot be opened; check that its folder exists and that you may write there",
            _ => $"{path} cannot be used: SQLite refuses it with its error {trouble.SqliteExtendedErrorCode}",
        },
        trouble);

    /// <summary>Whether somebody else has it locked.</summary>
    public static bool IsBusy(SqliteException trouble) => trouble.SqliteErrorCode is Busy or Locked;

    /// <summary>Whether the file is damaged, or no database.</summary>
    public static bool IsDamage(SqliteException trouble) => trouble.SqliteErrorCode is Corrupt or NotADatabase;

    /// <summary>Whether the file, its folder or its disk refuses to be written to.</summary>
    public static bool IsRefusal(SqliteException trouble) => trouble.SqliteErrorCode is ReadOnly or Perm or CannotOpen;

    /// <summary>Whether it is the file's or the disk's fault, and not that of what was asked.</summary>
    public static bool IsOfTheFile(SqliteException trouble) =>
        IsBusy(trouble) || IsDamage(trouble) || IsRefusal(trouble) || trouble.SqliteErrorCode is InputOutput or Full;

    /// <summary>
    /// Whether it came of a value that a reader could not make sense of: missing, of another type, or outside of what
    /// it may be. Nothing the program writes is like that, since each table refuses it; a damaged or altered file can
    /// be.
    /// </summary>
    public static bool IsOfAValue(Exception trouble) =>
        trouble is InvalidCastException or FormatException or OverflowException or InvalidOperationException
            or ArgumentException
            or KeyNotFoundException or JsonException;

    /// <summary>Runs a reader; a value that it cannot make sense of comes out as a sentence about the file.</summary>
    public static T GuardValues<T>(string path, Func<T> read)
    {
        try
        {
            return read();
        }
        catch (Exception trouble) when (IsOfAValue(trouble))
        {
            throw new LedgerFileException(
                $"{path} is damaged or was altered: it holds a value that cannot be read. `trayledger check` says what "
                    + "is wrong with it; restore a backup with `trayledger backup --restore FILE`",
                trouble);
        }
    }

    /// <summary>
    /// Runs a reading of the whole: values that can be read one by one, but give no figure together, come out as a
    /// sentence about the file. A wrong format is not meant: inside a reading it is what the user typed.
    /// </summary>
    public static T GuardFigures<T>(string path, Func<T> read)
    {
        try
        {
            return read();
        }
        catch (Exception trouble) when (IsOfAValue(trouble) && trouble is not FormatException)
        {
            throw new LedgerFileException(
                $"what {path} holds gives no figure here ({trouble.GetType().Name}): a value in it was altered or is "
                    + "far too large, or this is a fault of the program. `trayledger check` looks for such values; a "
                    + "backup can be put back with `trayledger backup --restore FILE`",
                trouble);
        }
    }

    /// <summary>Runs something on the file; what goes wrong with the file comes out as a sentence.</summary>
    public static T Guard<T>(string path, Func<T> work)
    {
        try
        {
            return work();
        }
        catch (SqliteException trouble)
        {
            throw With(path, trouble);
        }
    }
}
