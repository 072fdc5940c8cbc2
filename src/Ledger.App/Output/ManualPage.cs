using Ledger.Exchange.Import;
using Ledger.Storage;

namespace Ledger.App.Output;

/// <summary>
/// The manual page, made from the commands, the columns and the exit statuses themselves so that it never says anything
/// else than they do. It uses the man macros, which every roff program knows (man(7)).
/// </summary>
internal sealed class ManualPage(TextWriter output)
{
    /// <summary>Longer lines of input are bad style (mandoc(1), -T lint).</summary>
    private const int Width = 78;

    /// <summary>Writes the page of a program.</summary>
    /// <param name="root">Its root command, with all commands under it.</param>
    /// <param name="version">Its version.</param>
    /// <param name="releasedOn">The day of that version.</param>
    public void Write(Command root, string version, string releasedOn)
    {
        output.Write($".TH TRAYLEDGER 1 {releasedOn} \"trayledger {version}\" \"User commands\"\n");
        Macro("SH", "NAME");
        Text($"trayledger - {char.ToLowerInvariant(root.Description![0])}{root.Description[1..].TrimEnd('.')}");
        Macro("SH", "SYNOPSIS");
        Text("trayledger [options]");
        Macro("br");
        Text("trayledger command [arguments] [options]");
        Macro("SH", "DESCRIPTION");
        Text("Trayledger is the ledger of a photographer who develops large sheet film by hand in trays: every box, "
            + "holder, bottle and bath, what a session used, what expires, what must be ordered, and what a negative "
            + "cost.");
        Text("Without a command it opens the terminal screens; F1 explains each.");
        Text("The ledger is one SQLite file.");
        Macro("SH", "OPTIONS");
        foreach (var option in root.Options.Where(option => !option.Hidden))
            Entry(Names(option), option.Description);
        Macro("SH", "COMMANDS");
        foreach (var command in root.Subcommands.Where(command => !command.Hidden))
            Write(command, command.Name);
        WriteCsv();
        WriteData();
        Macro("SH", "EXIT STATUS");
        Entries(ExitStatus.Meanings);
        Macro("SH", "ENVIRONMENT");
        Entries(VariablesAndFiles.Variables);
        Macro("SH", "FILES");
        Entries(VariablesAndFiles.Files);
        WriteExamples();
        Macro("SH", "CAUTIONS");
        Text("The program never says that a chemical is safe or that a disposal is legal.");
        Text("The maker's safety data sheet and local rules govern.");
    }

    private void Write(Command command, string path)
    {
        Macro("SS",
            "trayledger "
                + $"{string.Join(' ', command.Arguments
                    .Select(argument => $"<{argument.Name.ToUpperInvariant()}>").Prepend(path))}");
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

    private void WriteCsv()
    {
        Macro("SH", "CSV FILES");
        Text("What trayledger import reads: a header row with the names of the columns in any order, then a row for "
            + "each entry or line of one.");
        Text("Columns that are not needed may be left out or empty.");
        Text("Where a row has a reference, or a name that is given once, a cell with only a hyphen in it says that "
            + "nothing is there: imported again with --amend, it clears what stood there, which an empty cell leaves.");
        foreach (var kind in CsvImport.Kinds)
        {
            Macro("SS", $"{kind}.csv");
            Text(CsvImport.PurposeOf(kind));
            foreach (var column in CsvImport.DescribedColumnsOf(kind))
                Entry(column.Name, column.Meaning + (column.IsNeeded ? "; needed" : "") + Example(column));
        }
    }

    /// <summary>What any program that reads SQLite files finds in a ledger: what the file says of it itself.</summary>
    private void WriteData()
    {
        Macro("SH", "DATA");
        Text("A ledger is read by any program that reads SQLite files.");
        Text("Its table read_me says what each table and column means and in which unit it is.");
        Text("These views show it by names, in ml, g, square inches and money; trayledger export writes each as a CSV "
            + "file.");
        foreach (var view in LedgerFile.ReadableViews)
            foreach (var (column, unit, meaning) in LedgerFile.Explained(view))
                if (column.Length > 0)
                    Entry(column, $"{(unit.Length > 0 ? $"({unit}) " : "")}{meaning}");
                else
                {
                    Macro("SS", view);
                    Text(meaning);
                }
    }

    private static string Example(CsvColumn column) => column.Example.Length > 0 ? $"; example: {column.Example}" : "";

    private void WriteExamples()
    {
        Macro("SH", "EXAMPLES");
        var isFirst = true;
        foreach (var (purpose, line) in ManualExamples.All)
        {
            if (purpose.Length > 0 && !isFirst)
                Macro("PP");
            if (purpose.Length > 0)
                Text(purpose);
            Verbatim(line, indent: "    ");
            isFirst = false;
        }
    }

    private static string Names(Option option) =>
        string.Join(", ", option.Aliases.Prepend(option.Name)) + (option.HelpName is { } value ? $" <{value}>" : "");

    private void Entries(IEnumerable<(string Term, string Meaning)> entries)
    {
        foreach (var (term, meaning) in entries)
            Entry(term, meaning);
    }

    private void Entry(string term, string? meaning)
    {
        Macro("TP");
        output.Write($".B {Escaped(term)}\n");
        Text(meaning ?? "");
    }

    /// <summary>
    /// Lines as they stand. A line that would be too long in the page's source goes on in the next one there, and is
    /// one in the page.
    /// </summary>
    private void Verbatim(string text, string indent = "")
    {
        Macro("PP");
        Macro("nf");
        foreach (var line in text.ReplaceLineEndings("\n").TrimEnd('\n').Split('\n'))
            output.Write($"{string.Join("\\c\n", Broken(Guarded($"{indent}{Escaped(line)}")))}\n");
        Macro("fi");
    }

    private void Macro(string name, params IEnumerable<string> arguments) =>
        output.Write(
            $".{name}{string.Concat(arguments.Select(argument => $" \"{Escaped(argument)
                .Replace("\"", "\\(dq", StringComparison.Ordinal)}\""))}\n");

    /// <summary>A text that is filled: its lines in the page's source mean nothing.</summary>
    private void Text(string text)
    {
        if (text.Length == 0)
            return;
        foreach (var line in Wrapping.Of(Escaped(text), Width, breaksWords: false))
            output.Write($"{Guarded(line)}\n");
    }

    /// <summary>A line that would begin with a control character is led by the empty character.</summary>
    private static string Guarded(string line) => line is ['.' or '\'', ..] ? $"\\&{line}" : line;

    /// <summary>Pieces of a line, broken at blanks, which stay at the ends of the pieces.</summary>
    private static IEnumerable<string> Broken(string line)
    {
        while (line.Length > Width
            && line.LastIndexOf(' ', Width - 3) is > 0 and var blank && line[..blank].Trim().Length > 0)
        {
            yield return line[..(blank + 1)];
            line = Guarded(line[(blank + 1)..]);
        }

        yield return line;
    }

    private static string Escaped(string text) =>
        text.Replace("\\", "\\(rs", StringComparison.Ordinal).Replace("-", "\\-", StringComparison.Ordinal)
            .ReplaceLineEndings(" ");
}
