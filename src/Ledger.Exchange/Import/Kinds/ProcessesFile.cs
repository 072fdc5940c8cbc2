using Ledger.Core.Journal.Entries;
using Ledger.Core.Sessions;
using Ledger.Core.Stock;
using Ledger.Exchange.Import.Rows;

namespace Ledger.Exchange.Import.Kinds;

/// <summary>processes.csv: the steps of each process. A process with a changed step is defined anew.</summary>
internal sealed class ProcessesFile() : FileKind(
    "processes",
    ["process", "step", "role"],
    ["item", "dilution", "working_ml", "amount", "use", "minutes", "per", "note", "working_ml_by_format", "temperature_c"])
{
    public override bool IsUndated => true;

    public override IEnumerable<SourcedEntry> Entries(IEnumerable<Row> rows, ImportTerms terms)
    {
        var keys = new RowKeys(Name, Columns);
        foreach (var process in RowGroup.By("process", rows))
        {
            var steps = process.Rows.Select(Step).ToList();
            var key = keys.Of(process.Name, process.Rows);
            if (!process.IsGood)
                continue;
            yield return new(
                process.Line, new ProcessDefinition { Key = key, Date = terms.Undated, Process = process.Name, Steps = steps });
        }
    }

    private static ProcessStep Step(Row row)
    {
        var role = (ItemRole)row.Choice("role", ItemNames.Roles, mayBeEmpty: false);
        return Step(row, role, row.TextOrNull("per") is null ? StepNames.PerUnsaid(role) : (StepPer)row.Choice("per", StepNames.Pers));
    }

    private static ProcessStep Step(Row row, ItemRole role, StepPer per) => new()
    {
        Number = row.Needed("step", row.Whole("step")),
        Role = role,
        Item = row.TextOrNull("item"),
        Dilution = row.Dilution("dilution"),
        WorkingVolume = row.Volume("working_ml"),
        Amount = row.QuantityWithUnit("amount"),
        Use = (StepUse)row.Choice("use", StepNames.Uses),
        Minutes = row.Number("minutes"),
        Per = per,
        Note = row.Text("note"),
        VolumesByFormat = row.Read("working_ml_by_format", FormatVolumes.Read, FormatVolumes.Accepted),
        Celsius = row.Number("temperature_c"),
    };
}
