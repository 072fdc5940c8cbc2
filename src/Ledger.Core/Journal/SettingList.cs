using Ledger.Core.Costing;
using Ledger.Core.Film;
using Ledger.Core.Measures;
using Ledger.Core.Sessions;

namespace Ledger.Core.Journal;

/// <content>Every setting, in the order in which they are shown. A new one is a few lines here and a property of
/// <see cref="Settings"/>.</content>
public sealed partial record Setting
{
    /// <summary>As much as any amount of money that is recorded, in millionths.</summary>
    private const long LargestBudget = 1_000_000_000L * Measures.Money.PerUnit;

    private const string Silver = "grams of silver per litre";

    /// <summary>All settings.</summary>
    public static IReadOnlyList<Setting> All { get; } =
    [
        .. Units(), .. Film(), .. Trays(), .. Baths(), .. Keeping(), .. Money(),
    ];

    private static IEnumerable<Setting> Units() =>
    [
        new("currency", "The currency of the ledger; it stays once something was bought.",
            "a currency code of three letters, such as EUR", settings => settings.Currency,
            (settings, value) => value.Length == 3 && value.All(char.IsAsciiLetter)
                ? settings with { Currency = value.ToUpperInvariant() }
                : null),
        OneOf("liquids", "The unit in which liquids are shown.", ["ml", "floz"],
            settings => settings.Style.UsesFluidOunces ? "floz" : "ml",
            (settings, value) => settings with { Style = settings.Style with { UsesFluidOunces = value == "floz" } }),
        OneOf("areas", "The unit in which areas are shown.", ["sqin", "cm2"],
            settings => settings.Style.UsesSquareCentimetres ? "cm2" : "sqin",
            (settings,
                value) => settings with { Style = settings.Style with { UsesSquareCentimetres = value == "cm2" } }),
        Whole("warn-days", "How many days before something expires a notice appears.", "a whole number of days", 0, 365,
            settings => settings.WarnDays, (settings, days) => settings with { WarnDays = days }),
        OneOf(
            "theme",
            "How the screens are coloured. No screen is a safelight, not in red either: leave it outside, or cover it, "
                + "before film comes out.",
            ["terminal", "light", "dark", "mono", "red"], settings => settings.Theme,
            (settings, value) => settings with { Theme = value }),
    ];

    private static IEnumerable<Setting> Film() =>
    [
        Whole("loaded-days", "How long film may wait in a holder before a notice appears.",
            "a whole number of "
                + "days", 0, 3650, settings => settings.Film.LoadedDays,
                    (settings, days) => settings with { Film = settings.Film with { LoadedDays = days } }),
        Whole("exposed-days", "How long an exposed sheet may wait for its development.",
            "a whole number of "
                + "days", 0, 3650, settings => settings.Film.ExposedDays,
                    (settings, days) => settings with { Film = settings.Film with { ExposedDays = days } }),
        Whole("side-faults", "How many sheets a holder's side may spoil before it is flagged.",
            "a whole number of "
                + "sheets", 0, 100, settings => settings.Film.SideFaults,
                    (settings, faults) => settings with { Film = settings.Film with { SideFaults = faults } }),
        Whole("forgotten-months", "After how many months without use a box or bottle counts as forgotten.",
            "a whole number of "
                + "months", 0, 120, settings => settings.Film.ForgottenMonths,
                    (settings, months) => settings with { Film = settings.Film with { ForgottenMonths = months } }),
        Whole("thaw-hours", "How long film from the freezer warms up before its box is opened.",
            "a whole number of "
                + "hours", 0, 240, settings => settings.Film.ThawHours,
                    (settings, hours) => settings with { Film = settings.Film with { ThawHours = hours } }),
        new("side-names", "The names of a new holder's sides.", "names with strokes between, such as 1/2 or A/B",
            settings => settings.Film.SideNames,
            (settings,
                value) => value is { Length: > 0 and <= 60 } && value.Split('/').All(name => name.Trim().Length > 0)
                ? settings with { Film = settings.Film with { SideNames = value } } : null),
        new("slide-convention", "What the two faces of a dark slide mean to you.", "a text of at most 80 characters",
            settings => settings.Film.SlideConvention,
            (settings, value) => value is { Length: > 0 and <= 80 } && !value.Any(char.IsControl)
                ? settings with { Film = settings.Film with { SlideConvention = value } } : null),
        new("negative-pattern", "How negatives are numbered.",
            "the year and a running number, such as YYYY-### or YY####", settings => settings.Film.Negatives.Text,
            (settings, value) => NegativePattern.Parse(value) is { } pattern
                ? settings with { Film = settings.Film with { Negatives = pattern } }
                : null),
    ];

    private static IEnumerable<Setting> Trays() =>
    [
        new("batch-sheets", "How many sheets you develop together in a tray.", BatchLimit.Accepted,
            settings => settings.Tray.Limit.ToString(),
            (settings, value) => BatchLimit.Read(value) is { } limit
                ? settings with { Tray = settings.Tray with { Limit = limit } }
                : null),
        Whole("full-shuffle-seconds", "How long a full shuffle takes, in which every sheet is moved once.",
            "a whole number of "
                + "seconds", 1, 600, settings => settings.Tray.FullShuffleSeconds,
                    (settings,
                        seconds) => settings with { Tray = settings.Tray with { FullShuffleSeconds = seconds } }),
        Whole("short-minutes", "A plan warns of a developing time that is no longer than this.",
            "a whole number of "
                + "minutes", 0, 60, settings => settings.Tray.ShortMinutes,
                    (settings, minutes) => settings with { Tray = settings.Tray with { ShortMinutes = minutes } }),
        new("tray-depth", "The least depth of solution over a sheet.",
            "millimetres, 0 to 100, with one decimal at "
                + "most", settings => Scaled.InUnits(settings.Tray.DepthTenths, 10),
            (settings, value) => Number(value, 10, 0, 1000) is { } tenths
                ? settings with { Tray = settings.Tray with { DepthTenths = (int)tenths } } : null),
        new("graduate", "The finest step that you can measure, to which a plan's amounts are rounded.",
            "millilitres, such as 0.5 or 5, up to 1000; or exact",
            settings => settings.Tray.Graduate is { } step ? Scaled.ToText(step.Millilitres, 3) : "exact",
            (settings, value) => value == "exact" ? settings with { Tray = settings.Tray with { Graduate = null } }
                : Number(value, 1000, 1, 1_000_000) is { } microlitres
                    ? settings with { Tray = settings.Tray with { Graduate = Volume.FromMicrolitres(microlitres) } }
                    : null) { AcceptedWords = ["exact"] },
    ];

    private static IEnumerable<Setting> Baths() =>
    [
        Whole("rotation-ceiling", "How often a pair of baths may be rotated before a fresh pair is mixed.",
            "a whole number", 0, 20, settings => settings.RotationCeiling,
            (settings, ceiling) => settings with { RotationCeiling = ceiling }),
        Thousandths("exhausted-multiple", "At how many times the fresh clearing time a fixer is exhausted.",
            "times the fresh clearing "
                + "time", 1100, 5000, settings => settings.ExhaustedMultipleThousandths,
                    (settings, times) => settings with { ExhaustedMultipleThousandths = times }),
        Thousandths("fixing-multiple", "For how many times its clearing time film is fixed.",
            "times the clearing "
                + "time", 1000, 5000, settings => settings.FixingMultipleThousandths,
                    (settings, times) => settings with { FixingMultipleThousandths = times }),
        Limit("silver-limit-film", "The silver at which a fixer for film is exhausted.", Silver, 100, 20_000,
            settings => settings.SilverLimitFilm, (settings, limit) => settings with { SilverLimitFilm = limit }),
        Limit("silver-limit-paper", "The silver at which a single fixer for paper, or the second of two, is exhausted.",
            Silver, 100, 20_000, settings => settings.SilverLimitPaper,
            (settings, limit) => settings with { SilverLimitPaper = limit }),
        Limit("silver-limit-paper-first", "The silver at which the first of two fixers for paper is exhausted.",
            Silver, 100, 20_000, settings => settings.SilverLimitPaperFirst,
            (settings, limit) => settings with { SilverLimitPaperFirst = limit }),
        Limit("residual-hypo-limit", "The most fixer that may stay in film or paper after washing.",
            "grams of thiosulfate per square metre", 1, 1000,
            settings => settings.ResidualHypoLimit, (settings, limit) => settings with { ResidualHypoLimit = limit }),
        Whole("jug-days", "How many days a waste jug may stand before a notice; 0 for no reminder.",
            "a whole number of "
                + "days", 0, 3650, settings => settings.JugDays, (settings, days) => settings with { JugDays = days }),
    ];

    private static IEnumerable<Setting> Keeping() =>
    [
        Whole("fridge-days",
            "Days that a year in a refrigerator adds to an expiry date and to the life of a sealed pack; 365 stops the "
                + "ageing.",
            "a whole number of "
                + "days", 0, 3650, settings => settings.FridgeDays,
                    (settings, days) => settings with { FridgeDays = days }),
        Whole("freezer-days", "Days that a year in a freezer adds to them; 365 stops the ageing.",
            "a whole number of "
                + "days", 0, 3650, settings => settings.FreezerDays,
                    (settings, days) => settings with { FreezerDays = days }),
    ];

    private static IEnumerable<Setting> Money() =>
    [
        new("monthly-budget", "What you mean to spend in a month.",
            "money for a month, such as 60 or 37.50, at most 1000000000; 0 for "
                + "none",
                    settings => settings.MonthlyBudget is { } budget
                        ? Scaled.InUnits(budget.Millionths, Measures.Money.PerUnit)
                        : "0",
            (settings, value) => Number(value, Measures.Money.PerUnit, 0, LargestBudget) is { } millionths
                ? settings with { MonthlyBudget = millionths == 0 ? null : new Money(millionths) } : null),
        new("cost-formula", "How the readings of costs value what was used.",
            "lot (first in, first out unless you name another lot), fifo (whichever was taken) or average",
            settings => settings.CostFormula.ShortName(),
            (settings, value) => CostFormulas.ShortNames.Contains(value)
                ? settings with { CostFormula = Enum.GetValues<CostFormula>()
                    .First(formula => formula.ShortName() == value) } : null)
            {
                AcceptedWords = CostFormulas.ShortNames,
            },
        Whole("demand-days", "The length of the periods by which use is counted for reordering.",
            "a whole number of "
                + "days", 1, 92, settings => settings.DemandDays,
                    (settings, days) => settings with { DemandDays = days }),
    ];
}
