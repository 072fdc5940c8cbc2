namespace Ledger.Terminal.Pages;

/// <summary>
/// Which key is which verb: the only place where a letter is chosen. A letter does the same to whatever is selected, on
/// every screen that has it; actions that are rare have none and are found in the list of actions.
/// </summary>
internal static class KeyTable
{
    /// <summary>Every verb that has a key.</summary>
    public static IReadOnlyList<Verb> Verbs { get; } =
    [
        New, Amend, Count, Discard, Undo, Receive, Open, Decant, Move, Add, Test, Load, Expose, Keeper,
        Index, Group, View, Paper, Csv, More, Fewer, All,
        Session, Bath, Plan, Snooze,
        Trace, Find, Sort, Reverse, Whole, Entries,
    ];

    /// <summary>Writes down something new of what the screen shows.</summary>
    public static Verb New => new('N', "New", "write down, register, plan, order, begin");

    /// <summary>Changes what is known of the selected thing.</summary>
    public static Verb Amend => new('E', "Amend", "edit, change, correct, settings");

    /// <summary>Says how much is really there.</summary>
    public static Verb Count => new('C', "Count", "stocktake, really there");

    /// <summary>Discards it, or part of it.</summary>
    public static Verb Discard => new('D', "Discard", "pour out, dump, throw away");

    /// <summary>Takes an entry back.</summary>
    public static Verb Undo => new('U', "Undo", "take back, correct, reverse");

    /// <summary>Records a delivery.</summary>
    public static Verb Receive => new('R', "Receive", "delivery, receipt, purchase, invoice");

    /// <summary>Opens what is sealed.</summary>
    public static Verb Open => new('O', "Open", "break the seal");

    /// <summary>Fills it into smaller bottles.</summary>
    public static Verb Decant => new('F', "Decant", "fill, smaller bottles");

    /// <summary>Puts it in another place.</summary>
    public static Verb Move => new('M', "Move", "unload, take out, freezer, fridge");

    /// <summary>Adds solution to it.</summary>
    public static Verb Add => new('A', "Add", "replenish, top up, fill, pour");

    /// <summary>Records a test of it.</summary>
    public static Verb Test => new('T', "Test", "clearing test, clip test");

    /// <summary>Loads film into it.</summary>
    public static Verb Load => new('L', "Load", "film holder");

    /// <summary>Notes an exposure in it.</summary>
    public static Verb Expose => new('X', "Expose", "exposure, shutter");

    /// <summary>Names a negative a keeper.</summary>
    public static Verb Keeper => new('K', "Name keeper", "worth printing");

    /// <summary>Sets its exposure index.</summary>
    public static Verb Index => new('I', "Set index", "exposure index, EI, speed");

    /// <summary>Divides figures into groups.</summary>
    public static Verb Group => new('G', "Group", "divide, by month, by film");

    /// <summary>Shows it from another side: another period, or where it stands.</summary>
    public static Verb View => new('V', "View", "period, year, show");

    /// <summary>Writes a page for paper.</summary>
    public static Verb Paper => new('W', "On paper", "label, slip, sheet, print");

    /// <summary>Writes what is shown as CSV.</summary>
    public static Verb Csv => new(',', "As CSV", "spreadsheet, comma separated, file, export");

    /// <summary>Takes more in.</summary>
    public static Verb More => new('+', "More");

    /// <summary>Takes less in.</summary>
    public static Verb Fewer => new('-', "Fewer", "less");

    /// <summary>Takes all in, or none.</summary>
    public static Verb All => new('*', "All", "none");

    /// <summary>Logs a session.</summary>
    public static Verb Session => new('S', "Log session", "develop");

    /// <summary>Mixes a bath.</summary>
    public static Verb Bath => new('B', "Mix bath", "fixer, stop bath, working solution");

    /// <summary>Plans sessions.</summary>
    public static Verb Plan => new('P', "Plan", "trip");

    /// <summary>Traces it: the journey of it, and what else shares that.</summary>
    public static Verb Trace =>
        new('.', "Trace", "journey, what it came through, what shares it, back, forward, fault, at risk");

    /// <summary>Lets a notice be quiet.</summary>
    public static Verb Snooze => new('Q', "Snooze", "quiet, later, remind, postpone");

    /// <summary>Finds rows by words.</summary>
    public static Verb Find => new('/', "Find", "search, filter, look for");

    /// <summary>Sorts by a heading.</summary>
    public static Verb Sort => new('H', "Sort", "order, heading, column");

    /// <summary>Sorts the other way round.</summary>
    public static Verb Reverse => new('Y', "Other way", "sort, descending, ascending");

    /// <summary>Shows what was recorded about it.</summary>
    public static Verb Entries => new('J', "Its entries", "journal, history, what was recorded, amend, undo");

    /// <summary>Shows all of a row, whatever the screen has no room for.</summary>
    public static Verb Whole => new('Z', "Whole row", "cut text, hidden columns, all of it, full text");
}

/// <summary>What a key does to whatever is selected.</summary>
/// <param name="Letter">The key, as it is written.</param>
/// <param name="Word">The verb, as the key line says it on every screen.</param>
/// <param name="FindBy">Other words by which the list of actions finds it.</param>
internal sealed record Verb(char Letter, string Word, string FindBy = "");
