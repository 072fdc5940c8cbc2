using Ledger.Core.Baths;
using Ledger.Core.Film;
using Ledger.Core.Keeping;
using Ledger.Core.Measures;
using Ledger.Core.Sessions;
using Ledger.Core.Stock;

namespace Ledger.Core.Journal.Kinds;

/// <summary>
/// The words of every enumeration that an entry can say. Their order here is that in which they are offered; nothing
/// else hangs on it.
/// </summary>
internal static class Words
{
    private static readonly (string Word, ItemRole Meaning)[] Bought =
    [
        ("other", ItemRole.Other), ("developer", ItemRole.Developer), ("stop", ItemRole.Stop),
        ("fixer", ItemRole.Fixer), ("wash aid", ItemRole.WashAid), ("wetting agent", ItemRole.WettingAgent),
        ("toner", ItemRole.Toner), ("water", ItemRole.Water), ("rc paper", ItemRole.ResinCoatedPaper),
        ("fibre paper", ItemRole.FibrePaper),
    ];

    public static Notation<ItemKind> ItemKinds { get; } = Notations.OneOf(
        "KIND", new Choices<ItemKind>(("film", ItemKind.Film), ("chemical", ItemKind.Chemical),
            ("supply", ItemKind.Supply)));

    /// <summary>What an item can be bought for.</summary>
    public static Notation<ItemRole> ItemRoles { get; } = Notations.OneOf("ROLE", new Choices<ItemRole>(Bought));

    /// <summary>What a step of a process can do.</summary>
    public static Notation<ItemRole> StepRoles { get; } = Notations.OneOf("ROLE", new Choices<ItemRole>(
        [.. Bought, ("presoak", ItemRole.Presoak), ("wash", ItemRole.Wash), ("final rinse", ItemRole.FinalRinse)]));

    public static Notation<Unit> Units { get; } = Notations.OneOf("UNIT", new Choices<Unit>(
        ("ml", Unit.Millilitre), ("g", Unit.Gram), ("sheet", Unit.Sheet), ("roll", Unit.Roll), ("piece", Unit.Piece)));

    /// <summary>What film and paper are counted in.</summary>
    public static Notation<Unit> FilmUnits { get; } = Notations.OneOf("UNIT",
        new Choices<Unit>(("sheet", Unit.Sheet), ("roll", Unit.Roll)));

    public static Notation<StepUse> Uses { get; } = Notations.OneOf(
        "USE", new Choices<StepUse>(("one-shot", StepUse.OneShot), ("reused", StepUse.Reused)));

    public static Notation<StepPer> Pers { get; } = Notations.OneOf("MEASURE", new Choices<StepPer>(
        ("session", StepPer.Session), ("batch", StepPer.Batch), ("sheet", StepPer.Sheet), ("litre", StepPer.Litre)));

    public static Notation<Fate> Fates { get; } = Notations.OneOf("FATE", new Choices<Fate>(
        ("negative", Fate.Negative), ("keeper", Fate.Keeper), ("reject", Fate.Reject), ("test", Fate.Test),
        ("practice", Fate.Practice), ("dummy", Fate.Dummy)));

    public static Notation<RejectCause> Causes { get; } = Notations.OneOf("CAUSE", new Choices<RejectCause>(
        ("dust", RejectCause.Dust), ("scratch", RejectCause.Scratch), ("unexposed", RejectCause.Unexposed),
        ("double exposure", RejectCause.DoubleExposure), ("fogged", RejectCause.Fogged),
        ("loaded backwards", RejectCause.LoadedBackwards), ("uneven", RejectCause.Uneven),
        ("under-fixed", RejectCause.UnderFixed)));

    /// <summary>What a sheet that was developed can become.</summary>
    public static Notation<Fate> LaterFates { get; } = Notations.OneOf("FATE", new Choices<Fate>(
        ("reject", Fate.Reject), ("negative", Fate.Negative), ("keeper", Fate.Keeper), ("test", Fate.Test),
            ("practice", Fate.Practice)));

    /// <summary>What is done to a developed sheet, or found out about it.</summary>
    public static Notation<SheetWork> SheetWorks { get; } = Notations.OneOf("WHAT", new Choices<SheetWork>(
        ("inspected", SheetWork.Inspected), ("residual silver test", SheetWork.ResidualSilverTest),
        ("residual hypo test", SheetWork.ResidualHypoTest), ("refixed", SheetWork.Refixed),
            ("rewashed", SheetWork.Rewashed),
        ("spotted", SheetWork.Spotted), ("toned", SheetWork.Toned), ("other", SheetWork.Other)));

    public static Notation<BathMaterial> Materials { get; } = Notations.OneOf(
        "film|paper", new Choices<BathMaterial>(("film", BathMaterial.Film), ("paper", BathMaterial.Paper)));

    public static Notation<WorkingContainer> Containers { get; } = Notations.OneOf("CONTAINER",
        new Choices<WorkingContainer>(
            ("full bottle", WorkingContainer.FullBottle), ("part-full bottle", WorkingContainer.PartFullBottle),
            ("floating lid", WorkingContainer.FloatingLid), ("open tray", WorkingContainer.OpenTray)));

    public static Notation<PrintPurpose> Purposes { get; } = Notations.OneOf("PURPOSE", new Choices<PrintPurpose>(
        ("final", PrintPurpose.Final), ("work", PrintPurpose.Work), ("strip", PrintPurpose.Strip)));

    /// <summary>What a residual test looks for.</summary>
    public static Notation<string> Residues { get; } = Notations.OneOf("silver|hypo", new Choices<string>(
        (ResidualTest.Silver, ResidualTest.Silver), (ResidualTest.Hypo, ResidualTest.Hypo)));

    /// <summary>Yes or no where silence means neither, or yes: a choice, not a tick.</summary>
    public static Notation<bool> YesOrNo { get; } = Notations.OneOf("YES|NO",
        new Choices<bool>(("yes", true), ("no", false)));
}
