using System.Text.Json;

namespace Ledger.App.Tests;

/// <summary>Every field that other programs were promised is there, and of its kind.</summary>
public class PromisedJsonTests
{
    private const string Money = "money", Quantity = "quantity", Date = "date";
    private const string Text = "text", Number = "number", Flag = "flag", Counts = "counts";

    /// <summary>
    /// A command, below which array of its document, and what stands there; a line that begins with blanks goes on.
    /// </summary>
    private const string Promised = """
        show today | asOf:date
        show today / notices | kind:text severity:text about:text text:text reason:text by:date?
        show shelf | asOf:date
        show shelf / items |
            item:text name:text kind:text onHand:quantity usable:quantity expired:quantity onOrder:quantity
            planned:quantity value:money
        show shelf / items/containers |
            container:text lot:number quantity:quantity openedOn:date? goodUntil:date? goodUntilRule:text?
            unitCost:money
        show baths / baths |
            bath:text role:text material:text workingVolume:quantity dilution:text mixedOn:date areaSqIn:number
            weightedAreaSqIn:number throughputSqInPerLitre:number capacitySqInPerLitre:number? capacityBasis:text?
            usedPercent:number? remainingSqIn:number? remainingSheets:counts ageDays:number goodUntil:date?
            endsBy:text? state:text pairedWith:text? rotations:number
        show costs |
            from:date to:date sheetsUsed:number negatives:number keepers:number perSheetUsed:money perNegative:money
            perKeeper:money film:money chemistry:money supplies:money waste:money spent:money onHand:money
            stillInBaths:money reconciles:flag
        show costs / sheets |
            sheet:text negative:text? session:text film:money developer:money otherChemistry:money supplies:money
            total:money
        show sessions / sessions |
            session:text date:date process:text bath:text? developer:quantity sheets:number areaSqIn:number
            note:text
        show prints / prints | session:text date:date bath:text? sheets:number areaSqIn:number cost:money note:text
        show prints / prints/lines |
            item:text sheets:number strips:number areaSqIn:number cost:money purpose:text note:text
        show jugs / jugs |
            jug:text contents:text size:quantity held:quantity startedOn:date handedOverOn:date? handedTo:text
        show jugs / jugs/fills | date:date volume:quantity what:text material:text?
        show bath F4 / ends | by:text on:date reason:text
        show bath F4 / clearingTests |
            date:date film:text seconds:number freshSeconds:number? ratio:number? isFresh:flag
        show bath PF4 / capacities |
            basis:text sqInPerLitre:number usedPercent:number remainingSqIn:number remainingSheets:counts
        show reorder | asOf:date
        show reorder / items |
            item:text pattern:text? method:text demandPerWeek:quantity? leadTimeDays:number serviceLevel:number
            leadTimeDemand:quantity? safetyStock:quantity? reorderPoint:quantity usable:quantity onOrder:quantity
            planned:quantity runsOutOn:date? orderBy:date? orderPacks:number basis:text orderNow:flag
            monthsOfCover:number? reachedLevel:number?
        show reorder / orders | order:text placedOn:date supplier:text isPrepaid:flag
        show reorder / orders/lines |
            item:text packs:number price:money ordered:quantity delivered:quantity outstanding:quantity
            expectedOn:date? isBackOrdered:flag isLate:flag state:text
        show sessions / sessions/lines | item:text sheets:number cost:money group:text fate:text note:text
        show journal / entries |
            entry:number reference:text kind:text date:date recordedAt:text summary:text undoes:number?
            undoneBy:number?
        show item syrup |
            asOf:date item:text name:text kind:text role:text unit:text pack:quantity dilution:text onHand:quantity
            value:money
        show item syrup / values | formula:text value:money
        show item syrup / moves | entry:number date:date container:text lot:number change:quantity value:money
        show bath F1 | bath:text role:text state:text inUse:flag indicator:text? standsIn:text fixingSeconds:number?
        show bath F4 / work | entry:number date:date isFirst:flag areaSqIn:number weightedAreaSqIn:number
        show holders | asOf:date slideConvention:text
        show holders / holders | holder:text format:text notch:text boughtOn:date? cleanedOn:date? isBagged:flag
        show holders / holders/sides |
            side:text name:text state:text outOfService:text? sheet:text? item:text? loadedOn:date? exposedOn:date?
            group:text? days:number? isOverdue:flag isFlagged:flag
        show item fen80 / places | place:text kind:text quantity:quantity value:money
        show sheet E07-2 |
            sheet:text item:text batch:text box:text place:text film:money side:text loadedOn:date exposedOn:date
            group:text subject:text session:text developedOn:date fate:text cause:text negative:text? total:money
        show forgotten / containers | container:text item:text quantity:quantity lastTouched:date
        check | ok:flag entries:number movements:number
        """;

    public static TheoryData<string, string, string> Documents =>
        [.. Promised.Replace("\n   ", "", StringComparison.Ordinal).Split('\n')
            .Select(line => line.Split('|', StringSplitOptions.TrimEntries)).Select(parts =>
        {
            var (where, fields) = (parts[0].Split(" / "), parts[1]);
            return (where[0], where.Length > 1 ? where[1] : "", fields);
        })];

    [Theory]
    [MemberData(nameof(Documents))]
    public void The_document_has_its_fields(string command, string path, string fields)
    {
        using var room = Darkroom.WithDemoYear();
        var ran = room.Run([.. command.Split(' '), "--json"]);
        Assert.Equal((0, ""), (ran.Status, ran.Error));

        var found = At(ran.Json, path.Split('/', StringSplitOptions.RemoveEmptyEntries)).ToList();
        Assert.NotEmpty(found);
        foreach (var element in found)
            foreach (var field in fields.Split(' '))
                Check(element, field.Split(':')[0], field.Split(':')[1]);
    }

    [Fact]
    public void Money_is_exact_text_and_a_quantity_a_number_with_its_unit()
    {
        using var room = Darkroom.WithDemoYear();
        var sheet = room.Run("show", "costs", "--json").Json.GetProperty("sheets")[0];
        Assert.Matches(@"^\d+\.\d{6}$", sheet.GetProperty("total").GetProperty("amount").GetString());
        Assert.Equal("EUR", sheet.GetProperty("total").GetProperty("currency").GetString());
        var item = room.Do("show", "item", "syrup", "--json");
        Assert.Contains("\"onHand\": {\n    \"value\": 64,\n    \"unit\": \"ml\"\n  }", item, StringComparison.Ordinal);
    }

    [Fact]
    public void An_empty_ledger_gives_whole_documents_too()
    {
        using var room = Darkroom.WithEmptyLedger();
        foreach (var what in new[] { "today", "shelf", "baths", "sessions", "costs", "reorder", "journal" })
            Assert.Equal(JsonValueKind.Object, room.Run("show", what, "--json").Json.ValueKind);
        Assert.Equal(JsonValueKind.Null, room.Run("show", "costs", "--json").Json.GetProperty("perKeeper").ValueKind);
    }

    private static IEnumerable<JsonElement> At(JsonElement root, string[] path) => path.Length == 0
        ? [root]
        : root.GetProperty(path[0]).EnumerateArray().SelectMany(element => At(element, path[1..]));

    private static void Check(JsonElement element, string name, string kind)
    {
        Assert.True(element.TryGetProperty(name, out var value), $"there is no field {name}");
        if (kind.EndsWith('?') && value.ValueKind == JsonValueKind.Null)
            return;
        switch (kind.TrimEnd('?'))
        {
            case Money: Check(value, "amount", Text); Check(value, "currency", Text); break;
            case Quantity: Check(value, "value", Number); Check(value, "unit", Text); break;
            case Date: Assert.Matches(@"^\d{4}-\d\d-\d\d$", value.GetString()); break;
            case Counts: Assert.All(value.EnumerateObject(),
                count => Assert.Equal(JsonValueKind.Number, count.Value.ValueKind)); break;
            case Text: Assert.Equal(JsonValueKind.String, value.ValueKind); break;
            case Number: Assert.Equal(JsonValueKind.Number, value.ValueKind); break;
            case Flag: Assert.True(value.ValueKind is JsonValueKind.True or JsonValueKind.False); break;
            default: throw new ArgumentException($"no check for a {kind}", nameof(kind));
        }
    }
}
