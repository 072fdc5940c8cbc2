using Ledger.Core.Journal;

namespace Ledger.Terminal.Blocks;

/// <summary>A refusal as a form says it.</summary>
internal static class RefusalText
{
    private const string Option = "book the difference with --book-difference";

    /// <summary>The rules' sentence; where it names the command's option, the form's tick stands in its place.</summary>
    public static string Of(Refusal refusal) =>
        ScreenText.Sentence(refusal.Sentence
            .Replace(Option, "F6 books the difference", StringComparison.Ordinal)
            .Replace("record it with --anyway", "F6 records it", StringComparison.Ordinal));
}
