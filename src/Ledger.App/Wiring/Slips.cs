using System.CommandLine.Parsing;

namespace Ledger.App.Wiring;

/// <summary>What is wrong with a command line, with what may have been meant.</summary>
internal static class Slips
{
    /// <summary>A sentence for each thing that is wrong.</summary>
    public static IEnumerable<string> In(ParseResult parse) => parse.UnmatchedTokens is [var first, ..]
        ? Known(parse, first).Prepend(Unknown(first, parse)).Distinct()
        : parse.Errors.Select(problem => problem.Message).Distinct();

    /// <summary>
    /// What is wrong with an option that nobody knows and that was taken for a word, where any word is accepted; empty
    /// where there is none. After two dashes it is a word.
    /// </summary>
    public static string Swallowed(ParseResult parse, IReadOnlyList<string> line) =>
        parse.CommandResult.Children.OfType<ArgumentResult>()
            .SelectMany(argument => argument.Tokens).Select(token => token.Value)
            .FirstOrDefault(word => word.Length > 2 && word.StartsWith("--", StringComparison.Ordinal)
                && line.TakeWhile(one => one != "--").Contains(word))
            is { } option ? Unknown(option, parse) : "";

    /// <summary>The library's own sentences, without those that only follow from what it does not know.</summary>
    private static IEnumerable<string> Known(ParseResult parse, string first) =>
        parse.CommandResult.Command.Subcommands.Count > 0 ? []
            : parse.Errors.Select(problem => problem.Message)
                .Where(message =>
                    !parse.UnmatchedTokens.Any(token => message.Contains($"'{token}'", StringComparison.Ordinal)));

    private static string Unknown(string word, ParseResult parse)
    {
        var command = parse.CommandResult.Command;
        if (word.StartsWith('-'))
            return $"there is no option {word}; {Meant(word, Options(parse), "the options are")}";
        return command.Subcommands.Count > 0
            ? $"there is no command \"{word}\"; "
                + $"{Meant(word, command.Subcommands.Select(sub => sub.Name), "the commands are")}"
            : $"\"{word}\" has no place here; a value with blanks needs quotes, as in \"wash aid\"";
    }

    private static string Meant(string word, IEnumerable<string> names, string otherwise) =>
        Spelling.Meant(word, names) is { Length: > 0 } meant
            ? meant.TrimEnd()
            : $"{otherwise} {string.Join(", ", names)}";

    /// <summary>The options of the command, and those that every command has.</summary>
    private static IEnumerable<string> Options(ParseResult parse) => parse.CommandResult.Command.Options
        .Concat(parse.RootCommandResult.Command.Options.Where(option => option.Recursive))
        .Where(option => !option.Hidden).Select(option => option.Name).Distinct();
}
