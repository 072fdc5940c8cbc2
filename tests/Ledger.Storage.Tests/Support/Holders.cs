namespace Ledger.Storage.Tests.Support;

/// <summary>Entries about holders and sheets.</summary>
public static class Holders
{
    public static HolderDefinition Holder(string name, string format = "8x10", params string[] sides) => new()
    {
        Key = Some.Key(), Date = Some.Day(1, 1), Holder = name, Format = Format.Parse(format), Sides = sides,
    };

    public static Load Load(LocalDate date, params string[] sides) =>
        new() { Key = Some.Key(), Date = date, Sides = sides, From = "pan" };

    public static ExposureNote Expose(LocalDate date, string group, params string[] sides) =>
        new() { Key = Some.Key(), Date = date, Sides = sides, Group = group };

    public static Unload Unload(LocalDate date, params string[] from) =>
        new() { Key = Some.Key(), Date = date, From = from };

    public static Cleaning Clean(LocalDate date, params string[] holders) =>
        new() { Key = Some.Key(), Date = date, Holders = holders, IsBagged = true };

    public static SideService OutOfService(LocalDate date, params string[] sides) =>
        new() { Key = Some.Key(), Date = date, Sides = sides, IsInService = false, Reason = "leaks" };

    public static SessionLog Develop(LocalDate date, string session, params SessionLine[] lines) =>
        new() { Key = Some.Key(), Date = date, Session = session, Process = "tray", Bath = "F1", Lines = lines };

    public static SessionLine From(string from, int sheets = 1, Fate fate = Fate.Negative, RejectCause? cause = null) =>
        new() { Item = "pan", Sheets = sheets, From = from, Fate = fate, Cause = cause };
}
