using System.Reflection;

namespace Ledger.App.Commands.Files;

/// <summary>manual: the manual page.</summary>
internal sealed class ManualCommand : ExplainedCommand
{
    public ManualCommand(Workbench bench)
        : base("manual", "Writes the manual page of all commands, for man to show.", """
            Examples: trayledger manual > ~/.local/share/man/man1/trayledger.1
                      trayledger manual | man -l -
            """)
    {
        SetAction(parse =>
        {
            new ManualPage(bench.Around.Out).Write(parse.RootCommandResult.Command, Version(), ReleasedOn());
            return ExitStatus.Done;
        });
    }

    private static string Version() =>
        typeof(ManualCommand).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion
            ?? "";

    private static string ReleasedOn() => typeof(ManualCommand).Assembly
        .GetCustomAttributes<AssemblyMetadataAttribute>()
        .FirstOrDefault(one => one.Key == "ReleasedOn")?.Value ?? "";
}
