namespace Ledger.Core.Tests.Journal.Rules;

public sealed class DefinitionTests
{
    private readonly InMemoryLedger _ledger = Shelves.Empty();

    [Fact]
    public void An_item_gets_a_number_and_keeps_it()
    {
        var id = _ledger.Holdings.Item("syrup")!.Id;
        _ledger.Post(Some.Definition(Some.Syrup with { Code = "SYRUP", Name = "Brackwater Syrup II", Formula = "2" }));
        var item = _ledger.Holdings.Item("syrup")!;
        Assert.Equal((id, "syrup", "Brackwater Syrup II", "2"), (item.Id, item.Code, item.Name, item.Formula));
        Assert.Equal(6, _ledger.Holdings.Items.Select(known => known.Id).Distinct().Count());
    }

    [Fact]
    public void A_process_is_defined_anew_under_its_name()
    {
        _ledger.Post(Some.Process("PM", [.. Some.Steps.Reverse().Take(4)]));
        var process = Assert.Single(_ledger.Holdings.Processes);
        Assert.Equal(("pm", 1L), (process.Name, process.Id.Value));
        Assert.Equal([2, 3, 4, 5], process.Steps.Select(step => step.Number));
    }

    [Theory]
    [InlineData("liquids", "floz", "33.81 fl oz")]
    [InlineData("liquids", "ml", "1000 ml")]
    public void A_setting_changes_what_is_read(string setting, string value, string bottle)
    {
        _ledger.Post($"setting setting={setting} value={value}");
        Assert.Equal(bottle, _ledger.Post("delivery item=syrup").Effects.Single().After);
    }

    [Fact]
    public void A_process_needs_steps_of_different_numbers()
    {
        Assert.Equal("process pm has no steps; give it at least one", Refusal([]));
        Assert.StartsWith(
            "process pm develops in two steps", Refusal([Some.Steps[0], Some.Steps[0] with { Number = 2 }]),
            StringComparison.Ordinal);
        Assert.Equal("process pm has two steps of the same number; number them from 1 on",
            Refusal([Some.Steps[0], Some.Steps[1] with { Number = 1 }]));
    }

    [Fact]
    public void A_step_must_say_what_it_uses()
    {
        var (developer, stop) = (Some.Steps[0], Some.Steps[1]);
        Assert.Contains("there is no item \"nothing\"", Refusal([stop with { Item = "nothing" }]),
            StringComparison.Ordinal);
        Assert.Equal("stop is kept in g, not in ml", Refusal([stop with { Amount = Quantity.Of(5, Unit.Millilitre) }]));
        Assert.Equal(
            "step 2 of process pm needs an amount, or a working volume with a dilution",
            Refusal([stop with { Amount = null }]));
        Assert.Equal(
            "stop is kept in g, not in ml",
            Refusal([stop with { Amount = null, WorkingVolume = Volume.FromMillilitres(1000) }]));
        Assert.Equal(
            "the amount of step 2 of process pm must be more than nothing, not -5 g",
            Refusal([stop with { Amount = Quantity.Of(-5, Unit.Gram) }]));
        Assert.Equal("step 0 of process pm must have a number from 1 on", Refusal([stop with { Number = 0 }]));
        Assert.Equal("the minutes of step 2 of process pm must be from 0 to 10000",
            Refusal([stop with { Minutes = -1 }]));
        _ledger.Post(Some.Definition(Some.Syrup with { Dilution = null }));
        Assert.Equal("step 1 of process pm develops and needs a dilution, such as 1+39", Refusal([developer]));
    }

    [Fact]
    public void Nothing_that_a_step_says_is_passed_over_in_silence()
    {
        var (developer, stop) = (Some.Steps[0], Some.Steps[1]);
        Assert.Equal(
            "step 1 of process pm develops, and a one-shot developer is measured out per batch, sheet or litre; one "
                + "that serves a whole session is a bath: write reused",
            Refusal([developer with { Per = StepPer.Session }]));
        Assert.Equal(
            "step 1 of process pm is diluted into its working volume, which is filled per session or batch; per litre "
                + "needs an amount",
            Refusal([developer with { Per = StepPer.Litre }]));
        Assert.Equal("step 2 of process pm counts per litre and needs the working volume",
            Refusal([stop with { Per = StepPer.Litre }]));
        Assert.Equal(
            "step 2 of process pm says how much, but not of what; name the item",
            Refusal([stop with { Item = null, Amount = Quantity.Of(5, Unit.Millilitre) }]));
        Assert.Null(Refusal([developer with { Per = StepPer.Session, Use = StepUse.Reused }]));
    }

    private string? Refusal(IReadOnlyList<ProcessStep> steps) =>
        (_ledger.Preview(Some.Process(steps: steps)) as Refused)?.Refusal.Sentence;
}
