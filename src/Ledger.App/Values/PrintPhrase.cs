using Ledger.Core.Journal.Entries;
using Ledger.Core.Sessions;

namespace Ledger.App.Values;

/// <summary>
/// Paper as it is typed: "3 fibre-vc final", "2 fibre-vc work: too dark", "1 fibre-vc strip 3 of 4", "0 fibre-vc strip 1 of 4".
/// </summary>
internal static class PrintPhrase
{
    public const string Form = "COUNT PAPER [final|work|strip] [STRIPS of STRIPS-A-SHEET] [from BOX] [: NOTE]";

    public static PrintLine Parse(string text)
    {
        var phrase = new Phrase(text);
        var line = new PrintLine
        {
            Sheets = Text.Whole(phrase.Take("how many sheets"))!.Value,
            Item = phrase.Take("the paper"),
            Note = phrase.Note,
        };
        var purpose = Text.OneOf<PrintPurpose>(PrintPurposes.Names, "purpose");
        while (phrase.TryTake(out var word))
            line = word.ToLowerInvariant() switch
            {
                "from" => line with { Container = phrase.Take("the box after \"from\"") },
                "of" => line with { StripsPerSheet = Text.Whole(phrase.Take("the strips a sheet is cut into"))!.Value },
                _ when char.IsAsciiDigit(word[0]) => line with { Strips = Text.Whole(word)!.Value },
                _ => line with { Purpose = purpose(word)!.Value },
            };
        return line;
    }
}
