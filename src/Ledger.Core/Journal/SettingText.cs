using System.Globalization;
using Ledger.Core.Measures;

namespace Ledger.Core.Journal;

/// <summary>The settings as they are written: what <see cref="Settings.With"/> reads back.</summary>
public static class SettingText
{
    /// <summary>The value of a setting; empty when nothing was said yet.</summary>
    /// <exception cref="ArgumentException">There is no such setting.</exception>
    public static string Text(this Settings settings, string name) => name switch
    {
        "currency" => settings.Currency,
        "liquids" => settings.Style.UsesFluidOunces ? "floz" : "ml",
        "areas" => settings.Style.UsesSquareCentimetres ? "cm2" : "sqin",
        "warn-days" => Whole(settings.WarnDays),
        "demand-days" => Whole(settings.DemandDays),
        "rotation-ceiling" => Whole(settings.RotationCeiling),
        "batch-sheets" => settings.Tray.Limit.ToString(),
        "pass-seconds" => Whole(settings.Tray.PassSeconds),
        "short-minutes" => Whole(settings.Tray.ShortMinutes),
        "tray-depth" => Scaled.ToText(settings.Tray.DepthTenths / 10m, 1),
        "graduate" => settings.Tray.Graduate is { } step ? Scaled.ToText(step.Millilitres, 3) : "exact",
        "loaded-days" => Whole(settings.Film.LoadedDays),
        "exposed-days" => Whole(settings.Film.ExposedDays),
        "side-faults" => Whole(settings.Film.SideFaults),
        "forgotten-months" => Whole(settings.Film.ForgottenMonths),
        "thaw-hours" => Whole(settings.Film.ThawHours),
        "side-names" => settings.Film.SideNames,
        "slide-convention" => settings.Film.SlideConvention,
        "monthly-budget" => Scaled.ToText(settings.MonthlyBudget?.Amount ?? 0, 6),
        "negative-pattern" => settings.Film.Negatives.Text,
        "spent-multiple" => Thousandths(settings.SpentMultipleThousandths),
        "fixing-multiple" => Thousandths(settings.FixingMultipleThousandths),
        "fridge-days" => Whole(settings.FridgeDays),
        "freezer-days" => Whole(settings.FreezerDays),
        "silver-limit-film" => Limit(settings.SilverLimitFilm),
        "silver-limit-paper" => Limit(settings.SilverLimitPaper),
        "silver-limit-paper-first" => Limit(settings.SilverLimitPaperFirst),
        _ => throw new ArgumentException($"there is no setting \"{name}\"", nameof(name)),
    };

    private static string Whole(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static string Thousandths(int number) => Scaled.ToText(number / 1000m, 3);

    private static string Limit(int? thousandths) => thousandths is { } known ? Thousandths(known) : "none";
}
