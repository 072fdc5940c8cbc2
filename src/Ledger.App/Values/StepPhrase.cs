using Ledger.Core.Journal;
using Ledger.Core.Measures;
using Ledger.Core.Sessions;
using Ledger.Core.Stock;

namespace Ledger.App.Values;

/// <summary>
/// A step of a process as it is typed: "developer syrup 1+49 in 1250ml for 11 per batch", "stop citric 30g in 1l for 1", "fixer tarnfix in
/// 1.5l reused for 5", "water for 10", "other gloves 2 per session". The amount waits for its item, whose unit it takes.
/// </summary>
/// <param name="Step">The step without its amount.</param>
/// <param name="Amount">What it uses each time, as it was typed.</param>
internal sealed record StepPhrase(ProcessStep Step, Amount? Amount)
{
    public const string Form = "ROLE [ITEM] [DILUTION | AMOUNT] [in VOLUME] [FORMAT=ML] [reused] [for MINUTES] [at CELSIUS] [per batch|sheet|litre] [: NOTE]";

    public static StepPhrase Parse(string text)
    {
        var phrase = new Phrase(text);
        var role = ItemNames.Roles.FirstOrDefault(phrase.TryTakeName)
            ?? throw phrase.Refuse($"a step begins with what it does: {string.Join(", ", ItemNames.Roles)}");
        var does = Text.OneOf<ItemRole>(ItemNames.Roles, "role")(role)!.Value;
        var step = new StepPhrase(new() { Number = 1, Role = does, Per = StepNames.PerUnsaid(does), Note = phrase.Note }, null);
        while (phrase.TryTake(out var word))
            step = step.With(word, phrase);
        return step;
    }

    public ProcessStep At(int number, Holdings holdings) => Step with
    {
        Number = number,
        Amount = Amount?.For(Step.Item is { } code ? holdings.Item(code) : null),
    };

    private StepPhrase With(string word, Phrase phrase) => word.ToLowerInvariant() switch
    {
        "in" => Now(Step with { WorkingVolume = Text.Volume(phrase.Take("the volume after \"in\"") + phrase.TakeUnit()) }),
        "for" => Now(Step with { Minutes = Minutes(phrase.Take("the minutes after \"for\"")) }),
        "at" => Now(Step with { Celsius = Celsius(phrase.Take("the temperature after \"at\"")) }),
        "per" => Now(Step with { Per = Per(phrase.Take("what it is counted for, after \"per\"")) }),
        "reused" or "one-shot" => Now(Step with { Use = Text.OneOf<StepUse>(StepNames.Uses, "use")(word)!.Value }),
        _ when word.Contains('=', StringComparison.Ordinal) => Now(Step with { VolumesByFormat = Volumes(word, phrase) }),
        _ when Step.Item is null && word.AsSpan().IndexOfAny('+', ':') < 0 && Amount.TryParse(word) is null =>
            Now(Step with { Item = word }),
        _ when word.AsSpan().IndexOfAny('+', ':') > 0 => Now(Step with { Dilution = Dilution.Parse(word) }),
        _ when Amount is null && char.IsAsciiDigit(word[0]) => this with { Amount = Amount.Parse(word + phrase.TakeUnit()) },
        _ => throw phrase.Refuse($"\"{word}\" has no place here; a step is written as {Form}"),
    };

    private StepPhrase Now(ProcessStep step) => this with { Step = step };

    private static StepPer Per(string word) => Text.OneOf<StepPer>(StepNames.Pers, "measure")(word)!.Value;

    private FormatVolumes Volumes(string word, Phrase phrase) => FormatVolumes.Read($"{Step.VolumesByFormat} {word}")
        ?? throw phrase.Refuse($"\"{word}\" is no volume of a format; write {FormatVolumes.Accepted}");

    private static decimal? Celsius(string word) => Text.Number(word.TrimEnd('c', 'C', '°'));

    private static decimal? Minutes(string word) =>
        Text.Number(word.EndsWith("min", StringComparison.OrdinalIgnoreCase) ? word[..^3] : word);
}
