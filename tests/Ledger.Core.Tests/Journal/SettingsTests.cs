using Ledger.Core.Journal;

namespace Ledger.Core.Tests.Journal;

public sealed class SettingsTests
{
    private const string Values = """
        setting          | value | accepted
        currency         | EUR   | yes
        currency         | eur   | no
        currency         | EURO  | no
        currency         | ÄÖÜ   | no
        liquids          | ml    | yes
        liquids          | floz  | yes
        liquids          | litre | no
        areas            | sqin  | yes
        areas            | cm2   | yes
        areas            | cm²   | no
        warn-days        | 0     | yes
        warn-days        | 365   | yes
        warn-days        | 366   | no
        warn-days        | -1    | no
        warn-days        | 1.5   | no
        warn-days        |       | no
        rotation-ceiling | 0     | yes
        rotation-ceiling | 20    | yes
        rotation-ceiling | 21    | no
        colour           | red   | no
        """;

    [Fact]
    public void Each_setting_takes_what_it_says_it_takes() => Assert.All(Table.Read(Values), row =>
        Assert.Equal(row["accepted"] == "yes", Settings.Default.With(row["setting"], row["value"]) is not null));

    [Fact]
    public void A_setting_changes_itself_and_nothing_else()
    {
        var settings = Settings.Default.With("areas", "cm2")!.With("warn-days", "14")!;
        Assert.Equal(Settings.Default with { Style = new(UsesSquareCentimetres: true), WarnDays = 14 }, settings);
        Assert.Equal(Settings.Default, settings.With("areas", "sqin")!.With("warn-days", "30"));
    }

    [Fact]
    public void Every_setting_is_listed_with_what_it_takes() => Assert.Equal(
        Table.Read(Values).Select(row => row["setting"]).Where(name => name != "colour").Distinct(), Settings.Names.Keys);
}
