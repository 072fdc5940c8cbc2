using Ledger.Terminal.Blocks;

namespace Ledger.Terminal.Forms;

/// <summary>
/// A bath is discarded, or stock is unused: a bath goes whole, only liquids go into a jug, and why a usable bath goes
/// is asked.
/// </summary>
/// <param name="ledger">The ledger.</param>
/// <param name="what">What it is about.</param>
/// <param name="why">Why a bath goes that could still be used, where the step that opens the form knows it.</param>
internal sealed class DiscardForm(ILedger ledger, string what, string? why = null)
    : KindForm(ledger, "discard", ("what", what), ("reason", why))
{
    protected override bool Asks(Field field) => field.Name switch
    {
        "quantity" => !IsBath,
        "jug" or "to" => IsBath || Terms.UnitOf(this["what"].Text.Trim()) == Unit.Millilitre,
        _ => true,
    };

    protected override IReadOnlyList<Block> More(Posting posting) =>
        posting.Entry is Discard && Usable is { } reading
            ? [Block.Of("Before you discard it", $"  {Good(reading)}.")]
            : [];

    /// <summary>Why a bath that could be used goes, only the user knows.</summary>
    protected override string Told(FieldProblem problem) =>
        problem is { Field.Name: "reason", Found: "" } && Usable is { } reading
            ? $"{this["reason"].Label}: {Good(reading)}; write why it is discarded"
            : base.Told(problem);

    private bool IsBath => Holdings.Bath(this["what"].Text.Trim()) is not null;

    private BathReading? Usable =>
        Holdings.Bath(this["what"].Text.Trim()) is { } bath
            && new BathReading(bath, Holdings.AsOf) is { IsUnusable: false } reading ? reading : null;

    private static string Good(BathReading reading) => reading.GoodUntil is { } good
        ? $"{reading.Bath.Code} is good until {Dates.Text(good.Date)}"
        : $"{reading.Bath.Code} is usable";
}
