namespace Ledger.Core.Tests.Journal;

public sealed class SettingsTests
{
    private const string Values = """
        setting          | value | accepted
        currency         | EUR   | yes
        currency         | eur   | yes
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
        demand-days              | 1 | yes
        demand-days              | 92 | yes
        demand-days              | 0 | no
        demand-days              | 93 | no
        rotation-ceiling         | 0 | yes
        rotation-ceiling         | 20 | yes
        rotation-ceiling         | 21 | no
        loaded-days              | 3650 | yes
        loaded-days              | 3651 | no
        exposed-days             | 90 | yes
        exposed-days             | -1 | no
        side-faults              | 2 | yes
        side-faults              | 101 | no
        forgotten-months         | 12 | yes
        forgotten-months         | 121 | no
        thaw-hours               | 4 | yes
        thaw-hours               | 241 | no
        side-names               | A/B | yes
        side-names               | A/ | no
        slide-convention         | white out: unexposed | yes
        slide-convention         |  | no
        monthly-budget           | 37.50 | yes
        monthly-budget           | -1 | no
        monthly-budget           | 1000000000 | yes
        monthly-budget           | 1000000001 | no
        cost-formula             | lot | yes
        cost-formula             | fifo | yes
        cost-formula             | average | yes
        cost-formula             | lifo | no
        negative-pattern         | YYYY-### | yes
        negative-pattern         | YYYY | no
        exhausted-multiple           | 2 | yes
        exhausted-multiple           | 1 | no
        fixing-multiple          | 3 | yes
        fixing-multiple          | 0.5 | no
        fridge-days              | 365 | yes
        fridge-days              | cold | no
        freezer-days             | 730 | yes
        freezer-days             | 3651 | no
        silver-limit-film        | none | yes
        silver-limit-film        | 21 | no
        silver-limit-paper       | 0.5 | yes
        silver-limit-paper       | 0 | no
        residual-hypo-limit     | 0.014 | yes
        residual-hypo-limit     | 0.0145 | no
        residual-hypo-limit     | none | yes
        jug-days                 | 0 | yes
        jug-days                 | 3651 | no
        silver-limit-paper-first | 2 | yes
        silver-limit-paper-first | lots | no
        batch-sheets     | 4 4x5=6 | yes
        batch-sheets     | 0     | no
        full-shuffle-seconds     | 30    | yes
        full-shuffle-seconds     | 0     | no
        short-minutes    | 7     | yes
        tray-depth       | 12.7  | yes
        tray-depth       | 12.75 | no
        graduate         | 0.5   | yes
        graduate         | exact | yes
        graduate         | 0     | no
        theme            | red   | yes
        theme            | blue  | no
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
        Table.Read(Values).Select(row => row["setting"]).Where(name => name != "colour").Distinct().Order(),
        Setting.All.Select(setting => setting.Name).Order());

    [Fact]
    public void What_a_setting_is_written_as_is_read_as_the_same_value() => Assert.All(
        Table.Read(Values).Where(row => row["accepted"] == "yes"), row =>
        {
            var setting = Setting.Named(row["setting"])!;
            var settings = setting.Read(Settings.Default, row["value"])!;
            Assert.Equal(settings, setting.Read(Settings.Default, setting.Text(settings)));
        });

    [Fact]
    public void What_a_new_ledger_starts_with_is_accepted_too() => Assert.All(
        Setting.All.Where(setting => setting.Name != "currency"), setting =>
            Assert.Equal(Settings.Default, setting.Read(Settings.Default, setting.Text(Settings.Default))));
}
