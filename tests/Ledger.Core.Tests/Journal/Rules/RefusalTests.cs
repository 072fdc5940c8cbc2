namespace Ledger.Core.Tests.Journal.Rules;

/// <summary>
/// What is refused, why, and which refusal wins: down each group the entry has one fault less, until it is accepted.
/// Nothing else is on the shelf than what <see cref="Given"/> says. Whatever is refused leaves the ledger as it was.
/// </summary>
public sealed class RefusalTests
{
    /// <summary>On 15 March. Entries 1 to 7 define items and the process pm; 8 to 13 are deliveries; then:</summary>
    private const string Given = """
        bath bath=F1 date=2026-02-01
        bath bath=F2 paired_with=F1 date=2026-02-01
        bath bath=P1 material=paper working_ml=400 date=2026-02-01
        bath bath=F0 date=2026-01-20
        discard what=F0 date=2026-01-31
        session session=S1 line=4_fen80 bath=F1 date=2026-02-10
        opening container=reed400/1 date=2026-02-11
        discard what=stop/1 reason=wet date=2026-02-12
        undo entry=21
        """;

    private const string Refused = """
        entry                                                       | refused as    | because
        - every entry
        opening container=nothing date=2026-03-16                   | InFuture      | 2026-03-16 is later than today, 2026-03-15
        opening container=nothing date=1899-12-31                   | NotAccepted   | 1899-12-31 is too long ago; dates start with 1900
        opening container=nothing                                   | Unknown       | there is no container "nothing"
        - an item
        item item=                                                  | NotAccepted   | an item needs a name
        item item=pan/100 name=                                     | NotAccepted   | item pan/100 needs a name
        item item=pan/100                                           | NotAccepted   | the item code "pan/100" may hold letters, digits
        item pack=10piece                                           | NotAccepted   | ortho16 is kept in sheets, not in pieces
        item pack=0sheet                                            | NotAccepted   | the pack of ortho16 must be more than nothing
        item                                                        | NotAccepted   | ortho16 is film and needs a format
        item format=120                                             | NotAccepted   | ortho16 in 120 is counted in rolls, not sheets
        item kind=supply format=8x10                                | NotAccepted   | ortho16 is a supply, and only film and paper have a format
        item format=8x10 fixer_factor=0                             | NotAccepted   | the fixer factor of ortho16 must be from 0.1 to 10
        item format=8x10 capacity_sq_in_per_litre=0                 | NotAccepted   | the capacity of ortho16 must be more than nothing
        item format=8x10 capacity_sq_in_per_litre=2000              | NotAccepted   | the capacity of ortho16 needs its basis
        item format=8x10 service_level=1                            | NotAccepted   | the service level of ortho16 must be between 0 and 1
        item format=8x10 lead_time_days=-1                          | NotAccepted   | the lead time of ortho16 must be from 0 to 3650 days
        item format=8x10 minimum_on_hand=5ml                        | NotAccepted   | ortho16 is kept in sheets, not in ml
        item format=8x10 minimum_on_hand=-5sheet                    | NotAccepted   | the minimum of ortho16 cannot be negative
        item format=8x10 opened_full_days=0                         | NotAccepted   | a keeping limit of ortho16 must be from 1 to 36500
        item format=8x10 tray_hours=36501                           | NotAccepted   | a keeping limit of ortho16 must be from 1 to 36500
        item item=FEN80 format=4x5                                  | NotAccepted   | give the changed product a code of its own
        item format=8x10                                            | -             |
        - a setting
        setting setting=colour value=red                            | Unknown       | there is no setting "colour"; known: currency, liquids
        setting setting=warn-days value=soon                        | NotAccepted   | warn-days accepts a whole number of days, 0 to 365
        setting setting=warn-days value=366                         | NotAccepted   | not "366"
        setting setting=warn-days value=365                         | -             |
        - a delivery
        delivery item=nothing packs=0 price=-1                      | Unknown       | there is no item "nothing"; known: fen80, reed400
        delivery item=fen80 packs=0 price=-1                        | NotAccepted   | the packs of fen80 must be more than 0 and at most 10000, not 0
        delivery item=fen80 packs=10001 price=-1                    | NotAccepted   | not 10001
        delivery item=fen80 packs=0.5 price=1                       | NotAccepted   | 0.5 packs of 25 sheets do not give whole sheets
        delivery item=fen80 expires=2201-01-01 price=-1             | NotAccepted   | the expiry date of fen80 must lie between 1900 and 2200
        delivery item=fen80 price=-1                                | NotAccepted   | the price of fen80 cannot be negative: -1
        delivery item=fen80 discount=-1                             | NotAccepted   | the discount cannot be negative
        delivery item=fen80 shipping=-1                             | NotAccepted   | the shipping cannot be negative
        delivery item=fen80 duty=-1                                 | NotAccepted   | the duty cannot be negative
        delivery item=fen80 price=10 rate=0                         | NotAccepted   | the rate must be more than 0
        delivery item=fen80 price=10 discount=11                    | NotAccepted   | the discount, 11.00, is more than the 10.00 that the goods cost
        delivery item=fen80 price=9000000000000 packs=2             | NotAccepted   | a figure is too large to be kept exactly
        delivery item=fen80 price=10 currency=euro                  | NotAccepted   | "euro" is not a currency code
        delivery item=fen80 price=150                               | -             |
        - an opening
        opening container=fen80/9                                   | Unknown       | there is no container "fen80/9"
        opening container=fen80/2 date=2026-01-09                   | NotAccepted   | fen80/2 came on 2026-01-10, after 2026-01-09
        opening container=fen80 batch=X1                            | Unknown       | there is no sealed container of fen80 of batch X1
        opening container=reed400                                   | Unknown       | there is no sealed container of reed400 on 2026-03-15
        opening container=reed400/1                                 | AlreadyThere  | reed400/1 is open since 2026-02-11; open another
        opening container=fen80/1                                   | AlreadyThere  | fen80/1 is open since 2026-02-10
        opening container=fen80/2                                   | -             |
        - a bath
        bath bath= item=nothing                                     | NotAccepted   | a bath needs a name
        bath bath=f1 item=nothing                                   | AlreadyThere  | there was a bath f1 already
        bath bath=F0 item=nothing                                   | AlreadyThere  | there was a bath F0 already
        bath bath=F3 item=nothing working_ml=0                      | Unknown       | there is no item "nothing"
        bath bath=F3 item=gloves working_ml=0                       | NotAccepted   | gloves is not a chemical, so a bath cannot be mixed from it
        bath bath=F3 item=stop working_ml=0                         | NotAccepted   | the working volume must be more than nothing
        bath bath=F3 item=stop                                      | NotAccepted   | stop has no usual dilution; say it, such as 1+4
        bath bath=F3 item=stop dilution=1+19                        | NotAccepted   | stop is kept in g; say how much of it was used
        bath bath=F3 item=stop dilution=1+19 concentrate_ml=30ml    | NotAccepted   | stop is kept in g, not in ml
        bath bath=F3 paired_with=F9                                 | Unknown       | there is no bath "F9" in use; known: F1, F2, P1
        bath bath=F3 paired_with=F0                                 | Unknown       | there is no bath "F0" in use
        bath bath=F3 paired_with=F1                                 | NotAccepted   | bath F1 has a second bath already: F2
        bath bath=F3 paired_with=P1                                 | WrongMaterial | bath P1 is for paper; film and paper never share a pair
        bath bath=F3 paired_with=F2 date=2026-01-31                 | NotAccepted   | bath F2 was mixed on 2026-02-01, after 2026-01-31
        bath bath=F3 capacity_sq_in_per_litre=0                     | NotAccepted   | the capacity of F3 must be more than nothing
        bath bath=F3 capacity_sq_in_per_litre=2000 capacity_basis=_ | NotAccepted   | the capacity of F3 needs its basis
        bath bath=F3 concentrate_ml=-1ml                            | NotAccepted   | the quantity of fix must be more than nothing, not -1 ml
        bath bath=F3 container=syrup/1                              | NotAccepted   | syrup/1 holds syrup, not fix
        bath bath=F3 working_ml=1501                                | MoreThanHeld  | fix/1 holds 20 ml on 2026-03-15, and 300.2 ml are wanted
        bath bath=F3 date=2026-01-09                                | MoreThanHeld  | fix holds 0 ml on 2026-01-09
        bath bath=F3 concentrate_ml=0.001ml                         | -             |
        - a session
        session session= process=none                               | NotAccepted   | a session needs a name
        session session=s1 process=none                             | AlreadyThere  | session s1 is in the journal already
        session session=S2 process=none                             | Unknown       | there is no process "none"; known: pm
        session session=S2                                          | NotAccepted   | a session needs at least one line of sheets
        session session=S2 line=0_nothing                           | Unknown       | there is no item "nothing"
        session session=S2 line=0_stop                              | NotAccepted   | stop is a chemical and cannot be developed; name a film
        session session=S2 line=0_fen80                             | NotAccepted   | the sheets of fen80 must be from 1 to 1000, not 0
        session session=S2 line=1001_fen80                          | NotAccepted   | must be from 1 to 1000, not 1001
        session session=S2 line=60_fen80 bath=F9                    | Unknown       | there is no bath "F9" in use
        session session=S2 line=60_fen80 bath=P1                    | WrongMaterial | bath P1 is for paper; film never goes through it
        session session=S2 line=60_fen80 bath=F2                    | NotAccepted   | bath F2 is the second bath of a pair; name the first, F1
        session session=S2 line=60_fen80 date=2026-01-31            | NotAccepted   | process pm needs a bath of fix; none is in use
        session session=S2 line=60_fen80_3000ml                     | MoreThanHeld  | syrup holds 1975 ml
        session session=S2 line=60_fen80                            | MoreThanHeld  | fen80 holds 46 sheets on 2026-03-15, and 60 sheets
        session session=S2 line=60_fen80 book_difference=yes        | MoreThanHeld  | record the delivery or a count first
        session session=S2 line=26_fen80_from_fen80/2               | MoreThanHeld  | fen80/2 holds 25 sheets
        session session=S2 line=4_fen80_from_reed400/1              | NotAccepted   | reed400/1 holds reed400, not fen80
        session session=S2 line=40_fen80 line=7_fen80               | MoreThanHeld  | fen80 holds 6 sheets
        session session=S2 line=40_fen80 line=6_fen80               | -             |
        - a discard
        discard what=nothing reason=_                               | NotAccepted   | a reason is needed
        discard what=nothing                                        | Unknown       | there is no container "nothing"
        discard what=F1 quantity=100ml                              | NotAccepted   | F1 is a bath, which is discarded whole; leave the quantity out
        discard what=F1 date=2026-01-31                             | NotAccepted   | bath F1 was mixed on 2026-02-01, after 2026-01-31
        discard what=fen80                                          | NotAccepted   | say how much of fen80 is discarded
        discard what=fen80 quantity=2ml                             | NotAccepted   | fen80 is kept in sheets, not in ml
        discard what=fen80 quantity=0sheet                          | NotAccepted   | the quantity of fen80 must be more than nothing
        discard what=fen80 quantity=47sheet                         | MoreThanHeld  | fen80 holds 46 sheets
        discard what=fen80/2 quantity=26sheet                       | MoreThanHeld  | fen80/2 holds 25 sheets
        discard what=fen80 quantity=46sheet                         | -             |
        - a count
        count item=nothing found=1sheet reason=_                    | NotAccepted   | a reason is needed
        count item=nothing found=-1sheet                            | NotAccepted   | a count cannot be negative
        count item=nothing found=1sheet                             | Unknown       | there is no container "nothing"
        count item=fen80 found=5ml                                  | NotAccepted   | fen80 is kept in sheets, not in ml
        count item=fen80 found=46sheet                              | NotAccepted   | fen80 holds 46 sheets in the book too
        count item=fix found=5ml date=2026-01-09                    | NotAccepted   | no container of fix holds anything; record a delivery
        count item=fen80 found=47sheet                              | -             |
        - an undo
        undo entry=99 reason=_                                      | NotAccepted   | a reason is needed
        undo entry=99                                               | Unknown       | there is no entry 99
        undo entry=22                                               | NotAccepted   | entry 22 is an undo itself
        undo entry=21                                               | AlreadyThere  | entry 21 was taken back by entry 22 already
        undo entry=1                                                | NotAccepted   | entry 1 defines an item; define it again instead
        undo entry=7                                                | NotAccepted   | entry 7 defines a process
        undo entry=14                                               | DependedOn    | been used since; take back entry 19 first
        undo entry=8                                                | DependedOn    | fen80/1 has been used since; take back the later entries first
        undo entry=17                                               | DependedOn    | what it brought has been used since
        undo entry=20                                               | -             |
        undo entry=19                                               | -             |
        """;

    [Fact]
    public void An_entry_is_refused_for_its_first_fault()
    {
        var ledger = Shelves.Stocked();
        foreach (var entry in Given.Split('\n'))
            ledger.Post(entry.Trim());
        var before = ledger.Held();
        Assert.All(Table.Read(Refused), row =>
        {
            var decision = ledger.Preview(EntryWords.Read(row["entry"]));
            var refusal = (decision as Refused)?.Refusal;
            Assert.Equal(row["refused as"], refusal?.Kind.ToString() ?? "-");
            Assert.Contains(row["because"], refusal?.Sentence ?? "", StringComparison.Ordinal);
            Assert.Equal(before, ledger.Held());
        });
    }
}
