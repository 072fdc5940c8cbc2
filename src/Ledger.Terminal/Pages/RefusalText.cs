using System.Text.RegularExpressions;
using Ledger.Terminal.Blocks;

namespace Ledger.Terminal.Pages;

/// <summary>
/// A refusal as a form says it: where the rules name a command or an option, the key stands in its place that does the
/// same here.
/// </summary>
internal static partial class RefusalText
{
    private static readonly (string Said, string Here)[] Ways =
    [
        ("book the difference with --book-difference", "F6 books the difference"),
        ("record it with --anyway", "F6 records it"),
        ("`show journal --json` lists them", $"{MainDigits.To("Journal")} lists them"),
        ("`show journal` lists them", $"{MainDigits.To("Journal")} lists them"),
        ("`show shelf` lists them", $"{MainDigits.To("Shelf")} lists them"),
        ("`show holders` lists them", $"{MainDigits.To("Holders")} lists them"),
        ("`show sessions` lists them", $"{MainDigits.To("Sessions")} lists them"),
        ("`show today --json` names what each is about", $"{MainDigits.To("Today")} shows what each is about"),
        ("mix one with --material paper first", $"{KeyTable.Bath.Letter} mixes one"),
        ("`record plan-ending`", "Give plan up (F2 finds it)"),
    ];

    /// <summary>The rules' sentence, in the words of the screens.</summary>
    public static string Of(Refusal refusal) => Of(refusal.Sentence);

    /// <summary>Any sentence that tells what to do, in the words of the screens.</summary>
    public static string Of(string sentence) => ScreenText.Sentence(Words(sentence));

    /// <summary>The same, as a part of a sentence.</summary>
    public static string Words(string sentence)
    {
        foreach (var (said, here) in Ways)
            sentence = sentence.Replace(said, here, StringComparison.Ordinal);
        sentence = OfItem().Replace(sentence, $"{KeyTable.Amend.Letter} on the Shelf ($1)");
        sentence = OfStorage().Replace(sentence, $"{KeyTable.Move.Letter} at the boxes of the Shelf: $1");
        sentence = OfCount().Replace(sentence, $"({KeyTable.Count.Letter} on the Shelf: $1)");
        sentence = OfKind().Replace(sentence,
            kind => $"F2 finds {EntryKinds.Named(kind.Groups[1].Value)?.Title ?? kind.Groups[1].Value}");
        return OfOption().Replace(OfShow().Replace(sentence, "$1 (F2 finds it)"), " its field \"$1\"");
    }

    [GeneratedRegex("`record item (\\S+) --[a-z-]+( [A-Z]+)?`")]
    private static partial Regex OfItem();

    [GeneratedRegex("`record storage (\\S+) --to \\S+`")]
    private static partial Regex OfStorage();

    /// <summary>Whatever else can be recorded has its form in the list of actions.</summary>
    [GeneratedRegex("`record ([a-z-]+)[^`]*`?")]
    private static partial Regex OfKind();

    [GeneratedRegex("`show ([a-z-]+)[^`]*`?")]
    private static partial Regex OfShow();

    [GeneratedRegex(" (?:with )?--([a-z-]+)")]
    private static partial Regex OfOption();

    [GeneratedRegex("`record count (\\S+ \\S+) --reason \\.\\.\\.`")]
    private static partial Regex OfCount();
}
