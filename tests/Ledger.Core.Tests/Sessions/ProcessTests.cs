namespace Ledger.Core.Tests.Sessions;

public sealed class ProcessTests
{
    private static readonly Process Process = new(new(1), "pm", Some.Steps);

    [Fact]
    public void Its_steps_are_the_developer_what_is_used_again_and_what_is_used_up()
    {
        Assert.Equal("syrup", Process.Developer?.Item);
        Assert.Equal(["fix"], Process.Reused.Select(step => step.Item));
        Assert.Equal(["stop", "gloves"], Process.UsedUp.Select(step => step.Item));
    }

    [Fact]
    public void A_step_draws_its_amount_or_what_its_dilution_asks_for()
    {
        var step = new ProcessStep { Number = 1, Role = ItemRole.WettingAgent, Item = "x",
            WorkingVolume = Volume.FromMillilitres(1000) };
        Assert.Equal("1000 ml", step.AmountEach.ToString());
        Assert.Equal("5 ml", (step with { Dilution = Dilution.Parse("1+199") }).AmountEach.ToString());
        Assert.Equal("7 ml", (step with { Amount = Quantity.Of(7, Unit.Millilitre) }).AmountEach.ToString());
        Assert.Null((step with { WorkingVolume = null }).AmountEach);
    }

    [Fact]
    public void The_names_are_those_of_the_files()
    {
        Assert.Equal(["one-shot", "reused"], Enum.GetValues<StepUse>().Select(use => use.Name()));
        Assert.Equal(["session", "batch", "sheet", "litre"], Enum.GetValues<StepPer>().Select(per => per.Name()));
        Assert.Equal(["negative", "keeper", "reject", "test", "practice", "dummy"],
            Enum.GetValues<Fate>().Select(fate => fate.Name()));
        Assert.Equal([Fate.Negative, Fate.Keeper], Enum.GetValues<Fate>().Where(fate => fate.IsNegative()));
        Assert.Equal(["film", "chemical", "supply"], Enum.GetValues<ItemKind>().Select(kind => kind.Name()));
        Assert.Equal(ItemNames.Roles, Enum.GetValues<ItemRole>().Select(role => role.Name()));
    }
}
