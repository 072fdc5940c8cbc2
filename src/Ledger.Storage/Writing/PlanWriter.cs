namespace Ledger.Storage.Writing;

/// <summary>Writes plans and their ends.</summary>
internal sealed class PlanWriter(SqliteConnection connection, long entry)
{
    public void Write(OpenPlan plan)
    {
        var request = plan.Request;
        connection.Execute(
            """
            INSERT INTO plan (entry_id, name, date, is_trip, process, times, bath)
            VALUES (@entry, @Name, @On, @IsTrip, @Process, @Times, @Bath)
            """,
            new
            {
                entry, plan.Name, On = Dates.Text(plan.On), IsTrip = plan.IsTrip ? 1 : 0, request.Process,
                Times = request.Times.Text, request.Bath,
            });
        for (var i = 0; i < request.Sheets.Count; i++)
        {
            var line = request.Sheets[i];
            connection.Execute(
                """
                INSERT INTO plan_sheets (entry_id, number, item_id, sheets, "group", subject, holder, "from", batch)
                VALUES (@entry, @Number, (SELECT id FROM item WHERE code = @Film), @Count, @Group, @Subject, @Holder,
                    @From, @Batch)
                """,
                new
                {
                    entry, Number = i + 1, Film = line.Film.Trim(), line.Count, Group = line.Group.Trim(),
                    Subject = line.Subject.Trim(), Holder = line.Holder.Trim(), line.From, line.Batch,
                });
        }
    }

    /// <summary>Ends the plan that has the name now: the last one made under it.</summary>
    public void Write(PlanEnded ended) => connection.Execute(
        """
        INSERT INTO plan_end (plan_id, entry_id, reason)
        VALUES ((SELECT max(p.entry_id) FROM plan p JOIN standing_entry e ON e.id = p.entry_id
            WHERE p.name = @Plan), @entry, @Reason)
        """,
        new { entry, ended.Plan, ended.Reason });
}
