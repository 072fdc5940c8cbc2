using System.CommandLine;
using Ledger.App.Values;
using Ledger.Terminal;

namespace Ledger.App.Wiring;

/// <summary>Opens the terminal screens, or says that there is no terminal to open them on.</summary>
internal static class TerminalStart
{
    /// <summary>--theme, where screens are opened.</summary>
    public static Option<string?> ThemeOption()
    {
        var option = Typed.Option<string?>(
            "--theme", "NAME", Values.Text.OneOf(TerminalOptions.Themes, "theme"), $"how the screens are coloured: {string.Join(", ", TerminalOptions.Themes)}");
        option.CompletionSources.Add([.. TerminalOptions.Themes]);
        return option;
    }

    public static int Open(Workbench bench, string path, string? theme)
    {
        if (bench.Around.Screens() is not { } screens)
        {
            bench.Say("the screens need a terminal for both input and output; `trayledger --help` lists the commands that need none");
            return ExitStatus.WrongCommandLine;
        }

        using var ledger = bench.Open(path);
        return screens.Show(ledger, bench.Around.Clock, theme);
    }
}
