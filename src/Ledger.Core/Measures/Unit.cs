namespace Ledger.Core.Measures;

/// <summary>How an item is counted.</summary>
public enum Unit
{
    /// <summary>Liquids, in millilitres; held in microlitres.</summary>
    Millilitre,

    /// <summary>Powders, in grams; held in milligrams.</summary>
    Gram,

    /// <summary>Sheets of film or paper.</summary>
    Sheet,

    /// <summary>Rolls of film.</summary>
    Roll,

    /// <summary>Anything else that is counted: a pair of gloves, a bag, a clip.</summary>
    Piece,
}

/// <summary>The names and scales of the units.</summary>
public static class Units
{
    /// <summary>Every unit's name as it stands in CSV and JSON.</summary>
    public static IReadOnlyList<string> Names { get; } = ["ml", "g", "sheet", "roll", "piece"];

    /// <summary>
    /// How many base units one of the unit holds: 1000 for millilitres and grams, 1 for what is counted.
    /// </summary>
    public static long BasePerUnit(this Unit unit) => unit is Unit.Millilitre or Unit.Gram ? 1000 : 1;

    /// <summary>The name in CSV and JSON: ml, g, sheet, roll, piece.</summary>
    public static string Name(this Unit unit) => Names[(int)unit];

    /// <summary>The name as a sentence counts in it: ml, g, sheets, rolls, pieces.</summary>
    public static string Plural(this Unit unit) =>
        unit is Unit.Millilitre or Unit.Gram ? unit.Name() : Counted.Noun(2, unit.Name());

    /// <summary>The unit of that name, or null.</summary>
    public static Unit? Named(string name)
    {
        for (var i = 0; i < Names.Count; i++)
            if (Names[i].Equals(name, StringComparison.OrdinalIgnoreCase))
                return (Unit)i;
        return null;
    }
}
