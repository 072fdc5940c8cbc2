using System.Text;
using Ledger.Exchange.Import.Rows;

namespace Ledger.Exchange.Import.Identity;

/// <summary>
/// A file as versions before 0.3.0 read it: they made a row's identity from its cells as they stood there, in the order
/// of the columns they knew. A file that follows today's names adds nothing to a ledger that knows its rows from then.
/// </summary>
/// <param name="name">Its name, which the identities begin with; where a migration gave them today's name, that
/// one.</param>
/// <param name="columns">
/// Its columns in order, divided by commas, each by the name it has today: nothing for a cell that was empty then, a
/// word after = for one that said what the file's own name says today.
/// </param>
internal sealed class FormerFile(string name, string columns)
{
    /// <summary>
    /// By the file's name today. Two layouts stand where a value could stand in either of two columns.
    /// </summary>
    private static readonly (string File, FormerFile Former)[] All =
    [
        Same("formats", "format,area,unit"),
        Same(
            "items",
            "item,name,kind,pack,role,format,unit,dilution,capacity_sq_in_per_litre,capacity_basis,"
                + "minimum_ml_per_80_sq_in,fixer_factor,"
            + "sealed_days,opened_full_days,opened_part_days,working_full_days,working_part_days,tray_hours,"
            + "lead_time_days,service_level,"
            + "minimum_on_hand,formula,cautions,floating_lid_days,density_g_per_ml,dead_volume,"
            + "replenisher_ml_per_80_sq_in,stock_of,"
            + "other_capacities,indicator,replenisher_ceiling_percent"),
        Same("processes",
            "process,step,role,item,dilution,working_ml,amount,use,minutes,per,note,"
                + "working_ml_by_format,temperature_c"),
        Same("holders", "holder,format,sides,notch,bought"),
        Same("order_changes", "date,order,item,expected,back_ordered,packs,price,,note,"),
        ("order_cancellations", new("order_changes", "date,order,item,,,,,reason,note,")),
        Same("deliveries", "date,item,packs,price,discount,shipping,duty,currency,rate,expires,batch,storage,order,"),
        Same("storage_moves", "date,container,to,open_from,note,"),
        Same("openings", "date,container,batch,,"),
        Same("openings", "date,,batch,container,"),
        Same("exposure_indexes", "date,container,exposure_index,note,"),
        Same("cleanings", "date,holders,bagged,note,"),
        Same("loads", "date,sides,from,anyway,note,"),
        Same("exposures", "date,sides,group,subject,anyway,note,"),
        Same("unloads", "date,from,group,to,note,"),
        Same("decantings", "date,from,bottles,size_ml,last_ml,names,"),
        Same("stock_solutions", "date,item,volume_ml,from,packs,amount,bottles,size_ml,last_ml,names,"),
        ("jug_starts", new("jugs", "date,jug,=start,contents,size_ml,")),
        ("jug_fillings", new("jugs", "date,jug,=filling,what,volume_ml,")),
        ("jug_handovers", new("jugs", "date,jug,=handover,to,,")),
        Same("baths",
            "date,bath,item,working_ml,dilution,concentrate_ml,material,capacity_sq_in_per_litre,capacity_basis,"
                + "paired_with,,stands_in"),
        Same("rotations", "date,new_bath,bath,item,dilution,working_ml,concentrate_ml,reason,jug,"),
        Same("top_ups", "date,bath,added_ml,item,dilution,concentrate_ml,poured_off_ml,,jug"),
        Same("counts", "date,item,found,reason,"),
        Same("discards", "date,what,reason,quantity,,jug"),
        Same("prints", "session,date,item,sheets,strips,strips_per_sheet,purpose,bath,container,note"),
        Same("clearing_tests", "date,bath,film,seconds,fresh,sheets,"),
        Same("observations", "date,bath,=sight,sign,still_used,,"),
        ("indicators", new("observations", "date,bath,=indicator,colour,,,")),
        ("silver_tests", new("observations", "date,bath,=silver,grams_per_litre,,,")),
        ("residual_tests", new("observations", "date,bath,looked_for,result,passed,session,")),
        ("control_strips", new("observations", "date,bath,=control strip,result,within_limits,,")),
        ("bath_storage", new("observations", "date,bath,=container,container,,,")),
        Same("services", "date,sides,reason,in_service,note,"),
        Same("keepers", "date,negative,note,"),
        Same("price_rises", "date,item,percent,from,note,"),
        Same("plans", "plan,date,on,item,sheets,what,process,group,subject,holder,from,minutes,bath,note"),
        Same("undone", "date,entry,reason,"),
    ];

    /// <summary>Cells whose words were others.</summary>
    private static readonly (string Column, string Now, string Then)[] Words =
    [
        ("role", "presoak", "soak"), ("role", "final rinse", "last rinse"), ("looked_for", "silver", "residual silver"),
        ("looked_for", "hypo", "residual fixer"),
    ];

    /// <summary>The names of files that stand before a reference in undone.csv.</summary>
    private static readonly (string Now, string Then)[] Files =
    [
        ("deliveries:", "purchases:"), ("undone:", "corrections:"), ("exposure_indexes:", "speeds:"),
        .. All.Where(file => file.File != file.Former.Name).Select(file => ($"{file.File}:", $"{file.Former.Name}:")),
    ];

    private readonly string[] _columns = columns.Split(',');

    /// <summary>The name that identities begin with.</summary>
    public string Name => name;

    /// <summary>The former layouts of a file of today.</summary>
    public static IEnumerable<FormerFile> Of(string file) =>
        All.Where(one => one.File == file).Select(one => one.Former);

    /// <summary>The content from which the identity of rows was made. Empty cells at the end did not count.</summary>
    public string Content(IReadOnlyList<Row> rows)
    {
        var text = new StringBuilder();
        foreach (var row in rows)
            text.Append(string.Join('\u001f', _columns.Select(column => Cell(column, row))).TrimEnd('\u001f'))
                .Append('\u001e');
        return text.ToString();
    }

    private static (string File, FormerFile Former) Same(string name, string columns) => (name, new(name, columns));

    private static string Cell(string column, Row row) => column switch
    {
        "" => "",
        ['=', .. var word] => word,
        "entry" => Files.Where(file => row.Text(column).StartsWith(file.Now, StringComparison.Ordinal))
            .Select(file => file.Then + row.Text(column)[file.Now.Length..]).FirstOrDefault() ?? row.Text(column),
        _ => Words.Where(word => word.Column == column
            && word.Now.Equals(row.Text(column), StringComparison.OrdinalIgnoreCase))
            .Select(word => word.Then).FirstOrDefault() ?? row.Text(column),
    };
}
