using System.CommandLine;
using Ledger.Core.Journal.Kinds;

namespace Ledger.App.Commands.Record;

/// <summary>
/// The arguments and options of a kind of entry, as texts. None is required by the command line itself: what is missing is said by the one
/// reader of entries, in the same words as in a form or a file.
/// </summary>
internal sealed class KindArguments
{
    private readonly EntryKind _kind;
    private readonly Dictionary<Field, Argument<string[]>> _arguments = [];
    private readonly Dictionary<Field, Option<string?>> _options = [];
    private readonly Dictionary<Field, Option<bool>> _ticks = [];
    private readonly Option<string[]>? _lines;

    public KindArguments(EntryKind kind)
    {
        _kind = kind;
        foreach (var field in kind.AllFields)
            if (field.IsArgument)
                _arguments[field] = new(field.Name)
                {
                    HelpName = field.Notation.Placeholder, Description = field.Help,
                    Arity = field.Notation.Divider is null ? ArgumentArity.ZeroOrOne : ArgumentArity.ZeroOrMore,
                };
            else if (field.Notation.Shape == Shape.Tick && !field.IsNeeded)
                _ticks[field] = new(field.Option) { Description = field.Help };
            else
                _options[field] = new(field.Option) { HelpName = field.Notation.Placeholder, Description = Described(field) };
        if (kind.Line is { } line)
            _lines = new($"--{line.Name}")
            {
                HelpName = "LINE", Description = $"{line.Help}: \"{LinePhrase.Pattern(line)}\"", AllowMultipleArgumentsPerToken = true,
            };
    }

    public void AddTo(Command command)
    {
        foreach (var field in _kind.AllFields)
            if (_arguments.TryGetValue(field, out var argument))
                command.Arguments.Add(argument);
        if (_lines is not null)
            command.Options.Add(_lines);
        foreach (var field in _kind.Fields.Concat([CommonFields.Date, CommonFields.Note, CommonFields.Reference]))
            if (_options.TryGetValue(field, out var option))
            {
                if (field.Notation.Words.Count > 0)
                    option.CompletionSources.Add([.. field.Notation.Words]);
                command.Options.Add(option);
            }
            else if (_ticks.TryGetValue(field, out var tick))
                command.Options.Add(tick);
    }

    /// <summary>What was given, by field.</summary>
    public EntryText Text(ParseResult parse, ReadingTerms terms, ICollection<FieldProblem> problems)
    {
        var text = new EntryText();
        foreach (var (field, argument) in _arguments)
            text[field] = string.Join(field.Notation.Divider ?? " ", parse.GetValue(argument) ?? []);
        foreach (var (field, option) in _options)
            text[field] = parse.GetValue(option) ?? "";
        foreach (var (field, tick) in _ticks)
            text[field] = parse.GetValue(tick) ? "yes" : "";
        if (_lines is not null)
            foreach (var phrase in parse.GetValue(_lines) ?? [])
                text.Lines.Add(LinePhrase.Read(_kind.Line!, phrase, terms, problems));
        return text;
    }

    private static string Described(Field field) =>
        field.Notation.Words.Count is 0 ? field.Help : $"{field.Help}: {string.Join(", ", field.Notation.Words)}";
}
