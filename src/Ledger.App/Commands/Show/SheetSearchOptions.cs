using System.CommandLine;
using Ledger.App.Values;
using Ledger.Core.Film;
using Ledger.Core.Sessions;
using Ledger.Core.Tracing;
using NodaTime;

namespace Ledger.App.Commands.Show;

/// <summary>What sheets are looked for, on the command line.</summary>
internal sealed class SheetSearchOptions
{
    private readonly Argument<string[]> _words = new("words")
    {
        Arity = ArgumentArity.ZeroOrMore,
        Description = "words that must all occur: in the number, subject, film, group, side, session, bath, emulsion number, fate or filing place",
    };

    private readonly Option<string?> _film = Typed.Option<string?>("--film", "ITEM", Text.NotEmpty, "one film");
    private readonly Option<string?> _group = Typed.Option<string?>("--group", "GROUP", Text.NotEmpty,
        "one development group, such as N-1");
    private readonly Option<LocalDate?> _from = Typed.Option(
        "--from", "DATE", Text.Date, "the first day: of the exposure, where that is not known of the development");

    private readonly Option<LocalDate?> _to = Typed.Option("--to", "DATE", Text.Date, "the last day");
    private readonly Option<string?> _holder = Typed.Option<string?>("--holder", "HOLDER", Text.NotEmpty,
        "a holder, or one of its sides");
    private readonly Option<string?> _bath = Typed.Option<string?>("--bath", "BATH", Text.NotEmpty,
        "a bath that they went through");
    private readonly Option<Fate?> _fate = Typed.Option(
        "--fate", "FATE", Text.OneOf<Fate>([.. Fates.Names.Where(name => name != Fate.Dummy.Name())], "fate"),
            "what became of them by now");

    private readonly Option<RejectCause?> _cause = Typed.Option("--cause", "CAUSE",
        Text.OneOf<RejectCause>(RejectCauses.Names, "cause"), "what spoiled them");
    private readonly Option<string?> _number = Typed.Option<string?>("--number", "NUMBER", Text.NotEmpty,
        "the emulsion number of their film");
    private readonly Option<string?> _session = Typed.Option<string?>("--session", "SESSION", Text.NotEmpty,
        "the session that developed them");

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
