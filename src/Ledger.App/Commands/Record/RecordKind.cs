using System.Text.Json;
using Ledger.Storage;

namespace Ledger.App.Commands.Record;

/// <summary>
/// Records one kind of entry, made from its description: its arguments and options, or a JSON document in their place.
/// </summary>
internal class RecordKind : ExplainedCommand, IDescribed
{
    private readonly Workbench _bench;
    private readonly EntryKind _kind;
    private readonly KindArguments _arguments;

    private readonly Option<string?> _input = new("--input")
    {
        HelpName = "FILE",
        Description = "read a JSON document in place of arguments and options; - is the standard input",
    };

    private readonly Option<bool> _dryRun = new(
        "--dry-run") { Description = "show what it would change, and write nothing" };
    private readonly Told<PostingShown> _told;

    public RecordKind(Workbench bench, EntryKind kind)
        : base(kind.Name, kind.Purpose, KindHelp.Details(kind))
    {
        (_bench, _kind, _told) = (bench, kind, new(PostingShape.Of(kind)));
        _arguments = new(kind);
        _arguments.AddTo(this);
        Options.Add(_input);
        Options.Add(_dryRun);
        Options.Add(_told.Option);
        SetAction(Run);
    }

    public void Describe(Utf8JsonWriter json) => _told.Describe(json);

    /// <summary>The option that takes lines.</summary>
    protected Option<string[]>? Lines => _arguments.Lines;

    /// <summary>Completes what was given before it is read, for a kind that takes more than its fields.</summary>
    protected virtual void Complete(EntryText text, ParseResult parse, LedgerFile ledger, Holdings holdings,
        ReadingTerms terms) =>
        Definition.Complete(_kind, text, holdings, terms);

    /// <summary>Changes what was read before it is posted.</summary>
    protected virtual Entry React(Entry entry, ParseResult parse, LedgerFile ledger, ReadingTerms terms,
        ICollection<FieldProblem> problems) => entry;

    private int Run(ParseResult parse)
    {
        using var ledger = _bench.Open(parse);
        var holdings = ledger.HoldingsOn(ledger.Today);
        var problems = new List<FieldProblem>();
        var isDocument = parse.GetValue(_input) is not null;
        var terms = isDocument ? ReadingTerms.Of(holdings, ledger.Today) : ReadingTerms.Typed(holdings, ledger.Today);
        var text = parse.GetValue(_input) is { } file
            ? Document(file, problems)
            : _arguments.Text(parse, terms, problems);
        if (!isDocument)
            Complete(text, parse, ledger, holdings, terms);
        if (text[CommonFields.Reference].Length == 0)
            text.Key = Guid.CreateVersion7().ToString();
        var reading = EntryReading.Read(_kind, text, terms);
        problems.AddRange(reading.Problems);
        if (problems.Count > 0 || reading.Entry is null)
            return Explain(problems, parse, isDocument);
        var entry = React(reading.Entry, parse, ledger, terms, problems);
        if (problems.Count > 0)
            return Explain(problems, parse, isDocument);
        foreach (var caution in ChemistryCautions.Of(_kind, text, holdings))
            _bench.Say($"caution: {caution}");
        return parse.GetValue(_dryRun) ? Preview(ledger, entry, parse, terms) : Post(ledger, entry, parse, terms);
    }

    private EntryText Document(string file, List<FieldProblem> problems)
    {
        if (string.IsNullOrWhiteSpace(file))
        {
            problems.Add(new(null, 0, "", "the name of a file after --input, or - for the standard input"));
            return new();
        }

        using var stream = file == "-" ? _bench.Around.In() : File.OpenRead(file);
        try
        {
            using var document = JsonDocument.Parse(stream);
            return EntryJson.Text(_kind, document.RootElement, problems);
        }
        catch (JsonException wrong)
        {
            problems.Add(new(null, (int)(wrong.LineNumber ?? 0) + 1, "something that is not JSON",
                "one JSON document"));
            return new();
        }
    }

    private int Explain(List<FieldProblem> problems, ParseResult parse, bool isDocument)
    {
        foreach (var problem in problems)
            _bench.Say(
                problem.Sentence(field => isDocument ? field.JsonName : field.IsArgument ? field.Name : field.Option,
                    lines => isDocument ? lines.Name : lines.Option));
        _bench.Say($"`trayledger record {parse.CommandResult.Command.Name} --help` tells what is accepted");
        return ExitStatus.WrongCommandLine;
    }

    private int Preview(LedgerFile ledger, Entry entry, ParseResult parse, ReadingTerms terms)
    {
        switch (ledger.Preview(entry))
        {
            case Accepted accepted:
                Show(null, accepted.Posting, parse, terms);
                _bench.Say("nothing was written: this was a dry run");
                return ExitStatus.Done;
            case Refused refused:
                return Refuse(refused.Refusal);
            case var other:
                throw new InvalidOperationException($"the rules answered with {other}");
        }
    }

    private int Post(LedgerFile ledger, Entry entry, ParseResult parse, ReadingTerms terms)
    {
        switch (ledger.Post(entry))
        {
            case Posted posted:
                _bench.Written = $"entry {posted.Number} is recorded";
                Show(posted.Number, posted.Posting, parse, terms);
                return ExitStatus.Done;
            case AlreadyPosted already:
                _bench.Say(
                    $"entry {already.Number} stands in the journal under this reference already; nothing was written");
                return ExitStatus.Done;
            case NotPosted refused:
                return Refuse(refused.Refusal);
            case var other:
                throw new InvalidOperationException($"the ledger answered with {other}");
        }
    }

    private void Show(long? number, Posting posting, ParseResult parse, ReadingTerms terms)
    {
        if (!_told.Write(parse, _bench.Around.Out, new(number, posting, terms)))
            PostingText.Write(number is null ? "would be recorded" : $"entry {number}", posting, _bench.Around);
    }

    private int Refuse(Refusal refusal)
    {
        _bench.Say(refusal.Sentence);
        return ExitStatus.Refused;
    }
}
