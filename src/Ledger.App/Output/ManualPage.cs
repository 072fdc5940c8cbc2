using System.CommandLine;
using Ledger.App.Wiring;

namespace Ledger.App.Output;

/// <summary>
/// The manual page, made from the commands themselves so that it never says anything else than they do. It uses the man macros, which
/// every roff program knows (man(7)).
/// </summary>
internal sealed class ManualPage(TextWriter output)
{
    /// <summary>Writes the page of a program.</summary>
    /// <param name="root">Its root command.</param>
    /// <param name="details">What the root's own help adds.</param>
    /// <param name="version">Its version.</param>
    public void Write(Command root, string details, string version)
    {
        Macro("TH", "TRAYLEDGER", "1", "", $"trayledger {version}", "User commands");
        Macro("SH", "NAME");
        Text($"trayledger - {char.ToLowerInvariant(root.Description![0])}{root.Description[1..]}");
        Macro("SH", "SYNOPSIS");
        Text("trayledger [options]");
        Macro("br");
        Text("trayledger command [arguments] [options]");
        Macro("SH", "DESCRIPTION");
        Verbatim(details);
        Macro("SH", "OPTIONS");
        foreach (var option in root.Options.Where(option => !option.Hidden))
            Entry(Names(option), option.Description);
        Macro("SH", "COMMANDS");
        foreach (var command in root.Subcommands)
            Write(command, command.Name);
        Macro("SH", "ENVIRONMENT");
        Entry(LedgerLocation.Variable, "the ledger's file, where --file is not given");
        Entry("NO_COLOR", "when it is not empty, the screens use no colour");
        Macro("SH", "FILES");
        Entry("$XDG_DATA_HOME/trayledger/ledger.db", "the ledger, where neither --file nor the variable names another");
        Macro("SH", "CAUTIONS");
        Text("The program never says that a chemical is safe or that a disposal is legal. The maker's safety data sheet and local rules govern.");
    }

    private void Write(Command command, string path)
    {
        Macro("SS", $"trayledger {string.Join(' ', command.Arguments.Select(argument => $"<{argument.Name.ToUpperInvariant()}>").Prepend(path))}");
        Text(command.Description ?? "");
        if (command is ExplainedCommand { Examples: { Length: > 0 } examples })
            Verbatim(examples);
        foreach (var argument in command.Arguments)
            Entry($"<{argument.Name.ToUpperInvariant()}>", argument.Description);
        foreach (var option in command.Options.Where(option => !option.Hidden))
            Entry(Names(option), option.Description);
        if (command is ExplainedCommand { Details: { Length: > 0 } details })
            Verbatim(details);
        foreach (var inner in command.Subcommands)
            Write(inner, $"{path} {inner.Name}");
    }

    private static string Names(Option option) =>
        string.Join(", ", option.Aliases.Prepend(option.Name)) + (option.HelpName is { } value ? $" <{value}>" : "");

    private void Entry(string term, string? meaning)
    {
        Macro("TP");
        output.Write($".B {Escaped(term)}\n");
        Text(meaning ?? "");
    }

    private void Verbatim(string text)
    {
        Macro("PP");
        Macro("nf");
        foreach (var line in text.ReplaceLineEndings("\n").TrimEnd('\n').Split('\n'))
            Text(line);
        Macro("fi");
    }

    private void Macro(string name, params IEnumerable<string> arguments) =>
        output.Write($".{name}{string.Concat(arguments.Select(argument => $" \"{Escaped(argument).Replace("\"", "\\(dq", StringComparison.Ordinal)}\""))}\n");

    /// <summary>A line of text; one that would begin with a control character is led by the empty character.</summary>
    private void Text(string line) => output.Write($"{(line is ['.' or '\'', ..] ? "\\&" : "")}{Escaped(line)}\n");

    private static string Escaped(string text) =>
        text.Replace("\\", "\\(rs", StringComparison.Ordinal).Replace("-", "\\-", StringComparison.Ordinal).ReplaceLineEndings(" ");
}
