namespace Ledger.Core.Tests.Journal.Rules;

/// <summary>
/// What is refused about holders and sheets, why, and which refusal wins: down each group the entry has one fault less,
/// until it is accepted. Sentences that end with --anyway ask; all others refuse.
/// </summary>
public sealed class HolderRefusalTests
{
    /// <summary>
    /// E01 has an exposed sheet (N) and an empty side, E02 a loaded one and one out of service; one sheet waits in
    /// "fen80 N-1".
    /// </summary>
    private const string Given = """
        holder holder=E01 date=2026-01-11
        holder holder=E02 date=2026-01-11
        holder holder=E03 date=2026-01-11
        load sides=E01-1,E02-1,E03-1 date=2026-02-02
        exposure sides=E01-1 date=2026-02-03
        exposure sides=E03-1 group=N-1 date=2026-02-03
        unload from=E03-1 date=2026-02-04
        service sides=E02-2 date=2026-02-05
        """;

    private const string Refused = """
        entry                                             | refused as   | because
        - a holder
        holder holder=                                    | NotAccepted  | a holder needs a name
        holder holder=E_4 format=120                      | NotAccepted  | may hold letters, digits, dots and dashes only
        holder holder=E04 format=120                      | NotAccepted  | 120 is roll film and is not loaded into holders
        holder holder=E04 sides=A/a                       | NotAccepted  | two sides of E04 have the same name
        holder holder=E01 format=4x5                      | NotAccepted  | give the other one a name of its own
        holder holder=E01                                 | -            |
        holder holder=E04 sides=1/2/3/4/5/6               | -            |
        - a load
        load sides=E09 from=nothing date=2026-03-16       | InFuture     | 2026-03-16 is later than today
        load sides=E09 from=nothing                       | Unknown      | there is no container "nothing" that holds anything
        load sides=E09 from=syrup                         | NotAccepted  | syrup is not sheet film and cannot be loaded
        load from=reed400                                 | NotAccepted  | name at least one side
        load sides=E09 from=reed400                       | Unknown      | there is no holder side "E09"; known holders: E01, E02, E03
        load sides=E01-2,E01 from=reed400                 | NotAccepted  | E01-2 is named twice
        load sides=E01 from=reed400                       | Occupied     | E01-1 holds a sheet of fen80 since 2026-02-02, exposed
        load sides=E02 from=reed400                       | Occupied     | E02-1 holds a sheet of fen80 since 2026-02-02; unload
        load sides=E03-1 from=reed400 date=2026-02-03     | NotAccepted  | E03-1 was used on 2026-02-04, after 2026-02-03
        load sides=E02-2 from=reed400                     | Doubtful     | reed400 is 4x5, and E02 takes 8x10; E02-2 is out of service
        load sides=E02-2                                  | Doubtful     | E02-2 is out of service: leaks; if it is so, record it with --anyway
        load sides=E02-2 from=reed400 anyway=yes          | -            |
        load sides=E01-2,E03                              | -            |
        - an exposure
        exposure sides=E09-1                              | Unknown      | there is no holder side "E09-1"
        exposure sides=E01 group=a_name,_with_a_comma     | NotAccepted  | a group is a short name
        exposure sides=E01                                | Empty        | E01-2 is empty
        exposure sides=E02-1 date=2026-02-01              | NotAccepted  | E02-1 was loaded on 2026-02-02, after 2026-02-01
        exposure sides=E01-1                              | Doubtful     | again, it is a double exposure; if it is so, record it with --anyway
        exposure sides=E01-1 anyway=yes                   | -            |
        exposure sides=E02-1 group=N+1                    | -            |
        - an unloading
        unload                                            | NotAccepted  | name at least one side
        unload from=E09-1                                 | Unknown      | there is no holder side or box of exposed sheets "E09-1"
        unload from=E01-2                                 | Empty        | E01-2 is empty
        unload from=fen80_N                               | Unknown      | there is no holder side or box of exposed sheets "fen80 N"
        unload from=E01-1,E01-1                           | NotAccepted  | a sheet is named twice
        unload from=E01-1 to=fen80/1                      | NotAccepted  | an exposed sheet never goes back to unexposed film
        unload from=E02-1 group=N                         | NotAccepted  | E02-1 was not exposed and has no group
        unload from=E02-1 to=reed400/1                    | NotAccepted  | reed400/1 holds another delivery
        unload from=E01-1 date=2026-02-02                 | NotAccepted  | the sheet in E01-1 came there or was exposed on 2026-02-03
        unload from=fen80_N-1 group=N-1                   | NotAccepted  | the sheet is in the box of exposed sheets "fen80 N-1" already
        unload from=fen80_N-1 group=N                     | -            |
        unload from=E01,E02                               | -            |
        - sheets for a session
        session session=S9 from=nowhere                   | Unknown      | there is no holder side or box of exposed sheets "nowhere"
        session session=S9 from=E01-2                     | Empty        | E01-2 is empty
        session session=S9 from=E01-1,E02-1               | NotAccepted  | names 2 sheets, and the line says 1
        session session=S9 from=E01-1 item=reed400        | NotAccepted  | E01-1 holds fen80, not reed400
        session session=S9 from=fen80_N-1 sheets=2        | MoreThanHeld | fen80 N-1 holds 1 sheet of fen80, and 2 are wanted
        session session=S9 from=E02-1                     | Doubtful     | the sheet in E02-1 has no exposure on record
        session session=S9 from=E02-1 anyway=yes          | -            |
        session session=S9 from=E03-1                     | -            |
        - a cleaning, a service
        cleaning                                          | NotAccepted  | name at least one holder
        cleaning holders=E09                              | Unknown      | there is no holder side "E09"
        cleaning holders=E01                              | -            |
        service sides=E02-2                               | NotAccepted  | E02-2 is out of service already (leaks)
        service sides=E02-1 in_service=yes                | NotAccepted  | E02-1 is in service
        service sides=E02-2 in_service=yes                | -            |
        - a count of exposed sheets and holders
        count item=nowhere found=0sheet                   | Unknown      | there is no container "nowhere" that holds anything
        count item=E01-2 found=0sheet                     | Empty        | E01-2 is empty
        count item=fen80_N-1 found=1ml                    | NotAccepted  | fen80 N-1 holds sheets, not ml
        count item=fen80_N-1 found=1sheet                 | NotAccepted  | holds 1 sheet in the book too; there is nothing to post
        count item=fen80_N-1 found=2sheet                 | NotAccepted  | record the loading or unloading of the others
        count item=E01-1 found=0sheet date=2026-02-02     | NotAccepted  | the sheet in E01-1 came there or was exposed on 2026-02-03
        count item=E01-1 found=0sheet                     | -            |
        count item=fen80_N-1 found=0sheet                 | -            |
        - a move out of the cold, a speed, large boxes
        storage container=fen80/99 to=                    | Unknown      | there is no container "fen80/99" that holds anything
        storage to= open_from=2026-01-01                  | NotAccepted  | the storage needs a name
        storage to=fridge open_from=2026-01-01            | NotAccepted  | the first day of opening cannot be before the day of the move
        storage to=fridge                                 | -            |
        exposure-index container=syrup/1 exposure_index=0 | NotAccepted  | syrup is not film, and only film has an exposure index
        exposure-index exposure_index=0                   | NotAccepted  | the exposure index must be from 1 to 100000
        exposure-index exposure_index=64                  | -            |
        opening container=fen80/2 envelopes=7             | NotAccepted  | do not lie in 7 envelopes of the same size
        opening container=syrup envelopes=4               | NotAccepted  | holds no film, and so no envelopes
        opening container=fen80/2 envelopes=5             | -            |
        """;

    [Fact]
    public void An_entry_is_refused_for_its_first_fault()
    {
        var ledger = Shelves.WithBath();
        foreach (var entry in Given.Split('\n'))
            ledger.Post(entry.Trim());
        Assert.All(Table.Read(Refused), row =>
        {
            var refusal = (ledger.Preview(EntryWords.Read(row["entry"])) as Refused)?.Refusal;
            Assert.Equal(row["refused as"], refusal?.Kind.ToString() ?? "-");
            Assert.Contains(row["because"], refusal?.Sentence ?? "", StringComparison.Ordinal);
        });
    }

    [Fact]
    public void A_holder_that_is_not_clean_is_remarked_upon()
    {
        var ledger = Shelves.Stocked();
        ledger.Post("holder date=2026-01-11");
        Assert.Contains(ledger.Post("load sides=E01-1 date=2026-02-01").Remarks,
            remark => remark.EndsWith("no cleaning on record", StringComparison.Ordinal));
        ledger.Post("cleaning holders=E01 date=2026-02-02");
        Assert.Empty(ledger.Post("load sides=E01-2 date=2026-02-03").Remarks);
        ledger.Post("unload from=E01-2 date=2026-02-04");
        Assert.Contains(ledger.Post("load sides=E01-2 date=2026-02-05").Remarks,
            remark => remark.EndsWith("not cleaned since", StringComparison.Ordinal));
    }
}
