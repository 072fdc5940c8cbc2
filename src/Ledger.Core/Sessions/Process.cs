using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Core.Sessions;

/// <summary>A named recipe of steps.</summary>
/// <param name="Id">Its number, once the ledger has one.</param>
/// <param name="Name">Its name.</param>
/// <param name="Steps">The steps in order.</param>
public sealed record Process(ProcessId Id, string Name, IReadOnlyList<ProcessStep> Steps)
{
    /// <summary>How often it has been defined so far: a session remembers which version it was run with.</summary>
    public int Version { get; init; } = 1;

    /// <summary>The name of this version: "film", then "film, version 2".</summary>
    public string VersionName => NameOf(Name, Version);

    /// <summary>The name of a process's version.</summary>
    public static string NameOf(string name, int version) => version <= 1 ? name : $"{name}, version {version}";

    /// <summary>The process with each item's usual dilution, which counts where a step says none.</summary>
    /// <param name="item">Finds an item.</param>
    public Process Knowing(Func<string, Item> item) => this with
    {
        Steps = [
            .. Steps.Select(step => step.Item is { } code ? step with { UsualDilution = item(code).Dilution } : step)],
    };

    /// <summary>The step that develops, if there is one.</summary>
    public ProcessStep? Developer => Steps.FirstOrDefault(step => step.Role == ItemRole.Developer);

    /// <summary>The steps whose bath is used again.</summary>
    public IEnumerable<ProcessStep> Reused => Steps.Where(step => step.Use == StepUse.Reused);

    /// <summary>
    /// The steps that use something up, apart from the developer that is measured out for each batch: part B comes with
    /// part A where the item names it.
    /// </summary>
    public IEnumerable<ProcessStep> UsedUp =>
        Steps.Where(step => step is { Use: StepUse.OneShot, Item: not null }
            && !(ReferenceEquals(step, Developer) && step.IsByVolume));
}

/// <summary>One step of a process: a tray, a wash, or a supply that is used up.</summary>
public sealed record ProcessStep
{
    /// <summary>Its position, counting from 1.</summary>
    public required int Number { get; init; }

    /// <summary>What the step does.</summary>
    public required ItemRole Role { get; init; }

    /// <summary>The code of the item it uses; null for plain tap water.</summary>
    public string? Item { get; init; }

    /// <summary>
    /// How the item is diluted; null for its usual dilution, and where <see cref="Amount"/> says how much is used.
    /// </summary>
    public Dilution? Dilution { get; init; }

    /// <summary>
    /// The item's usual dilution, which counts where the step says none; null when the item has none either.
    /// </summary>
    public Dilution? UsualDilution { get; init; }

    /// <summary>The working solution in the tray.</summary>
    public Volume? WorkingVolume { get; init; }

    /// <summary>
    /// How much of the item is used per <see cref="Per"/>; otherwise the dilution of the working volume says so.
    /// </summary>
    public Quantity? Amount { get; init; }

    /// <summary>Whether it is poured away or used again.</summary>
    public StepUse Use { get; init; }

    /// <summary>What the amount is used for.</summary>
    public StepPer Per { get; init; }

    /// <summary>
    /// Working volumes of formats that use another tray than <see cref="WorkingVolume"/> says; may be null.
    /// </summary>
    public FormatVolumes? VolumesByFormat { get; init; }

    /// <summary>The temperature in degrees Celsius; null where it does not matter.</summary>
    public decimal? Celsius { get; init; }

    /// <summary>How long it lasts, in minutes; null where it does not matter.</summary>
    public decimal? Minutes { get; init; }

    /// <summary>The user's note.</summary>
    public string Note { get; init; } = "";

    /// <summary>What the step draws from its item each time; null for a step that draws nothing.</summary>
    public Quantity? AmountEach => AmountFor(null);

    /// <summary>Whether it is measured out by volume: a powder is not.</summary>
    public bool IsByVolume => Amount is null or { Unit: Unit.Millilitre };

    /// <summary>The working solution in the tray for a format.</summary>
    public Volume? WorkingVolumeFor(Format? format) =>
        (format is null ? null : VolumesByFormat?.Of(format)) ?? WorkingVolume;

    /// <summary>
    /// The working solution in a tray that all the batches of a session go through: that of the format which asks for
    /// most.
    /// </summary>
    public Volume? WorkingVolumeFor(IEnumerable<TrayLoad> batches) => WorkingVolumeFor(Largest(batches));

    /// <summary>
    /// What the session draws from the step's item: once, for each batch, for each sheet, or for each litre in the
    /// tray.
    /// </summary>
    public Quantity? DrawnFor(IReadOnlyList<TrayLoad> batches)
    {
        var largest = Largest(batches);
        return AmountFor(largest) is not { } each ? null : each with
        {
            Base = Per switch
            {
                StepPer.Batch => batches.Sum(batch => AmountFor(batch.Format)!.Value.Base),
                StepPer.Sheet => batches.Sum(batch => AmountFor(batch.Format)!.Value.Base * batch.Sheets),
                StepPer.Litre => PerLitre(each.Base, WorkingVolumeFor(largest)),
                _ => each.Base,
            },
        };
    }

    /// <summary>
    /// All that the session draws for the step: of its item, and of the items that are its other parts.
    /// </summary>
    /// <param name="item">The step's item.</param>
    /// <param name="batches">What lies in the trays together.</param>
    public IEnumerable<(string Item, Quantity Amount)> Drawn(Item item, IReadOnlyList<TrayLoad> batches)
    {
        var first = DrawnFor(batches)!.Value;
        yield return (item.Code, first);
        foreach (var part in first.Unit == Unit.Millilitre ? OthersBeside(item, first) : [])
            if (part.Item is { } code)
                yield return (code, Quantity.Of(part.Measured));
    }

    /// <summary>Parts B, C… of the step's dilution beside so much of its item.</summary>
    public IReadOnlyList<OtherPart> OthersBeside(Item item, Quantity first) =>
        OtherPart.Beside(item, Dilution ?? item.Dilution, Volume.FromMicrolitres(first.Base));

    /// <summary>What goes into such a tray each time it is filled.</summary>
    public Quantity? AmountIn(IEnumerable<TrayLoad> batches) => AmountFor(Largest(batches));

    /// <summary>So much for each litre, to the nearest base unit; once where no volume is known.</summary>
    public static long PerLitre(long amount, Volume? volume) =>
        Share.Nearest(amount, (volume ?? Volume.FromMillilitres(1000)).Microlitres, 1_000_000);

    private Quantity? AmountFor(Format? format) => Amount
        ?? (WorkingVolumeFor(format) is { } volume
            ? Quantity.Of((Dilution ?? UsualDilution ?? Dilution.Undiluted).SourceIn(volume))
            : null);

    private Format? Largest(IEnumerable<TrayLoad> batches) =>
        batches.OrderByDescending(batch => WorkingVolumeFor(batch.Format)?.Microlitres).Select(batch => batch.Format)
            .FirstOrDefault();
}

/// <summary>What lies in a tray together.</summary>
/// <param name="Format">Its format.</param>
/// <param name="Sheets">How many sheets or rolls, without a dummy.</param>
public readonly record struct TrayLoad(Format? Format, int Sheets);

/// <summary>Whether a solution is used once or again.</summary>
public enum StepUse
{
    /// <summary>Poured away after the batch or session.</summary>
    OneShot,

    /// <summary>Kept as a bath.</summary>
    Reused,
}

/// <summary>What an amount is counted for.</summary>
public enum StepPer
{
    /// <summary>Once for each session.</summary>
    Session,

    /// <summary>Once for each batch.</summary>
    Batch,

    /// <summary>Once for each sheet.</summary>
    Sheet,

    /// <summary>Once for each litre of the step's working volume.</summary>
    Litre,
}

/// <summary>The names of a step's settings as they stand in CSV and JSON.</summary>
public static class StepNames
{
    /// <summary>one-shot, reused.</summary>
    public static IReadOnlyList<string> Uses { get; } = ["one-shot", "reused"];

    /// <summary>session, batch, sheet, litre.</summary>
    public static IReadOnlyList<string> Pers { get; } = ["session", "batch", "sheet", "litre"];

    /// <summary>The use's name.</summary>
    public static string Name(this StepUse use) => Uses[(int)use];

    /// <summary>
    /// What is meant where a step does not say it: a developer is measured out for each batch, anything else once a
    /// session.
    /// </summary>
    public static StepPer PerUnsaid(ItemRole role) => role == ItemRole.Developer ? StepPer.Batch : StepPer.Session;

    /// <summary>The name of what an amount is counted for.</summary>
    public static string Name(this StepPer per) => Pers[(int)per];
}
