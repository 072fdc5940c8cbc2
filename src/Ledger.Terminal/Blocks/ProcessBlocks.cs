namespace Ledger.Terminal.Blocks;

/// <summary>A process in a details pane.</summary>
internal static class ProcessBlocks
{
    /// <summary>Its steps in order.</summary>
    public static Block Steps(string heading, IEnumerable<ProcessStep> steps) =>
        Block.Facts(heading, steps.Select(step => ($"  {step.Number} {step.Role.Name()}", (string?)Line(step))));

    /// <summary>A step in one line: "syrup 1+49, 1250 ml, 11 min, 20 °C, per batch".</summary>
    public static string Line(ProcessStep step)
    {
        var item =
            $"{step.Item ?? "tap water"} {(step.Amount is { } amount ? amount.ToString()
                : step.Dilution?.Text)}".Trim();
        return string.Join(", ", new[]
        {
            item,
            step.WorkingVolume is { } volume ? $"in {volume}" : "",
            step.VolumesByFormat?.Text ?? "",
            step.Minutes is { } minutes ? GroupTimes.Clock(minutes) : "",
            step.Celsius is { } celsius ? $"{Scaled.ToText(celsius, 1)} °C" : "",
            step.Use == StepUse.Reused ? "a bath that is used again" : step.Item is null
                ? ""
                : $"per {step.Per.Name()}",
            step.Note,
        }.Where(text => text.Length > 0));
    }
}
