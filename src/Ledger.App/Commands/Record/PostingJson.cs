using Ledger.App.Output;
using Ledger.App.Wiring;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Kinds;

namespace Ledger.App.Commands.Record;

/// <summary>
/// What an entry changed, as JSON: its number (null in a dry run), what was said, which `record KIND --input` takes again, every bottle, box and
/// bath before and after, and what the user should know.
/// </summary>
internal static class PostingJson
{
    public static void Write(long? number, Posting posting, ReadingTerms terms, Surroundings around) => JsonText.Write(around.Out, json =>
    {
        if (number is { } written)
            json.WriteNumber("entry", written);
        else
            json.WriteNull("entry");
        json.WriteString("summary", posting.Summary);
        json.WritePropertyName("said");
        EntryJson.Write(posting.Entry, terms with { IsTyped = false }, json);
        json.WriteStartArray("changes");
        foreach (var effect in posting.Effects)
        {
            json.WriteStartObject();
            json.WriteString("what", effect.What);
            json.WriteString("before", effect.Before);
            json.WriteString("after", effect.After);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("remarks");
        foreach (var remark in posting.Remarks)
            json.WriteStringValue(remark);
        json.WriteEndArray();
    });
}
