namespace Ledger.App.Commands.Record;

/// <summary>
/// The arguments and options of a kind of entry, as texts. None is required by the command line itself: what is missing
/// is said by the one reader of entries, in the same words as in a form or a file.
/// </summary>
internal sealed class KindArguments
{
    private readonly EntryKind _kind;
    private readonly List<FieldSymbol> _own;
    private readonly List<FieldSymbol> _alone = [];
    private readonly Option<string[]>? _lines;

    public KindArguments(EntryKind kind)
    {
        _kind = kind;
        _own = [.. kind.AllFields.Select(field => new FieldSymbol(field).Offered(
            (_, holdings, line) => field.Choices?.Invoke(Read(line, holdings), holdings) ?? []))];
        if (kind.Line is not { } line)
            return;
        _lines = new(line.Option)
        {
            HelpName = "LINE", Description = $"{line.Help}: \"{LinePhrase.Pattern(line)}\"",
            AllowMultipleArgumentsPerToken = true,
        };
        _lines.OfferedWithin((holdings, begun) =>
            LinePhrase.Next(line, begun, ReadingTerms.Typed(holdings, holdings.AsOf), holdings));
        if (line.MayStandAlone)
            _alone.AddRange(line.Fields.OrderBy(field => !field.IsNeeded)
                .Select(field => new FieldSymbol(field).Offered(
                    (_, holdings, _) => field.Choices?.Invoke(new FieldValues(), holdings) ?? [])));
    }

    /// <summary>The option that takes lines; null where the kind has none.</summary>
    public Option<string[]>? Lines => _lines;

    public void AddTo(Command command)
    {
        foreach (var symbol in _own.Concat(_alone))
            symbol.AddArgument(command);
        if (_lines is not null)
            command.Options.Add(_lines);
        foreach (var symbol in _own.Except(Common).Concat(_alone).Concat(Common))
            symbol.AddOption(command);
    }

    /// <summary>What was given, by field.</summary>
    public EntryText Text(ParseResult parse, ReadingTerms terms, ICollection<FieldProblem> problems)
    {
        var text = new EntryText();
        foreach (var symbol in _own)
            text[symbol.Field] = symbol.Text(parse);
        if (_lines is null)
            return text;
        foreach (var phrase in parse.GetValue(_lines) ?? [])
            text.Lines.Add(LinePhrase.Read(_kind.Line!, phrase, terms, problems));
        Alone(parse, text, problems);
        return text;
    }

    /// <summary>What was typed so far, as far as it can be read.</summary>
    private FieldValues Read(ParseResult line, Holdings holdings)
    {
        var (terms, text) = (ReadingTerms.Typed(holdings, holdings.AsOf), new EntryText());
        foreach (var symbol in _own)
            text[symbol.Field] = symbol.TextSoFar(line);
        return EntryReading.Read(_kind, text, terms).Values;
    }

    private IEnumerable<FieldSymbol> Common => _own.Where(symbol =>
        symbol.Field == CommonFields.Date
            || (symbol.Field != CommonFields.Anyway && _kind.Common.Contains(symbol.Field)));

    /// <summary>A single line that was said by the line's own fields.</summary>
    private void Alone(ParseResult parse, EntryText text, ICollection<FieldProblem> problems)
    {
        var alone = new EntryText();
        var given = _alone.Where(symbol => (alone[symbol.Field] = symbol.Text(parse)).Length > 0).ToList();
        if (given.Count == 0)
            return;
        if (text.Lines.Count > 0)
            problems.Add(new(given[0].Field, 0, alone[given[0].Field],
                $"nothing beside {_lines!.Name}: each line says it itself"));
        else
            text.Lines.Add(alone);
    }
}
