using Ledger.Core.Journal;
using Ledger.Terminal.Screens;

namespace Ledger.Terminal.Forms;

/// <summary>A refusal as a form says it.</summary>
internal static class Spoken
{
    /// <summary>The rules' sentence; where it names the command's option, the form's tick stands in its place.</summary>
    public static string Of(Refusal refusal) =>
        Words.Sentence(refusal.Sentence.Replace("book the difference with --book-difference", "F6 books the difference", StringComparison.Ordinal));
}
