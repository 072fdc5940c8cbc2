using System.Globalization;
using Ledger.Core.Keeping;

namespace Ledger.Terminal.Forms;

/// <summary>How long an item keeps.</summary>
internal sealed class ItemKeepingFields
{
    /// <summary>The fields of a chemical, row by row.</summary>
    public IReadOnlyList<IReadOnlyList<FormField>> Rows => [[Sealed, Opened, BelowHalf], [Mixed, PartFull], [Lid, Tray]];

    public FormField Sealed { get; } = new("Days sealed", 6, FieldKind.Figure) { Hint = "From its delivery; the printed date may come first." };

    public FormField Opened { get; } = new("opened", 6, FieldKind.Figure) { Hint = "Days from its opening." };

    public FormField BelowHalf { get; } = new("below half", 6, FieldKind.Figure) { Hint = "Days from when it fell below half full." };

    public FormField Mixed { get; } = new("Days mixed", 6, FieldKind.Figure) { Hint = "Of the working solution in a full closed bottle." };

    public FormField PartFull { get; } = new("part-full", 6, FieldKind.Figure) { Hint = "Days of the working solution in a part-full bottle." };

    public FormField Lid { get; } = new("Days, lid", 6, FieldKind.Figure) { Hint = "Of the working solution under a floating lid." };

    public FormField Tray { get; } = new("hours in a tray", 6, FieldKind.Figure) { Hint = "Of the working solution, open to the air." };

    /// <summary>Shows what is known.</summary>
    public void Offer(KeepingLimits limits)
    {
        Offer(Sealed, limits.SealedDays);
        Offer(Opened, limits.OpenedFullDays);
        Offer(BelowHalf, limits.OpenedPartDays);
        Offer(Mixed, limits.WorkingFullDays);
        Offer(PartFull, limits.WorkingPartDays);
        Offer(Lid, limits.FloatingLidDays);
        Offer(Tray, limits.TrayHours);
    }

    /// <summary>What was written.</summary>
    public KeepingLimits Read(Answers answers) => new(
        answers.OptionalWhole(Sealed), answers.OptionalWhole(Opened), answers.OptionalWhole(BelowHalf), answers.OptionalWhole(Mixed),
        answers.OptionalWhole(PartFull), answers.OptionalWhole(Tray), answers.OptionalWhole(Lid));

    private static void Offer(FormField field, int? days) => field.Offer(days?.ToString(CultureInfo.InvariantCulture));
}
