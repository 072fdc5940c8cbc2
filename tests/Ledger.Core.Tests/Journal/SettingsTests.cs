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
        negative-pattern         | YYYY-### | yes
        negative-pattern         | YYYY | no
        spent-multiple           | 2 | yes
        spent-multiple           | 1 | no
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
        silver-limit-paper-first | 2 | yes
        silver-limit-paper-first | lots | no
        batch-sheets     | 4 4x5=6 | yes
        batch-sheets     | 0     | no
        pass-seconds     | 30    | yes
        pass-seconds     | 0     | no
        short-minutes    | 7     | yes
        tray-depth       | 12.7  | yes
        tray-depth       | 12.75 | no
        graduate         | 0.5   | yes
        graduate         | exact | yes
        graduate         | 0     | no
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
        Table.Read(Values).Select(row => row["setting"]).Where(name => name != "colour").Distinct().Order(), Settings.Names.Keys.Order());

    [Fact]
    public void Every_setting_is_written_as_it_is_read() => Assert.All(Settings.Names.Keys, name =>
    {
        var text = Settings.Default.Text(name);
        Assert.Equal(name == "currency" ? null : Settings.Default, Settings.Default.With(name, text));
        var changed = Settings.Default.With(name, Another[name])!;
        Assert.NotEqual(Settings.Default, changed);
        Assert.Equal(Another[name], changed.Text(name));
    });

    private static readonly Dictionary<string, string> Another = new()
    {
        ["currency"] = "SEK", ["liquids"] = "floz", ["areas"] = "cm2", ["warn-days"] = "14", ["demand-days"] = "30", ["rotation-ceiling"] = "5",
        ["batch-sheets"] = "4 11x14=2 4x5=6", ["pass-seconds"] = "20", ["short-minutes"] = "5", ["tray-depth"] = "12.5", ["graduate"] = "0.5",
        ["loaded-days"] = "90", ["exposed-days"] = "7", ["side-faults"] = "3", ["forgotten-months"] = "6", ["thaw-hours"] = "12",
        ["side-names"] = "A/B", ["slide-convention"] = "tab up: exposed", ["monthly-budget"] = "37.5", ["negative-pattern"] = "YY####",
        ["spent-multiple"] = "1.5", ["fixing-multiple"] = "3", ["fridge-days"] = "30", ["freezer-days"] = "365", ["silver-limit-film"] = "8.5",
        ["silver-limit-paper"] = "1", ["silver-limit-paper-first"] = "0.5",
    };
}
