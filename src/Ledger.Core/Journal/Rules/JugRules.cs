using Ledger.Core.Baths;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;

namespace Ledger.Core.Journal.Rules;

/// <summary>Waste jugs: started, filled, handed over. The ledger keeps count; what may go where is not for it to say.</summary>
internal static class JugRules
{
    private const string Caution =
        "how it is disposed of is for the maker's safety data sheet and the local rules to say; used fixer holds silver";

    public static void Post(JugStart start, Draft draft)
    {
        var code = Require.Name(start.Jug, "a jug");
        Require.That(start.Size > default(Volume), $"the size of {code} must be more than nothing");
        if (draft.Holdings.Jug(code) is not null)
            throw new RefusedException(RefusalKind.AlreadyThere, $"jug {code} is in use already; hand it over first or give this one another name");
        var contents = Require.Name(start.Contents, $"what goes into {code}");
        draft.Add(new JugStarted(new()
        {
            Place = draft.NewPlace(), Code = code, Contents = contents, Size = start.Size, StartedOn = start.Date,
        }));
        draft.Show(code, "-", $"empty, {start.Size.ToText(draft.Style)}");
        draft.Summary = $"started jug {code} for {contents}, {start.Size.ToText(draft.Style)}";
    }

    public static void Post(JugFilling filling, Draft draft)
    {
        Require.That(filling.Volume > default(Volume), "the volume must be more than nothing");
        var jug = draft.Jug(filling.Jug);
        var what = Require.Name(filling.What, "what goes into the jug");
        Fill(jug, filling.Volume, what, null, draft);
        draft.Summary = $"{filling.Volume.ToText(draft.Style)} of {what} into jug {jug.Code}";
    }

    public static void Post(JugHandover handover, Draft draft)
    {
        var jug = draft.Jug(handover.Jug);
        var to = Require.Name(handover.To, "where the jug goes");
        draft.Add(new JugHandedOver(jug.Place, jug.Code, to));
        draft.Show(jug.Code, jug.Held.ToText(draft.Style), "handed over");
        draft.Remark(Caution);
        draft.Summary = $"handed over jug {jug.Code} with {jug.Held.ToText(draft.Style)} of {jug.Contents}: {to}";
    }

    public static void Fill(WasteJug jug, Volume volume, string what, BathMaterial? material, Draft draft)
    {
        draft.Add(new JugFilled(jug.Place, volume, what, material));
        draft.Show(jug.Code, jug.Held.ToText(draft.Style), (jug.Held + volume).ToText(draft.Style));
        if (volume > jug.Room)
            draft.Remark($"jug {jug.Code} holds {jug.Size.ToText(draft.Style)} when full and would run over: {jug.Room.ToText(draft.Style)} fit in");
    }
}
