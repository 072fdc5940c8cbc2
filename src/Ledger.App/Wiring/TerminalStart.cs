using Ledger.Terminal;

namespace Ledger.App.Wiring;

/// <summary>Opens the terminal screens, or says that there is no terminal to open them on.</summary>
internal static class TerminalStart
{
    /// <summary>The variable that says how the screens are coloured.</summary>
    public const string Variable = "TRAYLEDGER_THEME";

    private static readonly Func<string, string> _named = Values.Text.OneOf(TerminalOptions.Themes, "theme");

    /// <summary>--theme, where screens are opened.</summary>
    public static Option<string?> ThemeOption()
    {
        var option = Typed.Option<string?>(
            "--theme", "NAME", _named, $"how the screens are coloured: {string.Join(", ", TerminalOptions.Themes)}");
        option.CompletionSources.Add([.. TerminalOptions.Themes]);
        return option;
    }

    public static int Open(Workbench bench, string path, string? theme)
    {
        if (bench.Around.Screens() is not { } screens)
        {
            bench.Say(
                "the screens need a terminal for both input and output; `trayledger --help` lists the commands that "
                    + "need none");
            return ExitStatus.WrongCommandLine;
        }

        theme ??= bench.Around.Variable(Variable) is { Length: > 0 } named ? Themed(named) : null;
        using var ledger = bench.Open(path);
        return screens.Show(ledger, bench.Around.Clock, theme);
    }

    private static string Themed(string text)
    {
        try
        {
            return _named(text);
        }
        catch (FormatException wrong)
        {
            throw new FormatException($"{Variable}: {wrong.Message}");
        }
    }
}
