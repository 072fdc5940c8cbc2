namespace Ledger.App.Commands.Show;

/// <summary>What sheets are looked for, on the command line.</summary>
internal sealed class SheetSearchOptions
{
    private readonly Argument<string[]> _words = new("words")
    {
        Arity = ArgumentArity.ZeroOrMore,
        Description = "words that must all occur: in the number, subject, film, group, side, session, bath, emulsion "
            + "number, fate or filing place",
    };

    private readonly Option<string?> _film = Typed.Option<string?>("--film", "ITEM", Text.NotEmpty, "one film")
        .Offered(Offers.Films);
    private readonly Option<string?> _group = Typed.Option<string?>("--group", "GROUP", Text.NotEmpty,
        "one development group, such as N-1").Offered(Offers.Groups);
    private readonly Option<LocalDate?> _from = Typed.Option(
        "--from", "DATE", Text.Date, "the first day: of the exposure, where that is not known of the development");

    private readonly Option<LocalDate?> _to = Typed.Option("--to", "DATE", Text.Date, "the last day");
    private readonly Option<string?> _holder = Typed.Option<string?>("--holder", "HOLDER", Text.NotEmpty,
        "a holder, or one of its sides").Offered(Offers.Holders);
    private readonly Option<string?> _bath = Typed.Option<string?>("--bath", "BATH", Text.NotEmpty,
        "a bath that they went through").Offered(Offers.Baths);
    private readonly Option<Fate?> _fate = Typed.Choice<Fate>(
        "--fate", "FATE", [.. Fates.Names.Where(name => name != Fate.Dummy.Name())], "fate",
            "what became of them by now");

    private readonly Option<RejectCause?> _cause = Typed.Choice<RejectCause>(
        "--cause", "CAUSE", RejectCauses.Names, "cause", "what spoiled them");
    private readonly Option<string?> _number = Typed.Option<string?>("--number", "NUMBER", Text.NotEmpty,
        "the emulsion number of their film").Offered(Offers.EmulsionNumbers);
    private readonly Option<string?> _session = Typed.Option<string?>("--session", "SESSION", Text.NotEmpty,
        "the session that developed them").Offered(Offers.Sessions);

    public void AddTo(Command command)
    {
        command.Arguments.Add(_words);
        foreach (var option in new Option[] { _film, _group, _from, _to, _holder, _bath, _fate, _cause, _number,
            _session })
            command.Options.Add(option);
    }

    public SheetSearch Read(ParseResult parse) => new()
    {
        Words = parse.GetValue(_words) ?? [], Film = parse.GetValue(_film), Group = parse.GetValue(_group),
            From = parse.GetValue(_from),
        To = parse.GetValue(_to), Holder = parse.GetValue(_holder), Bath = parse.GetValue(_bath),
            Fate = parse.GetValue(_fate),
        Cause = parse.GetValue(_cause), Number = parse.GetValue(_number), Session = parse.GetValue(_session),
    };
}
