using System.CommandLine;
using System.Text.Json;

namespace Ledger.App.Tests;

/// <summary>No name that other programs read is one of those that were given up.</summary>
public class OldNamesTests
{
    /// <summary>As names are compared: in small letters, without what joins their words.</summary>
    private static readonly HashSet<string> _given =
    [
        "receipt", "receipts", "purchase", "purchases", "correction", "corrections", "speed",
        "speeds", "double", "blank", "wrongwayround", "soak", "lastrinse", "fixerweight", "because",
        "act", "available", "incoming", "reserved", "isspent", "moveeveryseconds", "drain", "thrownaway", "standsfirst",
        "standssecond", "pouredouton", "pouredoutbecause", "printeddate", "ispast", "roomsqin", "reverses",
        "reversedby", "bathspent", "residualfixer", "residualfixerlimit", "spentmultiple", "passseconds", "lotspeed",
    ];

    [Fact]
    public void No_command_option_or_argument_has_an_old_name() => NoneOf(
        Tree(Root()).SelectMany(command => new[] { command.Name }
            .Concat(command.Options.Where(option => !(command.Name == "change" && option.Name == "--available"))
                .Select(option => option.Name))
            .Concat(command.Arguments.Select(argument => argument.Name))));

    [Fact]
    public void No_file_and_no_column_has_an_old_name() =>
        NoneOf(CsvImport.Kinds.Concat(CsvImport.Kinds.SelectMany(CsvImport.ColumnsOf)).Concat(DemoYear.Kinds));

    [Fact]
    public void No_word_of_a_list_is_an_old_name() => NoneOf(
    [
        .. RejectCauses.Names, .. Fates.Names, .. ItemNames.Roles, .. ItemNames.Kinds, .. BathEnds.Names,
        .. BathStates.Names, .. ResidualTest.Kinds, .. Enum.GetValues<Severity>().Select(severity => severity.Name()),
        .. Enum.GetValues<NoticeKind>().Select(kind => kind.Name()),
        .. Enumerable.Range(1, 8).Select(place => Places.Name(new(place))),
        .. Setting.All.Select(setting => setting.Name),
    ]);

    [Fact]
    public void No_field_that_is_shown_and_no_kind_in_the_journal_has_an_old_name()
    {
        using var room = Darkroom.WithDemoYear();
        string[] shown =
        [
            "today", "shelf", "baths", "holders", "sessions --last 99", "costs", "reorder",
            "journal --last 999", "settings", "plans", "prints", "jugs", "formats", "forgotten",
            "prices fen80", "item fen80", "bath F4", "sheet 2025-001",
        ];
        var documents = shown.Select(what => room.Run(["show", .. what.Split(' '), "--json"]).Json).ToList();
        documents.Add(room.Run("plan", "session", "--process", "film", "--sheets", "4 fen80 N", "--json").Json);
        NoneOf(documents.SelectMany(Fields));
        NoneOf(documents[7].GetProperty("entries").EnumerateArray()
            .Select(entry => entry.GetProperty("kind").GetString()!));
    }

    [Fact]
    public void No_table_or_column_of_an_export_has_an_old_name()
    {
        using var room = Darkroom.WithDemoYear();
        using var ledger = LedgerFile.Open(room.Ledger, room.Clock);
        NoneOf(ledger.Tables.Concat(ledger.Tables.SelectMany(ledger.Columns)));
    }

    private static void NoneOf(IEnumerable<string> names)
    {
        var all = names.ToList();
        Assert.NotEmpty(all);
        Assert.Empty(
            all.Where(name => _given.Contains(string.Concat(name.ToLowerInvariant().Where(char.IsAsciiLetter))))
                .Distinct());
    }

    private static IEnumerable<string> Fields(JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.Object => element.EnumerateObject().SelectMany(field => Fields(field.Value).Prepend(field.Name)),
        JsonValueKind.Array => element.EnumerateArray().SelectMany(Fields),
        _ => [],
    };

    private static IEnumerable<Command> Tree(Command command) => command.Subcommands.SelectMany(Tree).Prepend(command);

    private static RootCommand Root()
    {
        using var room = new Darkroom();
        return Program.Commands(new Workbench(new()
        {
            Out = TextWriter.Null, Error = TextWriter.Null, In = () => Stream.Null, Clock = room.Clock,
            Variable = _ => null,
        }));
    }
}
