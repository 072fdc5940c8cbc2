using System.CommandLine.Completions;

namespace Ledger.App.Commands.Files;

/// <summary>help: what a word of the trade means; without one, what there is.</summary>
internal sealed class HelpCommand : ExplainedCommand
{
    private const string Json = "json", Environment = "environment";
    private readonly Workbench _bench;
    private readonly Argument<string[]> _word = new("word")
    {
        HelpName = "WORD", Description = "a word of the trade, such as fixer factor, or a command, such as record bath",
        Arity = ArgumentArity.ZeroOrMore,
    };

    public HelpCommand(Workbench bench)
        : base("help", "Explains a word of the trade; alone it lists the commands and the words.", """
            `trayledger help json` lists the JSON documents, `trayledger help json NAME` prints
            the JSON Schema of one. `trayledger help environment` lists what can be said once
            instead of each time: options, variables and settings.
            Examples: trayledger help fixer factor
                      trayledger help json show shelf
                      trayledger help environment
            """)
    {
        _bench = bench;
        Arguments.Add(_word);
        _word.CompletionSources.Clear();
        _word.CompletionSources.Add(context => Topics(context.ParseResult.RootCommandResult.Command)
            .Where(word => word.StartsWith(context.WordToComplete, StringComparison.OrdinalIgnoreCase))
            .Select(word => new CompletionItem(word)));
        SetAction(parse => Explain(string.Join(' ', parse.GetValue(_word) ?? []).Trim(),
            parse.RootCommandResult.Command));
    }

    private int Explain(string word, Command root)
    {
        var output = _bench.Around.Out;
        if (word.Length == 0)
        {
            List(root, output);
            return ExitStatus.Done;
        }

        if (word.Equals(Environment, StringComparison.OrdinalIgnoreCase))
            WriteHabits(output);
        else if (Document(word) is { } name)
            WriteSchema(name, root, output);
        else if (TradeWords.Named(word) is { } term)
            Write(term, output);
        else if (Path(word, root) is { } path)
            return root.Parse([.. path, "--help"]).Invoke(new() { Output = output, Error = _bench.Around.Error });
        else
            throw new RefusedByCommandException(TradeWords.Near(word).ToList() is { Count: > 0 } near
                ? $"\"{word}\" is not explained; near it: {string.Join(", ", near.Select(one => one.Word))}"
                : $"\"{word}\" is not explained; `trayledger help` lists the words that are");
        return ExitStatus.Done;
    }

    /// <summary>The name behind "json"; empty for none, null where the words are about something else.</summary>
    private static string? Document(string words) => words.Equals(Json, StringComparison.OrdinalIgnoreCase) ? ""
        : words.StartsWith($"{Json} ", StringComparison.OrdinalIgnoreCase) ? words[(Json.Length + 1)..].Trim() : null;

    private static IEnumerable<(string Name, Command Command)> Documents(Command command, string path) =>
        command.Subcommands
            .SelectMany(sub => Documents(sub, $"{path} {sub.Name}".Trim()))
            .Concat(command is IDescribed ? [(path, command)] : []);

    private void WriteSchema(string name, Command root, TextWriter output)
    {
        var documents = Documents(root, "").ToList();
        if (name.Length == 0)
        {
            output.WriteProse("JSON documents; `trayledger help json NAME` prints the JSON Schema of one:",
                _bench.Around.Width);
            foreach (var one in documents)
                output.WriteLine($"  {one.Name}");
            return;
        }

        if (documents.Find(one => one.Name.Equals(name,
            StringComparison.OrdinalIgnoreCase)) is not { Command: { } command } found)
            throw new RefusedByCommandException(
                $"there is no document \"{name}\"; "
                    + $"{Spelling.Meant(name, documents.Select(one => one.Name))}`trayledger help json` lists them");
        JsonSchema.Write(output, found.Name, command.Description ?? "", (IDescribed)command);
    }

    private void WriteHabits(TextWriter output)
    {
        output.WriteProse(
            "What can be said once instead of each time. An option decides before a variable, a variable before a "
                + "setting of the ledger; `trayledger record setting` changes one.", _bench.Around.Width);
        output.WriteLine();
        var table = new TextTable(Column.Left("what"), Column.Left("option"), Column.Left("variable"),
            Column.Left("setting"));
        foreach (var habit in VariablesAndFiles.Choices)
            table.Add(habit.What, habit.Option, habit.Variable, habit.Setting);
        table.WriteTo(output, _bench.Around.Width);
        output.WriteLine();
        var variables = new TextTable(Column.Left("variable"), Column.Left("meaning"));
        foreach (var (name, meaning) in VariablesAndFiles.Variables)
            variables.Add(name, meaning);
        variables.WriteTo(output, _bench.Around.Width);
    }

    /// <summary>All that is explained.</summary>
    private static IEnumerable<string> Topics(Command root) => root.Subcommands.Select(command => command.Name)
        .Concat([Json, Environment]).Concat(Documents(root, "").Select(one => $"{Json} {one.Name}"))
        .Concat(TradeWords.All.Select(term => term.Word));

    private void Write(Term term, TextWriter output)
    {
        output.WriteProse($"{term.Word}: {term.Meaning}", _bench.Around.Width);
        if (term.See.Length > 0)
            output.WriteLine($"See: trayledger {term.See} --help");
    }

    private void List(Command root, TextWriter output)
    {
        output.WriteProse("Commands; `trayledger COMMAND --help` says more:", _bench.Around.Width);
        var table = new TextTable(Column.Left(""), Column.Left(""));
        foreach (var command in root.Subcommands)
            table.Add($"  {command.Name}", command.Description ?? "");
        table.WriteTo(output, _bench.Around.Width);
        output.WriteLine();
        output.WriteProse("Words; `trayledger help WORD` explains one:", _bench.Around.Width);
        output.WriteProse(string.Join(", ", TradeWords.All.Select(term => term.Word)), _bench.Around.Width, "  ");
    }

    /// <summary>The command's path, where the words are one.</summary>
    private static string[]? Path(string words, Command root)
    {
        string[] names = words.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        Command? command = root;
        foreach (var name in names)
            command = command?.Subcommands.FirstOrDefault(sub => sub.Name == name);
        return command is null ? null : names;
    }
}
