using Ledger.Core.Sessions;

namespace Ledger.App.Values;

/// <summary>Sheets to plan as they are typed: "4 fen80 N", "2 fen80 N-1 in E04: mill race", "3 fen80 from fen80 N".</summary>
internal static class PlanPhrase
{
    public const string Form = "COUNT FILM [GROUP] [in HOLDER] [from WHERE] [: SUBJECT]";

    public static RequestedSheets Parse(string text)
    {
        var phrase = new Phrase(text);
        var sheets = new RequestedSheets
        {
            Count = Text.Whole(phrase.Take("how many sheets or rolls"))!.Value,
            Film = phrase.Take("the film"),
            Subject = phrase.Note,
        };
        while (phrase.TryTake(out var word))
            sheets = word.ToLowerInvariant() switch
            {
                "in" => sheets with { Holder = phrase.Take("the holder after \"in\"") },
                "from" => sheets with { From = Rest(phrase) },
                "group" => sheets with { Group = phrase.Take("the group after \"group\"") },
                _ when sheets.Group.Length == 0 => sheets with { Group = word },
                _ => throw phrase.Refuse($"\"{word}\" has no place here; sheets are written as {Form}"),
            };
        return sheets;
    }

    /// <summary>Holder sides, a box of exposed sheets or sheets by number: all words that are left.</summary>
    private static string Rest(Phrase phrase)
    {
        var words = new List<string> { phrase.Take("the holder sides or the box of exposed sheets after \"from\"") };
        while (phrase.TryTake(out var word))
            words.Add(word);
        return string.Join(' ', words);
    }

    /// <summary>Developing times as they are typed.</summary>
    public static GroupTimes Times(string text) => GroupTimes.Read(text)
        ?? throw new FormatException($"\"{text}\" are no developing times; write {GroupTimes.Accepted}");
}
