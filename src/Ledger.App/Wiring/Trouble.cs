using System.Data.Common;
using Ledger.Storage.Files;

namespace Ledger.App.Wiring;

/// <summary>
/// What went wrong, as an exit status and a sentence: never a library's text, never a report of the runtime's.
/// </summary>
internal static class Trouble
{
    /// <summary>The variable that asks for faults to be explained in full.</summary>
    public const string Variable = "TRAYLEDGER_TRACE";

    /// <summary>Whether faults are to be explained in full.</summary>
    public static bool IsTraced(Func<string, string?> variable) => variable(Variable) == "1";

    /// <summary>The status and the sentence; the sentence is empty where nothing need be said.</summary>
    /// <param name="exception">What went wrong.</param>
    /// <param name="bench">What the command has written, and which signal came.</param>
    public static (int Status, string Sentence) Of(Exception exception, Workbench bench)
    {
        var written = bench.Written ?? "nothing was recorded";
        return exception switch
        {
            OutputLostException { HasReaderLeft: true } when bench.Written is null => (ExitStatus.ReaderLeft, ""),
            OutputLostException lost => (ExitStatus.UnusableFile, $"{lost.Message}; {written}"),
            FormatException wrong => (ExitStatus.WrongCommandLine, wrong.Message),
            RefusedByCommandException refused => (ExitStatus.Refused, refused.Message),
            LedgerFileException unusable =>
                (ExitStatus.UnusableFile, IsTraced(bench.Around.Variable) ? $"{unusable}" : unusable.Message),
            DbException => (ExitStatus.UnusableFile,
                "the ledger cannot be read to its end; `trayledger check` says what is wrong with it, and a backup can "
                    + "be put back"),
            IOException or UnauthorizedAccessException => (ExitStatus.UnusableFile, FileTrouble.Sentence(exception)),
            TypeInitializationException { InnerException: DllNotFoundException } or DllNotFoundException =>
                (ExitStatus.UnusableFile,
                $"SQLite's library is missing: it belongs into {AppContext.BaseDirectory}, beside the program, "
                + "as it came with it; install trayledger again, or copy the library there"),
            OperationCanceledException =>
                (ExitStatus.StoppedBy(bench.Around.Signal()),
                    $"stopped; {bench.Written ?? "nothing of it was written"}"),
            _ => (ExitStatus.Fault, Fault(exception, written, IsTraced(bench.Around.Variable))),
        };
    }

    /// <summary>The sentence about a fault of the program.</summary>
    public static string Fault(Exception fault, string written, bool isTraced) => isTraced
        ? $"this is a fault of the program; {written}: {fault}"
        : $"this is a fault of the program ({fault.GetType().Name}); {written}. With {Variable}=1 it tells where it "
            + "happened";
}
