using Ledger.Core.Baths;
using Ledger.Core.Measures;
using Ledger.Core.Sessions;
using Ledger.Core.Stock;

namespace Ledger.Core.Journal;

/// <summary>
/// Through which baths the film of a session goes, for planning and for posting alike: of each item that the process
/// uses again, the bath that the user named, otherwise the only one that fits. Where several fit, nobody chooses for
/// the user: an area counted on the wrong bath spoils a negative later, a name costs one word.
/// </summary>
/// <param name="holdings">What the ledger holds.</param>
/// <param name="day">The day of the session: a bath that is mixed later does not fit.</param>
public sealed class SessionBaths(Holdings holdings, LocalDate day)
{
    /// <summary>
    /// One for each item, the fixer first: its bath is the one that the session is filed under. A bath of an item that
    /// the process does not know is taken too when it is named.
    /// </summary>
    /// <param name="process">The process.</param>
    /// <param name="named">The baths that the user named, divided by commas or blanks; may be empty.</param>
    internal IReadOnlyList<SessionBath> Of(Process process, string? named)
    {
        var own = Names(named).Select(Named).DistinctBy(bath => bath.Place).ToList();
        if (own.GroupBy(bath => bath.Item, StringComparer.OrdinalIgnoreCase)
            .FirstOrDefault(baths => baths.Count() > 1) is { } twice)
            throw new RefusedException(
                RefusalKind.NotAccepted,
                $"{string.Join(" and ", twice.Select(bath => bath.Code))} are baths of {twice.Key}; name one of them");
        return
        [
            .. own.Select(bath => bath.Item).Concat(process.Reused.Select(step => step.Item).OfType<string>())
                .Distinct(StringComparer.OrdinalIgnoreCase)
                .OrderBy(item => holdings.Item(item)?.Role != ItemRole.Fixer)
                .Select(item => new SessionBath(item,
                    own.Find(bath => IsOf(item, bath)) is { } bath ? [bath] : [.. Fitting(item)])),
        ];
    }

    /// <summary>
    /// The baths, the one that the session is filed under first; refuses while one is missing or is to be named.
    /// </summary>
    internal IReadOnlyList<Bath> Decided(Process process, string? named)
    {
        var baths = Of(process, named);
        if (baths.FirstOrDefault(bath => bath.Fitting.Count == 0) is { } missing)
            throw new RefusedException(
                RefusalKind.NotAccepted,
                $"process {process.Name} needs a bath of {missing.Item}; none is in use: mix one first");
        var open = baths.Where(bath => bath.IsOpen).Select(bath => $"{bath.Choices} of {bath.Item}").ToList();
        return open.Count == 0 ? [.. baths.Select(bath => bath.Bath!)] : throw new RefusedException(
            RefusalKind.NotAccepted,
            $"say which {Counted.Noun(open.Count, "bath")} the film went through: {string.Join(", and ", open)}");
    }

    /// <summary>
    /// What a session is filed under when nothing is named, or could be: the first fitting bath of the fixer; null
    /// without any.
    /// </summary>
    public Bath? Likely(Process process) => Of(process, null) is [{ Fitting: [var bath, ..] }, ..] ? bath : null;

    /// <summary>The baths that need not be named, as they would be typed; empty when each is to be chosen.</summary>
    public string Known(Process process) => Typed(Of(process, null).Select(bath => bath.Bath).OfType<Bath>());

    /// <summary>Every way to name a bath of each item, as it would be typed.</summary>
    public IEnumerable<string> Namings(Process process) => Of(process, null).Where(bath => bath.Fitting.Count > 0)
        .Aggregate<SessionBath, IEnumerable<IEnumerable<Bath>>>(
            [[]],
            (namings, bath) => namings.SelectMany(naming => bath.Fitting.Select(fitting => naming.Append(fitting))))
        .Select(Typed)
        .Where(naming => naming.Length > 0);

    /// <summary>
    /// What the user named in place of what was planned: a planned bath stays unless another one of its item is named,
    /// or it is gone.
    /// </summary>
    /// <param name="said">What was named; null when nothing was.</param>
    /// <param name="planned">What the plan names; may be null.</param>
    public string? Instead(string? said, string? planned)
    {
        if (said is null)
            return planned;
        var items = Names(said).Select(name => holdings.Bath(name)?.Item).ToList();
        return string.Join(", ", Names(planned)
            .Where(name => holdings.Bath(name) is { } bath
                && !items.Contains(bath.Item, StringComparer.OrdinalIgnoreCase))
            .Prepend(said));
    }

    /// <summary>Whether every bath that is named is in use, so that film can go through it.</summary>
    public bool AreInUse(string named) => Names(named).All(name => holdings.Bath(name) is { } bath
        && holdings.WorkingBaths.Any(working => working.Place == bath.Place) && !holdings.IsSecond(bath)
        && bath.MixedOn <= day);

    /// <summary>Whether a bath was taken that nobody named.</summary>
    internal bool IsIncomplete(string? named, IReadOnlyList<Bath> baths) =>
        baths.Select(bath => bath.Code).Except(Names(named), StringComparer.OrdinalIgnoreCase).Any();

    internal static string Typed(IEnumerable<Bath> baths) => string.Join(", ", baths.Select(bath => bath.Code));

    /// <summary>A name may hold a blank itself, so that one divides names only where there is no such bath.</summary>
    private IEnumerable<string> Names(string? named) => IsBath(named ?? "") ? [named!]
        : Divided(named ?? "", ',').SelectMany(part => IsBath(part) ? [part] : Divided(part, ' '));

    private static string[] Divided(string text, char by) =>
        text.Split(by, StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);

    private bool IsBath(string name) => holdings.Bath(name) is not null;

    private static bool IsOf(string item, Bath bath) => item.Equals(bath.Item, StringComparison.OrdinalIgnoreCase);

    private IEnumerable<Bath> Fitting(string item) =>
        holdings.WorkingBaths.Where(bath => bath.Material == BathMaterial.Film && IsOf(item, bath)
            && bath.MixedOn <= day && IsClear(bath));

    /// <summary>Whether nothing is suspected of a bath on the day, nor of the second one that the film goes through
    /// after it.</summary>
    private bool IsClear(Bath bath) => SuspicionOf(bath) is null;

    private Suspicion? SuspicionOf(Bath bath) =>
        new[] { bath.Suspicion, holdings.SecondAfter(bath)?.Suspicion }.FirstOrDefault(suspicion =>
            suspicion?.Since <= day);

    private Bath Named(string name)
    {
        var bath = holdings.Bath(name) ?? throw RefusedException.Unknown($"bath \"{name}\" in use",
            holdings.Baths.Select(known => known.Code));
        if (bath.Material != BathMaterial.Film)
            throw new RefusedException(RefusalKind.WrongMaterial,
                $"bath {bath.Code} is for paper; film never goes through it");
        if (bath.MixedOn > day)
            throw new RefusedException(
                RefusalKind.NotAccepted,
                $"bath {bath.Code} was mixed on {Dates.Text(bath.MixedOn)}, after {Dates.Text(day)}; date the session "
                    + "then or later");
        if (SuspicionOf(bath) is { } suspicion)
            throw RefusedException.Suspect($"bath {bath.Code}", suspicion, bath.Suspicion is null
                ? holdings.SecondAfter(bath)!.Code : bath.Code);
        return !holdings.IsSecond(bath) ? bath : throw new RefusedException(
            RefusalKind.NotAccepted,
            $"bath {bath.Code} is the second bath of a pair; name the first, {bath.PairedWith}");
    }
}

/// <summary>The bath of one item that a session goes through, or those of which one must be named.</summary>
/// <param name="Item">The item's code.</param>
/// <param name="Fitting">The one that was named or is the only one; otherwise those that fit. Empty when none is in
/// use.</param>
internal sealed record SessionBath(string Item, IReadOnlyList<Bath> Fitting)
{
    /// <summary>The bath; null when none is in use or one must be named.</summary>
    public Bath? Bath => Fitting.Count == 1 ? Fitting[0] : null;

    /// <summary>Whether one must be named.</summary>
    public bool IsOpen => Fitting.Count > 1;

    /// <summary>What can be named: F4 or F9.</summary>
    public string Choices => string.Join(" or ", Fitting.Select(bath => bath.Code));
}
