namespace Ledger.Core.Journal.Kinds;

/// <summary>The lines of a kind of entry: sheets of a session, packs of a delivery, steps of a process.</summary>
public abstract class LineKind
{
    /// <summary>The name of the option that takes a line as words: --sheets; and of the array in JSON.</summary>
    public required string Name { get; init; }

    /// <summary>The option that takes a line as words.</summary>
    public string Option { get => field ?? $"--{Name}"; init; }

    /// <summary>Whether a command may say a single line by the line's own fields, as arguments and options.</summary>
    public bool MayStandAlone { get; init; }

    /// <summary>What a line is, for help.</summary>
    public required string Help { get; init; }

    /// <summary>Whether there must be one at least.</summary>
    public bool IsNeeded { get; init; } = true;

    /// <summary>Its fields in order.</summary>
    public abstract IReadOnlyList<Field> Fields { get; }

    /// <summary>The values that a line says.</summary>
    public abstract FieldValues ValuesOf(object line);

    /// <summary>The line that says the values.</summary>
    internal abstract object Make(FieldValues values);
}

/// <summary>The lines of a kind of entry, with their type.</summary>
/// <typeparam name="TLine">A line.</typeparam>
public sealed class LineKind<TLine> : LineKind
    where TLine : notnull
{
    /// <summary>The fields and where a line keeps them.</summary>
    public required IReadOnlyList<FieldOf<TLine>> Bound { get; init; }

    /// <summary>Makes a line of values.</summary>
    public required Func<FieldValues, TLine> With { get; init; }

    /// <inheritdoc/>
    public override IReadOnlyList<Field> Fields => field ??= [.. Bound.Select(bound => bound.Field)];

    /// <inheritdoc/>
    public override FieldValues ValuesOf(object line) => FieldValues.Of(Bound, (TLine)line);

    internal override object Make(FieldValues values) => With(values);
}
