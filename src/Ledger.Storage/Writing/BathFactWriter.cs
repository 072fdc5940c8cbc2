namespace Ledger.Storage.Writing;

/// <summary>Writes what was learned about baths, and the jugs that take what is discarded.</summary>
internal sealed class BathFactWriter(SqliteConnection connection, long entry)
{
    public void Write(BathFact fact)
    {
        switch (fact)
        {
            case ClearingTested test: Write(test); break;
            case BathObserved seen: Write(seen); break;
            case SilverMeasured silver: Write(silver); break;
            case ResidualTested residual: Write(residual); break;
            case ControlStripDeveloped developed: Write(developed); break;
            case BathStands stands: Write(stands); break;
            case BathToppedUp topped: Write(topped); break;
            default: throw new ArgumentException($"no table holds a {fact.GetType().Name}", nameof(fact));
        }
    }

    public void Write(JugFilled filled) => connection.Execute(
        "INSERT INTO jug_fill (entry_id, place_id, volume, what, material) VALUES (@entry, @Jug, @Volume, @What, "
            + "@Material)",
        new { entry, Jug = filled.Jug.Value, Volume = filled.Volume.Microlitres, filled.What,
            Material = filled.Material?.Name() });

    public void Write(JugHandedOver over) => connection.Execute(
        """INSERT INTO jug_handover (entry_id, place_id, "to") VALUES (@entry, @Jug, @To)""",
        new { entry, Jug = over.Jug.Value, over.To });

    public void Write(WasteJug jug) => connection.Execute(
        "INSERT INTO jug (place_id, entry_id, contents, size) VALUES (@Place, @entry, @Contents, @Size)",
        new { Place = jug.Place.Value, entry, jug.Contents, Size = jug.Size.Microlitres });

    private void Write(ClearingTested test) => connection.Execute(
        """
        INSERT INTO clearing_test (entry_id, place_id, item_id, tenths, is_fresh)
        VALUES (@entry, @Place, (SELECT id FROM item WHERE code = @Film), @Tenths, @IsFresh)
        """,
        new { entry, Place = test.Place.Value, test.Film, test.Tenths, IsFresh = test.IsFresh ? 1 : 0 });

    private void Write(BathObserved seen) => connection.Execute(
        "INSERT INTO bath_observation (entry_id, place_id, sign, ends_use) VALUES (@entry, @Place, @Sign, @EndsUse)",
        new { entry, Place = seen.Place.Value, seen.Sign, EndsUse = seen.EndsUse ? 1 : 0 });

    private void Write(SilverMeasured silver) => connection.Execute(
        "INSERT INTO silver_test (entry_id, place_id, milligrams_per_litre) VALUES (@entry, @Place, "
            + "@MilligramsPerLitre)",
        new { entry, Place = silver.Place.Value, silver.MilligramsPerLitre });

    private void Write(ResidualTested residual) => connection.Execute(
        """
        INSERT INTO residual_test (entry_id, place_id, session, kind, result, has_passed)
        VALUES (@entry, @Place, @Session, @Kind, @Result, @HasPassed)
        """,
        new
        {
            entry, Place = residual.Place.Value, residual.Test.Session, residual.Test.Kind, residual.Test.Result,
            HasPassed = residual.Test.HasPassed ? 1 : 0,
        });

    private void Write(ControlStripDeveloped developed) => connection.Execute(
        "INSERT INTO control_strip (entry_id, place_id, result, is_within) VALUES (@entry, @Place, @Result, @IsWithin)",
        new { entry, Place = developed.Place.Value, developed.Strip.Result,
            IsWithin = developed.Strip.IsWithinLimits ? 1 : 0 });

    private void Write(BathStands stands) => connection.Execute(
        "INSERT INTO bath_standing (entry_id, place_id, container) VALUES (@entry, @Place, @Container)",
        new { entry, Place = stands.Place.Value, Container = stands.Container.Name() });

    private void Write(BathToppedUp topped) => connection.Execute(
        "INSERT INTO bath_top_up (entry_id, place_id, added, bled) VALUES (@entry, @Place, @Added, @Bled)",
        new { entry, Place = topped.Place.Value, Added = topped.Added.Microlitres, Bled = topped.Bled.Microlitres });
}
