using System.Globalization;
using Ledger.Core.Baths;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Sessions;
using Ledger.Core.Stock;
using NodaTime;

namespace Ledger.Core.Tests.Support;

/// <summary>
/// Entries as one line of text, for tables: "delivery item=fen80 packs=2 price=162". An underscore stands for a blank. What is not said is
/// valid; the date is that of <see cref="Some.Today"/>.
/// </summary>
internal static class EntryText
{
    public static Entry Read(string text)
    {
        var words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var fields = new Fields(words.Skip(1));
        var entry = ToEntry(words[0], fields) with
        {
            Anyway = fields.Text("anyway") is not null, IsTyped = fields.Text("typed") is not null,
        };
        fields.RequireAllRead();
        return entry;
    }

    private static Entry ToEntry(string kind, Fields fields)
    {
        var (key, date, note) = (fields.Text("key") ?? Some.Key(), fields.Date("date") ?? Some.Today, fields.Text("note") ?? "");
        return kind switch
        {
            "item" => new ItemDefinition { Key = key, Date = date, Note = note, Item = Item(fields) },
            "format" => new FormatDefinition
            {
                Key = key, Date = date, Note = note,
                Format = new(fields.Text("code") ?? "postcard", Area.Read(fields.Text("area") ?? "20 sqin")!.Value, Units.Named(fields.Text("unit") ?? "sheet")!.Value),
            },
            "storage" => new StorageMove
            {
                Key = key, Date = date, Note = note, Container = fields.Text("what") ?? "fen80/1", To = fields.Text("to") ?? "fridge",
                OpensFrom = fields.Date("from"),
            },
            "exposure-index" => new ExposureIndexSetting
            {
                Key = key, Date = date, Note = note, Container = fields.Text("what") ?? "fen80/1", ExposureIndex = (int)(fields.Number("index") ?? 64),
            },
            "keeper" => new KeeperNaming { Key = key, Date = date, Note = note, Negative = fields.Text("negative") ?? "" },
            "delivery" => new Delivery
            {
                Key = key, Date = date, Note = note, Discount = fields.Money("discount"), Shipping = fields.Money("shipping"),
                Duty = fields.Money("duty"), Currency = fields.Text("currency"), Rate = fields.Number("rate"),
                Lines =
                [
                    new()
                    {
                        Item = fields.Text("item")!, Packs = fields.Number("packs") ?? 1, Price = fields.Money("price"),
                        ExpiresOn = fields.Date("expires"), Batch = fields.Text("batch") ?? "", Storage = fields.Text("storage") ?? "",
                        Order = fields.Text("order"),
                    },
                ],
            },
            "order" => new OrderPlacement
            {
                Key = key, Date = date, Note = note, Order = fields.Text("order") ?? "A1", Supplier = fields.Text("from") ?? "",
                IsPrepaid = fields.Text("prepaid") is not null,
                Lines = [.. fields.All("line").Select(line => OrderLine(line, fields.Date("expected")))],
            },
            "order-change" => new OrderChange
            {
                Key = key, Date = date, Note = note, Order = fields.Text("order") ?? "A1", Item = fields.Text("item"),
                ExpectedOn = fields.Date("expected"), IsBackOrdered = fields.Text("back") is { } back ? back == "yes" : null,
                Packs = (int?)fields.Number("packs"), Price = fields.Text("price") is null ? null : fields.Money("price"),
            },
            "order-cancellation" => new OrderCancellation
            {
                Key = key, Date = date, Note = note, Order = fields.Text("order") ?? "A1", Item = fields.Text("item"),
                Reason = fields.Text("reason") ?? "too late",
            },
            "price-rise" => new PriceRiseNotice
            {
                Key = key, Date = date, Note = note, Item = fields.Text("item")!, From = fields.Date("from") ?? Some.Today.PlusDays(40),
                Percent = fields.Number("percent") ?? 6,
            },
            "opening" => new Opening
            {
                Key = key, Date = date, Note = note, Container = fields.Text("what")!, Batch = fields.Text("batch") ?? "",
                Envelopes = (int?)fields.Number("envelopes"),
            },
            "bath" => new BathMixing
            {
                Key = key, Date = date, Note = note, Bath = fields.Text("bath") ?? "F1", Item = fields.Text("item") ?? "fix",
                WorkingVolume = Volume.FromMillilitres(fields.Number("ml") ?? 1500),
                Dilution = fields.Text("dilution") is { } dilution ? Dilution.Parse(dilution) : null,
                Amount = fields.Quantity("amount"), Container = fields.Text("container"), PairedWith = fields.Text("after"),
                Material = fields.Text("material") == "paper" ? BathMaterial.Paper : BathMaterial.Film,
                Capacity = fields.Number("capacity") is { } area ? new(Area.FromSquareInches(area), fields.Text("basis") ?? "own") : null,
                BooksDifference = fields.Text("book") is not null,
            },
            "session" => new SessionLog
            {
                Key = key, Date = date, Note = note, Session = fields.Text("session") ?? "S1", Process = fields.Text("process") ?? "pm",
                Bath = fields.Text("bath"), BooksDifference = fields.Text("book") is not null, Lines = [.. fields.All("line").Select(Line)],
            },
            "discard" => new Discard
            {
                Key = key, Date = date, Note = note, What = fields.Text("what")!, Quantity = fields.Quantity("quantity"),
                Reason = fields.Text("reason") ?? "spent", Jug = fields.Text("jug"), To = fields.Text("to"),
            },
            "jug-start" => new JugStart
            {
                Key = key, Date = date, Note = note, Jug = fields.Text("jug") ?? "J1", Size = Volume.FromMillilitres(20_000),
                Contents = fields.Text("contents") ?? "used fixer",
            },
            "jug-filling" => new JugFilling
            {
                Key = key, Date = date, Note = note, Jug = fields.Text("jug") ?? "J1", Volume = Volume.FromMillilitres(500), What = fields.Text("what")!,
            },
            "count" => new StockCount
            {
                Key = key, Date = date, Note = note, What = fields.Text("what")!, Found = fields.Quantity("found")!.Value,
                Reason = fields.Text("reason") ?? "dregs",
            },
            "undo" => new Undo
            {
                Key = key, Date = date, Note = note, Number = (long)(fields.Number("entry") ?? 0), Reference = fields.Text("reference"),
                Reason = fields.Text("reason") ?? "mistaken",
            },
            "holder" => new HolderDefinition
            {
                Key = key, Date = date, Holder = fields.Text("holder") ?? "E01", Format = Format.Parse(fields.Text("format") ?? "8x10"),
                Sides = fields.Text("sides")?.Split('/') ?? [],
            },
            "load" => new Load
            {
                Key = key, Date = date, Sides = Words(fields, "sides"), From = fields.Text("from") ?? "fen80",
            },
            "exposure" => new ExposureNote
            {
                Key = key, Date = date, Sides = Words(fields, "sides"), Group = fields.Text("group") ?? "",
            },
            "unload" => new Unload
            {
                Key = key, Date = date, From = Words(fields, "from"), Group = fields.Text("group") ?? "", To = fields.Text("to"),
            },
            "cleaning" => new Cleaning { Key = key, Date = date, Holders = Words(fields, "holders") },
            "service" => new SideService
            {
                Key = key, Date = date, Sides = Words(fields, "sides"), IsInService = fields.Text("back") is not null,
                Reason = fields.Text("reason") ?? "leaks",
            },
            "develop" => new SessionLog
            {
                Key = key, Date = date, Session = fields.Text("session") ?? "S9", Process = "pm",
                Lines =
                [
                    new()
                    {
                        Item = fields.Text("item") ?? "fen80", Sheets = (int)(fields.Number("sheets") ?? 1), From = fields.Text("from"),
                        Group = fields.Text("group") ?? "",
                        Fate = (Fate)Fates.Names.ToList().IndexOf(fields.Text("fate") ?? "negative"),
                        Cause = fields.Text("cause") is { } cause ? Core.Film.RejectCauses.Named(cause) : null,
                    },
                ],
            },
            "setting" => new SettingChange
            {
                Key = key, Date = date, Note = note, Setting = fields.Text("setting")!, Value = fields.Text("value")!,
            },
            _ => throw new FormatException($"no entry is called {kind}"),
        };
    }

    private static string[] Words(Fields fields, string name) => fields.Text(name)?.Split(',') ?? [];

    private static Item Item(Fields fields)
    {
        var unit = Units.Named(fields.Text("unit") ?? "sheet")!.Value;
        return new()
        {
            Code = fields.Text("code") ?? "ortho16",
            Name = fields.Text("name") ?? "Mirrin Ortho 16",
            Kind = (ItemKind)ItemNames.Kinds.ToList().IndexOf(fields.Text("kind") ?? "film"),
            Format = fields.Text("format") is { } format ? Format.Parse(format) : null,
            Unit = unit,
            Pack = fields.Quantity("pack") ?? Core.Measures.Quantity.Of(10, unit),
            FixerFactorThousandths = (int)(1000 * (fields.Number("weight") ?? 1)),
            Capacity = fields.Number("capacity") is { } area ? new(Area.FromSquareInches(area), fields.Text("basis") ?? "") : null,
            ServiceLevel = fields.Number("service"),
            LeadTimeDays = (int?)fields.Number("lead"),
            MinimumOnHand = fields.Quantity("minimum"),
            Keeping = new(OpenedFullDays: (int?)fields.Number("opened"), TrayHours: (int?)fields.Number("tray")),
        };
    }

    /// <summary>item:packs, then the price if there is one.</summary>
    private static OrderedPacks OrderLine(string text, LocalDate? expected)
    {
        var parts = text.Split(':');
        return new()
        {
            Item = parts[0], Packs = int.Parse(parts[1], CultureInfo.InvariantCulture), ExpectedOn = expected,
            Price = parts.Length > 2 ? Money.Of(decimal.Parse(parts[2], CultureInfo.InvariantCulture)) : Money.Zero,
        };
    }

    /// <summary>item:sheets, then in any order a fate, a container in parentheses, an amount of developer.</summary>
    private static SessionLine Line(string text)
    {
        var parts = text.Split(':');
        var line = new SessionLine { Item = parts[0], Sheets = int.Parse(parts[1], CultureInfo.InvariantCulture) };
        foreach (var part in parts.Skip(2))
            line = part switch
            {
                _ when Fates.Names.Contains(part) => line with { Fate = (Fate)Fates.Names.ToList().IndexOf(part) },
                ['(', .. var container, ')'] => line with { Container = container },
                _ => line with { Developer = Volume.FromMicrolitres(QuantityText(part).Base) },
            };
        return line;
    }

    /// <summary>"25sheet", "30g", "31.25ml".</summary>
    private static Quantity QuantityText(string text)
    {
        var digits = text.TakeWhile(c => !char.IsAsciiLetter(c)).Count();
        var unit = Units.Named(text[digits..]) ?? throw new FormatException($"\"{text}\" names no unit");
        return Quantity.Of(decimal.Parse(text[..digits], CultureInfo.InvariantCulture), unit);
    }

    private sealed class Fields(IEnumerable<string> words)
    {
        private readonly List<(string Name, string Value)> _fields =
            [.. words.Select(word => (word.Split('=', 2)[0], word.Split('=', 2)[1].Replace('_', ' ')))];

        private readonly HashSet<string> _read = [];

        public IEnumerable<string> All(string name)
        {
            _read.Add(name);
            return _fields.Where(field => field.Name == name).Select(field => field.Value);
        }

        public string? Text(string name) => All(name).SingleOrDefault();

        public decimal? Number(string name) =>
            Text(name) is { } text ? decimal.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture) : null;

        public Money Money(string name) => Number(name) is { } amount ? Core.Measures.Money.Of(amount) : default;

        public LocalDate? Date(string name) => Text(name) is { } text ? Dates.Parse(text) : null;

        public Quantity? Quantity(string name) => Text(name) is { } text ? QuantityText(text) : null;

        public void RequireAllRead()
        {
            if (_fields.FirstOrDefault(field => !_read.Contains(field.Name)) is { Name: { } name })
                throw new FormatException($"nothing reads the field {name}");
        }
    }
}
