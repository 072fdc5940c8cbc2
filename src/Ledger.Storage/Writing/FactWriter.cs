namespace Ledger.Storage.Writing;

/// <summary>Writes what an entry establishes beside its movements: one method for each kind of fact.</summary>
internal sealed class FactWriter(SqliteConnection connection, long entry)
{
    private int _sheetsNumber;

    public void Write(PostedFact fact)
    {
        switch (fact)
        {
            case ItemDefined defined: Write(defined.Item); new HandlingWriter(connection).Write(defined.Item); break;
            case FormatDefined defined: Write(defined.Format); break;
            case ProcessDefined defined: new ProcessWriter(connection, entry).Write(defined.Process); break;
            case PlanMade made: new PlanWriter(connection, entry).Write(made.Plan); break;
            case PlanEnded ended: new PlanWriter(connection, entry).Write(ended); break;
            case SettingChanged changed: Write(changed); break;
            case LotReceived received: Write(received); break;
            case ContainerArrived arrived: Write(arrived); break;
            case ContainerOpened opened: Write(opened); break;
            case BathMixed mixed: Write(mixed.Bath); break;
            case BathWorked worked: Write(worked); break;
            case BathEnded ended: Write(ended); break;
            case SessionHeld held: Write(held); break;
            case SheetsDeveloped developed: Write(developed); break;
            case FilmFact film: new FilmWriter(connection, entry).Write(film); break;
            case BathFact learned: new BathFactWriter(connection, entry).Write(learned); break;
            case LotMixed mixed: Write(mixed); break;
            case PrintSessionHeld held: new PrintWriter(connection, entry).Write(held); break;
            case NegativePrinted printed: new PrintWriter(connection, entry).Write(printed); break;
            case PaperPrinted printed: new PrintWriter(connection, entry).Write(printed); break;
            case JugStarted started: Write(started.Jug); break;
            case JugFilled filled: new BathFactWriter(connection, entry).Write(filled); break;
            case JugHandedOver over: new BathFactWriter(connection, entry).Write(over); break;
            case LotSuspected suspected: Suspect(suspected.Lot.Value, null, suspected.IsRaised,
                suspected.Reason); break;
            case PlaceSuspected suspected: Suspect(null, suspected.Place.Value, suspected.IsRaised,
                suspected.Reason); break;
            case OrderPlaced placed: new OrderFactWriter(connection, entry).Write(placed); break;
            case OrderLineChanged changed: new OrderFactWriter(connection, entry).Write(changed); break;
            case OrderDelivered delivered: new OrderFactWriter(connection, entry).Write(delivered); break;
            case PriceRiseAnnounced announced: new OrderFactWriter(connection, entry).Write(announced.Rise); break;
            case OrderTermsSet set: new OrderFactWriter(connection, entry).Write(set.Terms); break;
            case NoticeSnoozed snoozed: Write(snoozed.Snooze); break;
            default: throw new ArgumentException($"no table holds a {fact.GetType().Name}", nameof(fact));
        }
    }

    private void Suspect(long? lot, long? place, bool isRaised, string reason) => connection.Execute(
        "INSERT INTO suspicion (entry_id, lot_id, place_id, raised, reason) VALUES (@entry, @lot, @place, @raised, "
        + "@reason)",
        new { entry, lot, place, raised = isRaised ? 1 : 0, reason });

    private void Write(Snooze snooze) => connection.Execute(
        "INSERT INTO snooze (entry_id, notice, about, until, reason) VALUES (@entry, @Notice, @About, @Until, @Reason)",
        new { entry, Notice = snooze.Notice.Name(), snooze.About, Until = Dates.Text(snooze.Until), snooze.Reason });

    private void Write(Item item) => connection.Execute(
        """
        INSERT INTO item (id, code, name, kind, role, format, unit, pack, dilution, capacity_per_litre, capacity_basis,
            minimum_per_80,
            fixer_factor, sealed_days, opened_full_days, opened_part_days, working_full_days, working_part_days,
            tray_hours,
            lead_time_days, service_level, minimum_on_hand, formula, cautions)
        VALUES (@Id, @Code, @Name, @Kind, @Role, @Format, @Unit, @Pack, @Dilution, @CapacityPerLitre, @CapacityBasis,
            @MinimumPer80,
            @FixerFactor, @SealedDays, @OpenedFullDays, @OpenedPartDays, @WorkingFullDays, @WorkingPartDays, @TrayHours,
            @LeadTimeDays, @ServiceLevel, @MinimumOnHand, @Formula, @Cautions)
        ON CONFLICT (id) DO UPDATE SET name = excluded.name, role = excluded.role, pack = excluded.pack,
            dilution = excluded.dilution,
            capacity_per_litre = excluded.capacity_per_litre, capacity_basis = excluded.capacity_basis,
            minimum_per_80 = excluded.minimum_per_80, fixer_factor = excluded.fixer_factor,
            sealed_days = excluded.sealed_days,
            opened_full_days = excluded.opened_full_days, opened_part_days = excluded.opened_part_days,
            working_full_days = excluded.working_full_days, working_part_days = excluded.working_part_days,
            tray_hours = excluded.tray_hours, lead_time_days = excluded.lead_time_days,
            service_level = excluded.service_level,
            minimum_on_hand = excluded.minimum_on_hand, formula = excluded.formula, cautions = excluded.cautions
        """,
        new
        {
            Id = item.Id.Value, item.Code, item.Name, Kind = item.Kind.Name(), Role = item.Role.Name(),
            Format = item.Format?.Code, Unit = item.Unit.Name(), Pack = item.Pack.Base, Dilution = item.Dilution?.Text,
            CapacityPerLitre = item.Capacity?.PerLitre.Hundredths, CapacityBasis = item.Capacity?.Basis,
            MinimumPer80 = item.MinimumPer80SquareInches?.Microlitres, FixerFactor = item.FixerFactorThousandths,
            item.Keeping.SealedDays, item.Keeping.OpenedFullDays, item.Keeping.OpenedPartDays,
            item.Keeping.WorkingFullDays, item.Keeping.WorkingPartDays, item.Keeping.TrayHours, item.LeadTimeDays,
            ServiceLevel = Scaled.PlainText(item.ServiceLevel), MinimumOnHand = item.MinimumOnHand?.Base,
            item.Formula, item.Cautions,
        });

    private void Write(Format format) => connection.Execute(
        """
        INSERT INTO film_format (code, unit, area) VALUES (@Code, @Unit, @Area)
        ON CONFLICT DO UPDATE SET area = excluded.area
        """,
        new { format.Code, Unit = format.Unit.Name(), Area = format.Area.Hundredths });

    private void Write(SettingChanged changed) => connection.Execute(
        """
        INSERT INTO setting (name, value, entry_id) VALUES (@Name, @Value, @owner) ON CONFLICT DO UPDATE
        SET entry_id = iif(value = excluded.value AND excluded.entry_id IS NULL, entry_id, excluded.entry_id),
            value = excluded.value
        """,
        new { changed.Name, changed.Value, owner = changed.IsImplied ? entry : (long?)null });

    private void Write(LotReceived received)
    {
        var (lot, paid) = (received.Lot, received.Paid);
        connection.Execute(
            """
            INSERT INTO lot (id, entry_id, item_id, quantity, cost, batch, expires_on, storage, packs, price, discount,
                shipping, duty, currency, rate,
                is_priced)
            VALUES (@Id, @entry, (SELECT id FROM item WHERE code = @Item), @Quantity, @Cost, @Batch, @ExpiresOn,
                @Storage,
                @Packs, @Price, @Discount, @Shipping, @Duty, @Currency, @Rate, @IsPriced)
            """,
            new
            {
                Id = lot.Id.Value, entry, lot.Item, Quantity = lot.Quantity.Base, Cost = lot.Cost.Millionths, lot.Batch,
                ExpiresOn = lot.ExpiresOn is { } day ? Dates.Text(day) : null, lot.Storage,
                Packs = Scaled.PlainText(paid.Landed.Packs), Price = paid.Landed.Price.Millionths,
                Discount = paid.Landed.Discount.Millionths, Shipping = paid.Landed.Shipping.Millionths,
                Duty = paid.Landed.Duty.Millionths, paid.Currency, Rate = Scaled.PlainText(paid.Rate),
                IsPriced = lot.IsPriced ? 1 : 0,
            });
        new HandlingWriter(connection).WriteOrigin(lot, mixedFrom: null);
    }

    /// <summary>A stock solution's lot: it was not bought, so it has a cost and no price.</summary>
    private void Write(LotMixed mixed)
    {
        var lot = mixed.Lot;
        connection.Execute(
            """
            INSERT INTO lot (id, entry_id, item_id, quantity, cost, batch, expires_on, storage, packs, price, discount,
                shipping, duty,
                is_priced)
            VALUES (@Id, @entry, (SELECT id FROM item WHERE code = @Item), @Quantity, @Cost, @Batch, NULL, @Storage,
                '0', 0, 0, 0, 0, @IsPriced)
            """,
            new { Id = lot.Id.Value, entry, lot.Item, Quantity = lot.Quantity.Base, Cost = lot.Cost.Millionths,
                lot.Batch, lot.Storage, IsPriced = lot.IsPriced ? 1 : 0 });
        new HandlingWriter(connection).WriteOrigin(lot, mixed.From);
    }

    private void Write(Core.Baths.WasteJug jug)
    {
        WritePlace(jug.Place, "waste jug", jug.Code);
        new BathFactWriter(connection, entry).Write(jug);
    }

    private void Write(ContainerArrived arrived)
    {
        WritePlace(arrived.Place, "container", arrived.Code);
        connection.Execute(
            """
            INSERT INTO container (place_id, lot_id, item_id, number, size)
            VALUES (@Place, @Lot, (SELECT item_id FROM lot WHERE id = @Lot), @Number, @Size)
            """,
            new { Place = arrived.Place.Value, Lot = arrived.Lot.Id.Value, arrived.Number, Size = arrived.Size.Base });
    }

    private void Write(ContainerOpened opened) => connection.Execute(
        "INSERT INTO opening (entry_id, place_id) VALUES (@entry, @Place)", new { entry, Place = opened.Place.Value });

    private void Write(Bath bath)
    {
        WritePlace(bath.Place, "bath", bath.Code);
        connection.Execute(
            """
            INSERT INTO bath (place_id, entry_id, item_id, role, material, working_volume, dilution, capacity_per_litre,
                capacity_basis, paired_with, rotations)
            VALUES (@Place, @entry, (SELECT id FROM item WHERE code = @Item), @Role, @Material, @Volume, @Dilution,
                @CapacityPerLitre, @CapacityBasis, @PairedWith, @Rotations)
            """,
            new
            {
                Place = bath.Place.Value, entry, bath.Item, Role = bath.Role.Name(), Material = bath.Material.Name(),
                Volume = bath.WorkingVolume.Microlitres, Dilution = bath.Dilution.Text,
                CapacityPerLitre = bath.Capacity?.PerLitre.Hundredths, CapacityBasis = bath.Capacity?.Basis,
                bath.PairedWith, bath.Rotations,
            });
    }

    private void Write(BathWorked worked) => connection.Execute(
        "INSERT INTO bath_work (entry_id, place_id, is_first, area, weighted) VALUES (@entry, @Place, @IsFirst, @Area, "
            + "@Weighted)",
        new { entry, Place = worked.Place.Value, IsFirst = worked.IsFirst ? 1 : 0, Area = worked.Area.Hundredths,
            Weighted = worked.Weighted.Hundredths });

    private void Write(BathEnded ended) => connection.Execute(
        "INSERT INTO bath_end (place_id, entry_id, reason) VALUES (@Place, @entry, @Reason)",
        new { Place = ended.Place.Value, entry, ended.Reason });

    private void Write(SessionHeld held) => connection.Execute(
        """
        INSERT INTO session (entry_id, code, process, bath_id, developer, process_version)
        VALUES (@entry, @Session, @Process, @Bath, @Developer, @Version)
        """,
        new
        {
            entry, held.Session, Process = held.Process.Name, Bath = held.Bath?.Value,
            Developer = held.Developer.Microlitres, held.Process.Version,
        });

    private void Write(SheetsDeveloped developed) => connection.Execute(
        """
        INSERT INTO session_sheets (entry_id, number, line, lot_id, sheets, area, cost, "group", fate, note)
        VALUES (@entry, @Number, @Line, @Lot, @Sheets, @Area, @Cost, @Group, @Fate, @Note)
        """,
        new
        {
            entry, Number = ++_sheetsNumber, developed.Line, Lot = developed.Lot.Value, developed.Sheets,
            Area = developed.Area.Hundredths, Cost = developed.Cost.Millionths, developed.Group,
            Fate = developed.Fate.Name(), developed.Note,
        });

    private void WritePlace(PlaceId place, string kind, string code) => connection.Execute(
        "INSERT INTO place (id, kind, code, entry_id) VALUES (@Id, @kind, @code, "
            + "@entry)", new { Id = place.Value, kind, code, entry });
}
