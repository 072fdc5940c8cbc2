namespace Ledger.App.Wiring;

/// <summary>Opens the terminal screens, or says that there is no terminal to open them on.</summary>
internal static class TerminalStart
{
    public static int Open(Workbench bench, string path)
    {
        if (bench.Around.Screens() is not { } screens)
        {
            bench.Say("the screens need a terminal for both input and output; `trayledger --help` lists the commands that need none");
            return ExitStatus.WrongCommandLine;
        }

        using var ledger = bench.Open(path);
        screens.Show(ledger);
        return ExitStatus.Done;
    }
}
