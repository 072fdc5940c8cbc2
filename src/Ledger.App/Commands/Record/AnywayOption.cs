using System.CommandLine;

namespace Ledger.App.Commands.Record;

/// <summary>--anyway: what is unlikely is so all the same.</summary>
internal static class AnywayOption
{
    public static Option<bool> New() => new("--anyway") { Description = "it is so, although it was asked about as unlikely" };
}
