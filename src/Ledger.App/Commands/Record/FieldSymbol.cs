namespace Ledger.App.Commands.Record;

/// <summary>A field as a command takes it: by its position, as an option with a value, or as a flag.</summary>
internal sealed class FieldSymbol
{
    private readonly Argument<string[]>? _argument;
    private readonly Option<string[]>? _option;
    private readonly Option<bool>? _flag;

    public FieldSymbol(Field field)
    {
        Field = field;
        if (field.IsArgument)
            _argument = new(field.Name)
            {
                HelpName = field.Notation.Placeholder, Description = Described(field),
                Arity = field.Notation.Divider is null ? ArgumentArity.ZeroOrOne : ArgumentArity.ZeroOrMore,
                CustomParser = result => [.. result.Tokens.Select(token => token.Value)],
            };
        else if (field.Notation.Shape == Shape.Tick && !field.IsNeeded)
            _flag = new(field.Option) { Description = field.Help };
        else
            _option = new(field.Option)
            {
                HelpName = field.Notation.Placeholder, Description = Described(field),
                AllowMultipleArgumentsPerToken = field.Notation.Divider is not null,
                Arity = field.Notation.Divider is null ? ArgumentArity.ExactlyOne : ArgumentArity.OneOrMore,
                CustomParser = result => [.. result.Tokens.Select(token => token.Value)],
            };
        _option?.CompletionSources.Add([.. field.Notation.Words]);
        _argument?.CompletionSources.Add([.. field.Notation.Words]);
    }

    /// <summary>Completes it by what the ledger offers for its field.</summary>
    public FieldSymbol Offered(Offer offer)
    {
        _option?.Offered(offer);
        _argument?.Offered(offer);
        return this;
    }

    /// <summary>The field.</summary>
    public Field Field { get; }

    /// <summary>What was given for it; empty when nothing was.</summary>
    public string Text(ParseResult parse) =>
        _argument is not null ? string.Join(Field.Notation.Divider ?? " ", parse.GetValue(_argument) ?? [])
        : _flag is not null ? parse.GetValue(_flag) ? "yes" : ""
        : string.Join(Field.Notation.Divider ?? " ", parse.GetValue(_option!) ?? []);

    /// <summary>
    /// What was given for it on a line that is still being typed, where an option may lack its value yet.
    /// </summary>
    public string TextSoFar(ParseResult parse) =>
        (_option is null ? null : parse.GetResult(_option)) is { Tokens.Count: 0 } ? "" : Text(parse);

    public void AddArgument(Command command)
    {
        if (_argument is not null)
            command.Arguments.Add(_argument);
    }

    public void AddOption(Command command)
    {
        if ((Option?)_option is { } option)
            command.Options.Add(option);
        else if (_flag is not null)
            command.Options.Add(_flag);
    }

    private static string Described(Field field) =>
        field.Notation.Words.Count is 0 ? field.Help : $"{field.Help}: {string.Join(", ", field.Notation.Words)}";
}
