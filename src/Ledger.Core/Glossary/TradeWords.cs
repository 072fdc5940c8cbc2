using System.Text.RegularExpressions;
using Ledger.Core.Measures;

namespace Ledger.Core.Glossary;

/// <summary>All terms, in the order of the alphabet.</summary>
public static class TradeWords
{
    /// <summary>All terms.</summary>
    public static IReadOnlyList<Term> All { get; } =
    [
        .. Chemistry().Concat(FilmWords()).Concat(Stock()).Concat(Money()).Concat(Book()).OrderBy(term => term.Word,
            StringComparer.OrdinalIgnoreCase),
    ];

    /// <summary>The term of that name, or of a word that leads to it, in any case; null when there is none.</summary>
    public static Term? Named(string word)
    {
        var plain = Plain(word);
        return All.FirstOrDefault(term => Plain(term.Word) == plain)
            ?? All.FirstOrDefault(term => term.FindBy.Any(other => Plain(other) == plain));
    }

    /// <summary>Terms that may have been meant: spelled nearly so, or holding the word.</summary>
    public static IEnumerable<Term> Near(string word) => All.Where(term => term.FindBy.Prepend(term.Word).Any(
        name => Spelling.IsNear(name, word) || Plain(name).Contains(Plain(word), StringComparison.Ordinal)));

    /// <summary>The terms that texts use, each once, in the order of the alphabet.</summary>
    public static IEnumerable<Term> In(IEnumerable<string> texts)
    {
        var all = string.Join('\n', texts);
        return All.Where(term => Regex.IsMatch(
            all, $@"(?<![\w+-]){Regex.Escape(term.Word)}(s|es|ed)?(?![\w+-])",
            RegexOptions.IgnoreCase | RegexOptions.CultureInvariant));
    }

    private static string Plain(string word) => word.Trim().Replace('-', ' ').Replace('_', ' ').ToUpperInvariant();

    private static IEnumerable<Term> Chemistry() =>
    [
        new("concentrate", "A chemical as it is bought, before water is added.") { FindBy = ["stock", "syrup"] },
        new("stock solution", "A solution made up from powder or concentrate, kept, and diluted further for use.")
        {
            See = "record stock-solution",
        },
        new("working solution", "A solution as it is used in the tray.") { FindBy = ["mix"] },
        new(
            "dilution",
            "One part of concentrate and so many parts of water: 1+49 is 1 part in 50 parts of working solution.")
        {
            FindBy = ["1+49", "ratio"],
        },
        new("one-shot", "Used once and then discarded, as developer for one batch often is. The opposite is reused.")
        {
            FindBy = ["one shot", "disposable"],
        },
        new(
            "reused",
            "A bath that is kept and used for many sessions until it is exhausted or expired. The opposite is "
            + "one-shot."),
        new(
            "bath",
            "A working solution that is kept and used again, with a name of its own: F4. Its vessel is a tray.")
        {
            See = "show baths",
        },
        new("tray", "The flat vessel that holds a solution while film is in it.") { FindBy = ["dish"] },
        new("presoak", "Water before the developer; it wets the sheets so that they do not stick together.")
        {
            FindBy = ["soak", "pre-wet"],
        },
        new("stop bath", "A weak acid bath after the developer, which ends development at once.") { FindBy = ["stop"] },
        new("wash aid", "A bath between fixer and wash that shortens the wash.") { FindBy = ["hypo clearing agent"] },
        new("wetting agent", "The last bath, against drying marks.") { FindBy = ["rinse aid"] },
        new("final rinse", "The last water of the wash.") { FindBy = ["last rinse"] },
        new(
            "two-bath fixing",
            "Film is fixed in two baths, one after the other. The first does most of the work; when it is "
            + "exhausted, the pair is rotated.")
        {
            FindBy = ["two-bath", "two bath", "pair"], See = "show baths",
        },
        new(
            "rotation",
            "In two-bath fixing: the first bath is discarded, the second moves up to first, and a new second is "
            + "mixed.")
        {
            FindBy = ["rotate", "rotate the pair"], See = "record rotation",
        },
        new(
            "capacity",
            "How much area of film a litre of a bath can take before it is exhausted, in square inches: 2000 sq "
            + "in per litre. Its basis says where the figure comes from: the maker, a handbook, your own tests.")
        {
            FindBy = ["basis", "room", "capacity left"], See = "show baths",
        },
        new(
            "fixer factor",
            "How much of a fixer's capacity a film uses, against conventional film: 1.5 for tabular grain means "
            + "that a sheet counts as one and a half.")
        {
            FindBy = ["load", "weight", "fixer weight"], See = "record item",
        },
        new(
            "clearing time",
            "The seconds until an undeveloped strip of film becomes clear in the fixer. Film is fixed for at "
            + "least twice that (common practice).")
        {
            FindBy = ["clear time"], See = "record clearing-test",
        },
        new(
            "clearing test",
            "The clearing time of a used fixer beside that of a fresh one. At twice the fresh time the fixer is "
            + "exhausted (common practice).")
        {
            FindBy = ["clip test", "leader test"], See = "record clearing-test",
        },
        new("residual silver test", "A drop on film or paper that shows whether fixing was complete.")
        {
            FindBy = ["silver test"], See = "record residual-test",
        },
        new("residual hypo test", "A drop that shows how much fixer the wash left in film or paper.")
        {
            FindBy = ["hypo", "residual thiosulfate", "residual fixer", "ht"], See = "record residual-test",
        },
        new("silver strip", "A paper strip whose colour shows how much silver a fixer holds.")
        {
            See = "record silver-test",
        },
        new("indicator", "A dye in a stop bath that changes colour when the bath is exhausted.")
        {
            See = "record indicator",
        },
        new(
            "replenishment",
            "Fresh solution is added to a bath by the area that went through it, so that it keeps its strength. "
            + "What is added is the replenisher.")
        {
            FindBy = ["replenish", "replenisher", "top up"], See = "record top-up",
        },
        new(
            "control strip",
            "A strip exposed always in the same way; developed, it shows whether a replenished developer still "
            + "works as before.")
        {
            See = "record control-strip",
        },
        new(
            "exhausted",
            "A bath that no longer works because of what went through it: shown by area, by a test, by sight, or "
            + "by its replenisher.")
        {
            FindBy = ["spent", "dead"], See = "show baths",
        },
        new(
            "expired",
            "Past the day until which it was good: by its expiry date, or by its life since opening or mixing.")
        {
            FindBy = ["past date", "old"], See = "show today",
        },
        new(
            "good until",
            "The last day on which something can be used, by the rule that comes first; the rule stands beside "
            + "it: limited by life since opening.")
        {
            FindBy = ["limited by", "keeping"], See = "show shelf",
        },
        new("expiry date", "The last day that the maker prints on a box or bottle.")
        {
            FindBy = ["expiration", "printed date"],
        },
        new("floating lid", "A lid that swims on the solution in a tray and keeps the air away."),
        new("used fixer", "Fixer that was used; it holds silver and is collected in a jug.")
        {
            FindBy = ["spent fixer", "old fixer"], See = "show jugs",
        },
        new(
            "waste jug",
            "A jug in which used solution of one kind waits to be handed over to a place that may take it.")
        {
            FindBy = ["jug", "waste"], See = "show jugs",
        },
        new(
            "discard",
            "To end a bath or bottle and say where it went: into a waste jug, or to a place that takes it.")
        {
            FindBy = ["pour out", "dump", "throw away"], See = "record discard",
        },
    ];

    private static IEnumerable<Term> FilmWords() =>
    [
        new("film holder", "A flat case for two sheets of film, one in each side, that goes into the camera.")
        {
            FindBy = ["holder"], See = "show holders",
        },
        new("side", "One half of a film holder, for one sheet: E07-2 is side 2 of holder E07.")
        {
            FindBy = ["slot"], See = "show holders",
        },
        new("dark slide", "The panel that covers a sheet in its holder and is pulled out for the exposure.")
        {
            FindBy = ["slide"],
        },
        new("flap notches", "Notches filed into a holder's flap, to tell the holder in the dark.")
        {
            FindBy = ["notch"],
        },
        new("exposed", "Film that has seen the shutter and waits for its development; unexposed film has not.")
        {
            FindBy = ["unexposed"], See = "show holders",
        },
        new(
            "group",
            "Sheets to be developed in the same way: N normally, N+1 for more contrast (expansion), N-1 for less "
            + "(contraction).")
        {
            FindBy = ["n", "n+1", "n-1", "expansion", "contraction", "development group"], See = "record exposure",
        },
        new("batch of sheets", "Sheets that are developed together in one tray.")
        {
            FindBy = ["batch"], See = "plan session",
        },
        new("dummy", "A rejected sheet that is developed beside a lone one, so that the stack can be shuffled.")
        {
            See = "plan session",
        },
        new(
            "shuffle",
            "To move the lowest sheet of the stack to the top. A full shuffle moves every sheet once; the shuffle "
            + "interval is the time between two moves.")
        {
            FindBy = ["full shuffle", "shuffle interval", "agitation"], See = "plan session",
        },
        new(
            "turn the stack",
            "Halfway through development the whole stack is turned by 180 degrees, so that all edges get the "
            + "same.")
        {
            FindBy = ["rotate the stack"],
        },
        new(
            "exposure index",
            "The film speed that you set on your meter for a film, from your own tests; the box speed is printed "
            + "on the box.")
        {
            FindBy = ["ei", "speed", "box speed"], See = "record exposure-index",
        },
        new(
            "emulsion number",
            "The maker's number of a production run, printed on a box of film; on a bottle it is the batch "
            + "number.")
        {
            FindBy = ["lot", "batch number"],
        },
        new("panchromatic", "Film that sees all colours. It tolerates no light at all, and no safelight.")
        {
            FindBy = ["pan"],
        },
        new(
            "orthochromatic",
            "Film that does not see deep red. It tolerates only the safelight that its maker names.")
        {
            FindBy = ["ortho"],
        },
        new(
            "safelight",
            "The dim lamp that the maker of a paper or an orthochromatic film allows. A red screen is not one."),
        new("negative", "A developed sheet; it has a number. A keeper is worth printing, a reject is not usable.")
        {
            FindBy = ["fate"], See = "show sessions",
        },
        new("keeper", "A negative that is worth printing.") { See = "record keeper" },
        new(
            "reject",
            "A developed sheet that was spoiled, with its cause: dust, scratch, fogged, loaded backwards, uneven, "
            + "under-fixed.")
        {
            See = "record session",
        },
        new(
            "process",
            "The steps of a way to develop, from the presoak to the final rinse, with their solutions and times.")
        {
            See = "record process",
        },
        new("session", "One evening's developing: sheets, developer, baths, supplies, and what became of each sheet.")
        {
            See = "show sessions",
        },
        new("trip", "A plan for days of photographing: film is taken along and nothing is developed.")
        {
            See = "record plan",
        },
        new(
            "mixing sheet",
            "The printed plan of a session: what to measure, the trays, the sheets in order. Read it before "
            + "lights-out.")
        {
            See = "print mixing-sheet",
        },
        new("tally slip", "A printed slip beside a bath with a box to cross out for each sheet.")
        {
            See = "print tally-slip",
        },
    ];

    private static IEnumerable<Term> Stock() =>
    [
        new("on hand", "What is on the shelf, expired or not.") { FindBy = ["inventory", "stock"], See = "show shelf" },
        new("usable", "What is on hand and not expired, and can be drawn from its bottle.")
        {
            FindBy = ["available", "good"], See = "show shelf",
        },
        new("planned", "What your plans will use.") { FindBy = ["reserved"], See = "show plans" },
        new("on order", "What was ordered and has not been delivered.") { FindBy = ["incoming"], See = "show reorder" },
        new("delivery", "What arrived in one go, one item or several; its reference is the invoice's number.")
        {
            FindBy = ["receipt", "purchase", "invoice"], See = "record delivery",
        },
        new("back-ordered", "The supplier has none now and will send it later.") { See = "record order-change" },
        new("lead time", "The days from an order to its delivery.")
        {
            FindBy = ["delivery time"], See = "show reorder",
        },
        new(
            "service level",
            "How often stock should last until the delivery: 95 % means that it may run out before 5 of 100 "
            + "deliveries.")
        {
            See = "show reorder",
        },
        new(
            "safety stock",
            "What is kept beyond the usual use during a lead time, so that stock lasts in a busy time too.")
        {
            See = "show reorder",
        },
        new(
            "reorder point",
            "The stock at which to order, so that it lasts until the delivery as often as the service level asks.")
        {
            FindBy = ["order at"], See = "show reorder",
        },
        new("minimum", "Your own lower limit of an item: less than that calls for an order.") { See = "record item" },
        new(
            "order window",
            "The days of a year on which an item can be ordered at all, such as film that is cut once a year.")
        {
            See = "record order-terms",
        },
        new("count", "What you counted or measured on the shelf; the stock difference is booked as found.")
        {
            FindBy = ["stocktake", "stock difference"], See = "record count",
        },
        new("decanting", "Filling a bottle into smaller full ones, which keep longer.")
        {
            FindBy = ["decant"], See = "record decanting",
        },
    ];

    private static IEnumerable<Term> Money() =>
    [
        new(
            "landed cost",
            "What a delivery cost on your shelf: price less discount, with its share of shipping, duty and tax.")
        {
            See = "show prices",
        },
        new(
            "cost formula",
            "How used stock is costed: specific lot (what the lot that was taken had cost), first in first out, "
            + "or moving average.")
        {
            FindBy = ["fifo", "first in first out", "specific lot", "moving average"], See = "show costs",
        },
        new("reconcile", "All that was bought is accounted for: used, wasted, or still on hand. The costs say so.")
        {
            See = "show costs",
        },
    ];

    private static IEnumerable<Term> Book() =>
    [
        new("entry", "One thing that you recorded, with a number. All entries stand in the journal.")
        {
            See = "show journal",
        },
        new("undo", "To take an entry back. It stays in the journal, marked as taken back.")
        {
            FindBy = ["correction", "reverse", "take back"], See = "record undo",
        },
        new("amend", "To change what an earlier entry says, with a reason. What it said before stays readable.")
        {
            FindBy = ["edit", "correct"], See = "record amendment",
        },
        new(
            "reference",
            "Your own name for an entry, such as an invoice's number. Sending it again under the same one adds "
            + "nothing."),
    ];
}
