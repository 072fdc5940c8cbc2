namespace Ledger.Storage.Writing;

/// <summary>Writes what an entry establishes about holders and sheets.</summary>
internal sealed class FilmWriter(SqliteConnection connection, long entry)
{
    public void Write(FilmFact fact)
    {
        switch (fact)
        {
            case HolderDefined defined: Write(defined); break;
            case HolderCleaned cleaned: Write(cleaned); break;
            case SideServed served: Write(served); break;
            case ExposedBoxStarted started: Write(started.Box); break;
            case SheetLoaded loaded: Write(loaded.Sheet); break;
            case SheetMoved moved: Move(moved.Sheet.Id, moved.Sheet.At, moved.To); break;
            case SheetExposed exposed: Write(exposed); break;
            case SheetDeveloped developed: Write(developed); break;
            case DummyUsed dummy: Write(dummy); break;
            case FateChanged changed: Write(changed); break;
            case SheetNoted noted: Write(noted); break;
            case SheetFiled filed: Write(filed); break;
            case ContainerStored stored: Write(stored); break;
            case ExposureIndexSet rated: Write(rated); break;
            default: throw new ArgumentException($"no table holds a {fact.GetType().Name}", nameof(fact));
        }
    }

    private void Write(HolderDefined defined)
    {
        var holder = defined.Holder;
        connection.Execute(
            """
            INSERT INTO holder (id, code, format, notch, bought_on) VALUES (@Id, @Code, @Format, @Notch, @BoughtOn)
            ON CONFLICT (id) DO UPDATE SET format = excluded.format, notch = excluded.notch,
                bought_on = excluded.bought_on
            """,
            new { holder.Id, holder.Code, Format = holder.Format.Code, holder.Notch,
                BoughtOn = holder.BoughtOn is { } day
                    ? Dates.Text(day) : null });
        if (!defined.IsNew)
            return;
        for (var i = 0; i < holder.Sides.Count; i++)
        {
            var side = holder.Sides[i];
            WritePlace(side.Place, "holder side", side.Code);
            connection.Execute(
                "INSERT INTO holder_side (place_id, holder_id, number, name) VALUES (@Place, @Holder, @Number, @Name)",
                new { Place = side.Place.Value, Holder = holder.Id, Number = i + 1, side.Name });
        }
    }

    private void Write(HolderCleaned cleaned) => connection.Execute(
        "INSERT INTO cleaning (entry_id, holder_id, bagged) VALUES (@entry, @Holder, @Bagged)",
        new { entry, Holder = cleaned.Holder.Id, Bagged = cleaned.IsBagged ? 1 : 0 });

    private void Write(SideServed served) => connection.Execute(
        "INSERT INTO side_service (entry_id, place_id, in_service, reason) VALUES (@entry, @Place, @InService, "
            + "@Reason)",
        new { entry, Place = served.Side.Place.Value, InService = served.IsInService ? 1 : 0, served.Reason });

    private void Write(ExposedBox box)
    {
        WritePlace(box.Place, "exposed box", box.Code);
        connection.Execute(
            """
            INSERT INTO exposed_box (place_id, item_id, "group") VALUES (@Place, (SELECT id FROM item
                WHERE code = @Item), @Group)
            """,
            new { Place = box.Place.Value, box.Item, box.Group });
    }

    private void Write(Sheet sheet)
    {
        WriteSheet(sheet.Id, sheet.Lot.Id, sheet.Box, sheet.Side, sheet.Cost);
        Move(sheet.Id, sheet.Box, sheet.Side);
    }

    private void Write(SheetExposed exposed) => connection.Execute(
        """
        INSERT INTO exposure (entry_id, sheet_id, date, "group", subject)
            VALUES (@entry, @Sheet, @Date, @Group, @Subject)
        """,
        new
        {
            entry, Sheet = exposed.Sheet.Id.Value, Date = Dates.Text(exposed.Exposure.Date),
            exposed.Exposure.Group, exposed.Exposure.Subject,
        });

    private void Write(SheetDeveloped developed)
    {
        if (developed.Box is { } box)
        {
            WriteSheet(developed.Sheet, developed.Lot, box, null, developed.Cost);
            Move(developed.Sheet, box, developed.Fate.IsNegative() ? Places.FiledNegatives : Places.Rejects);
        }

        connection.Execute(
            """
            INSERT INTO sheet_fate (entry_id, sheet_id, position, batch, fate, cause, negative, year, running)
            VALUES (@entry, @Sheet, @Position, @Batch, @Fate, @Cause, @Negative, @Year, @Running)
            """,
            new
            {
                entry, Sheet = developed.Sheet.Value, developed.Position, developed.Batch, Fate = developed.Fate.Name(),
                    Cause = developed.Cause?.Name(),
                Negative = developed.Negative?.Name, developed.Negative?.Year, developed.Negative?.Running,
            });
    }

    private void Write(DummyUsed dummy) => connection.Execute(
        """
        INSERT INTO dummy (entry_id, line, item_id, sheets, area, "group", note)
        VALUES (@entry, @Line, (SELECT id FROM item WHERE code = @Item), @Sheets, @Area, @Group, @Note)
        """,
        new { entry, dummy.Line, dummy.Item, dummy.Sheets, Area = dummy.Area.Hundredths, dummy.Group, dummy.Note });

    private void Write(FateChanged changed)
    {
        connection.Execute(
            "INSERT INTO fate_change (entry_id, sheet_id, fate, cause) VALUES (@entry, @Sheet, @Fate, @Cause)",
            new { entry, Sheet = changed.Sheet.Id.Value, Fate = changed.Fate.Name(), Cause = changed.Cause?.Name() });
        if (changed.From != changed.To)
            Move(changed.Sheet.Id, changed.From, changed.To);
    }

    private void Write(SheetNoted noted) => connection.Execute(
        "INSERT INTO sheet_note (entry_id, sheet_id, what, result, has_passed) VALUES (@entry, @Sheet, @What, "
        + "@Result, @HasPassed)",
        new { entry, Sheet = noted.Sheet.Value, What = noted.What.Name(), noted.Result,
            HasPassed = noted.HasPassed is { } passed ? passed ? 1 : 0 : (int?)null });

    private void Write(SheetFiled filed) => connection.Execute(
        "INSERT INTO filing (entry_id, sheet_id, place) VALUES (@entry, @Sheet, @Place)",
        new { entry, Sheet = filed.Sheet.Value, filed.Place });

    private void Write(ContainerStored stored) => connection.Execute(
        "INSERT INTO storage_move (entry_id, place_id, storage, opens_from) VALUES (@entry, @Place, @Storage, "
            + "@OpensFrom)",
        new { entry, Place = stored.Container.Value, stored.Storage, OpensFrom = stored.OpensFrom is { } day
            ? Dates.Text(day)
            : null });

    private void Write(ExposureIndexSet rated) => connection.Execute(
        "INSERT INTO lot_exposure_index (entry_id, lot_id, exposure_index) VALUES (@entry, @Lot, @ExposureIndex)",
        new { entry, Lot = rated.Lot.Value, rated.ExposureIndex });

    private void WriteSheet(SheetId sheet, LotId lot, PlaceId box, PlaceId? side, Money cost) => connection.Execute(
        "INSERT INTO sheet (id, entry_id, lot_id, box_id, side_id, cost) VALUES (@Sheet, @entry, @Lot, @Box, @Side, "
            + "@Cost)",
        new { Sheet = sheet.Value, entry, Lot = lot.Value, Box = box.Value, Side = side?.Value,
            Cost = cost.Millionths });

    private void Move(SheetId sheet, PlaceId from, PlaceId to) => connection.Execute(
        "INSERT INTO sheet_move (entry_id, sheet_id, from_place, to_place) VALUES (@entry, @Sheet, @From, @To)",
        new { entry, Sheet = sheet.Value, From = from.Value, To = to.Value });

    private void WritePlace(PlaceId place, string kind, string code) => connection.Execute(
        "INSERT INTO place (id, kind, code, entry_id) VALUES (@Id, @kind, @code, "
            + "@entry)", new { Id = place.Value, kind, code, entry });
}
