namespace Ledger.Storage.Reading;

/// <summary>
/// Finds the entries behind a thing that is shown: the one that it is there by, and all that say something of it.
/// </summary>
internal sealed class SubjectReader(Snapshot snapshot)
{
    public JournalEntry? EntryOf(Subject subject) =>
        NumberOf(subject) is { } number ? new JournalReader(snapshot).Find(number) : null;

    public IReadOnlyList<JournalEntry> EntriesAbout(Subject subject, long? before, int atMost)
    {
        var journal = new JournalReader(snapshot);
        return
        [
            .. snapshot.Connection.Query<long>(
                """
                WITH place_of (id) AS (
                    SELECT id FROM place WHERE @kind = 'place' AND code = @name AND id >= 100
                    UNION ALL SELECT s.place_id FROM holder h JOIN holder_side s ON s.holder_id = h.id
                        WHERE @kind = 'holder' AND h.code = @name
                    UNION ALL SELECT c.place_id FROM item i JOIN container c ON c.item_id = i.id
                        WHERE @kind = 'item' AND i.code = @name),
                sheet_of (id) AS (
                    SELECT id FROM sheet WHERE @kind = 'sheet' AND id = @sheet
                    UNION SELECT m.sheet_id FROM place_of p JOIN sheet_move m ON m.to_place = p.id AND m.to_place >= 100
                        WHERE @kind <> 'item'
                    UNION SELECT m.sheet_id FROM place_of p JOIN sheet_move m ON m.from_place = p.id
                        AND m.from_place >= 100 WHERE @kind <> 'item'),
                own (id) AS (
                    SELECT e.id FROM said s JOIN entry e ON e.key = s.key WHERE s.kind = @kind AND s.name = @name
                    UNION SELECT id FROM entry WHERE @kind = 'entry' AND id = CAST(@name AS INTEGER)
                    UNION SELECT entry_id FROM session WHERE @kind = 'session' AND code = @name
                    UNION SELECT entry_id FROM print_session WHERE @kind = 'print-session' AND code = @name
                    UNION SELECT entry_id FROM plan WHERE @kind = 'plan' AND name = @name
                    UNION SELECT pe.entry_id FROM plan pl JOIN plan_end pe ON pe.plan_id = pl.entry_id
                        WHERE @kind = 'plan' AND pl.name = @name
                    UNION SELECT k.entry_id FROM session s JOIN sheet_fate f ON f.entry_id = s.entry_id
                        JOIN fate_change k ON k.sheet_id = f.sheet_id
                        WHERE @kind = 'session' AND s.code = @name
                    UNION SELECT c.entry_id FROM holder h JOIN cleaning c ON c.holder_id = h.id
                        WHERE @kind = 'holder' AND h.code = @name
                    UNION SELECT l.order_id FROM item i JOIN order_line l ON l.item_id = i.id
                        WHERE @kind = 'item' AND i.code = @name
                    UNION SELECT c.entry_id FROM item i JOIN order_line_change c ON c.item_id = i.id
                        WHERE @kind = 'item' AND i.code = @name
                    UNION SELECT s.entry_id FROM item i JOIN plan_sheets s ON s.item_id = i.id
                        WHERE @kind = 'item' AND i.code = @name
                    UNION SELECT t.entry_id FROM item i JOIN clearing_test t ON t.item_id = i.id
                        WHERE @kind = 'item' AND i.code = @name
                    UNION SELECT x.entry_id FROM item i JOIN lot l ON l.item_id = i.id
                        JOIN lot_exposure_index x ON x.lot_id = l.id
                        WHERE @kind = 'item' AND i.code = @name
                    UNION SELECT m.entry_id FROM item i JOIN lot l ON l.item_id = i.id
                        JOIN movement m ON m.lot_id = l.id
                        WHERE @kind = 'item' AND i.code = @name
                    UNION SELECT entry_id FROM place WHERE id IN (SELECT id FROM place_of) AND entry_id IS NOT NULL
                    UNION SELECT m.entry_id FROM place_of p JOIN movement m ON m.to_place = p.id AND m.to_place >= 100
                        WHERE @kind <> 'item'
                    UNION SELECT m.entry_id FROM place_of p JOIN movement m ON m.from_place = p.id
                        AND m.from_place >= 100 WHERE @kind <> 'item'
                    UNION SELECT m.entry_id FROM sheet_of s JOIN sheet_move m ON m.sheet_id = s.id
                        WHERE @kind = 'sheet' OR m.to_place IN (SELECT id FROM place_of) OR m.from_place IN (SELECT id
                            FROM place_of)
                    UNION SELECT x.entry_id FROM sheet_of s JOIN exposure x ON x.sheet_id = s.id
                    UNION SELECT entry_id FROM sheet_fate WHERE @kind = 'sheet' AND sheet_id = @sheet
                    UNION SELECT entry_id FROM fate_change WHERE @kind = 'sheet' AND sheet_id = @sheet
                    UNION SELECT entry_id FROM sheet_note WHERE @kind = 'sheet' AND sheet_id = @sheet
                    UNION SELECT entry_id FROM filing WHERE @kind = 'sheet' AND sheet_id = @sheet
                    UNION SELECT entry_id FROM print_negative WHERE @kind = 'sheet' AND sheet_id = @sheet
                    UNION SELECT entry_id FROM suspicion WHERE place_id IN (SELECT id FROM place_of)
                    UNION SELECT u.entry_id FROM place_of p JOIN container c ON c.place_id = p.id
                        JOIN suspicion u ON u.lot_id = c.lot_id
                    UNION SELECT entry_id FROM opening WHERE place_id IN (SELECT id FROM place_of)
                    UNION SELECT entry_id FROM storage_move WHERE place_id IN (SELECT id FROM place_of)
                    UNION SELECT entry_id FROM side_service WHERE place_id IN (SELECT id FROM place_of)
                    UNION SELECT entry_id FROM bath_work WHERE place_id IN (SELECT id FROM place_of)
                    UNION SELECT entry_id FROM bath_end WHERE place_id IN (SELECT id FROM place_of)
                    UNION SELECT entry_id FROM clearing_test WHERE place_id IN (SELECT id FROM place_of)
                    UNION SELECT entry_id FROM bath_observation WHERE place_id IN (SELECT id FROM place_of)
                    UNION SELECT entry_id FROM silver_test WHERE place_id IN (SELECT id FROM place_of)
                    UNION SELECT entry_id FROM residual_test WHERE place_id IN (SELECT id FROM place_of)
                    UNION SELECT entry_id FROM control_strip WHERE place_id IN (SELECT id FROM place_of)
                    UNION SELECT entry_id FROM bath_standing WHERE place_id IN (SELECT id FROM place_of)
                    UNION SELECT entry_id FROM bath_top_up WHERE place_id IN (SELECT id FROM place_of)
                    UNION SELECT entry_id FROM jug_fill WHERE place_id IN (SELECT id FROM place_of)
                    UNION SELECT entry_id FROM jug_handover WHERE place_id IN (SELECT id FROM place_of))
                SELECT id FROM (
                    SELECT id FROM own
                    UNION SELECT e.id FROM own o JOIN entry e ON e.undoes = o.id
                    UNION SELECT e.id FROM own o JOIN entry e ON e.amends = o.id)
                WHERE id < @before ORDER BY id DESC LIMIT @atMost
                """,
                new { kind = Kind(subject), name = subject.Name, sheet = SheetId.Parse(subject.Name)?.Value,
                    before = before ?? long.MaxValue, atMost })
            .Select(journal.Find).OfType<JournalEntry>(),
        ];
    }

    /// <summary>A definition is the last that holds; all else was brought by one entry.</summary>
    private long? NumberOf(Subject subject) => snapshot.Connection.QueryFirstOrDefault<long?>(
        """
        SELECT id FROM (
            SELECT e.id AS id FROM said s JOIN standing_entry e ON e.key = s.key WHERE s.kind = @kind AND s.name = @name
            UNION ALL SELECT id FROM entry WHERE @kind = 'entry' AND id = CAST(@name AS INTEGER)
            UNION ALL SELECT entry_id FROM place WHERE @kind = 'place' AND code = @name AND id >= 100
            UNION ALL SELECT s.entry_id FROM session s JOIN standing_entry e ON e.id = s.entry_id
                WHERE @kind = 'session' AND s.code = @name
            UNION ALL SELECT s.entry_id FROM print_session s JOIN standing_entry e ON e.id = s.entry_id
                WHERE @kind = 'print-session' AND s.code = @name
            UNION ALL SELECT p.entry_id FROM plan p JOIN standing_entry e ON e.id = p.entry_id
                WHERE @kind = 'plan' AND p.name = @name
            UNION ALL SELECT entry_id FROM sheet WHERE @kind = 'sheet' AND id = @sheet
            UNION ALL SELECT x.entry_id FROM exposure x JOIN standing_entry e ON e.id = x.entry_id
                WHERE @kind = 'sheet' AND x.sheet_id = @sheet)
        ORDER BY id DESC LIMIT 1
        """,
        new { kind = Kind(subject), name = subject.Name, sheet = SheetId.Parse(subject.Name)?.Value });

    /// <summary>As the kinds of entries are named that define it.</summary>
    private static string Kind(Subject subject) => subject.Kind switch
    {
        SubjectKind.Item => "item",
        SubjectKind.Format => "format",
        SubjectKind.Process => "process",
        SubjectKind.Setting => "setting",
        SubjectKind.Holder => "holder",
        SubjectKind.Place => "place",
        SubjectKind.Sheet => "sheet",
        SubjectKind.Session => "session",
        SubjectKind.PrintSession => "print-session",
        SubjectKind.Entry => "entry",
        _ => "plan",
    };
}
