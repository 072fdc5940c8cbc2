using Ledger.Storage.Files;

namespace Ledger.Storage.Reading;

/// <summary>
/// Reads the names that the file keeps back into the trade's kinds; they were written from the same lists.
/// </summary>
internal static class Named
{
    public static ItemKind Kind(string name) => (ItemKind)Index(ItemNames.Kinds, name);

    public static ItemRole Role(string name) => (ItemRole)Index(ItemNames.Roles, name);

    public static BathMaterial Material(string name) => (BathMaterial)Index(BathMaterials.Names, name);

    public static Fate Fate(string name) => (Fate)Index(Fates.Names, name);

    public static RejectCause Cause(string name) => (RejectCause)Index(RejectCauses.Names, name);

    public static SheetWork Work(string name) => (SheetWork)Index(SheetWorks.Names, name);

    public static PrintPurpose Purpose(string name) => (PrintPurpose)Index(PrintPurposes.Names, name);

    public static StepUse Use(string name) => (StepUse)Index(StepNames.Uses, name);

    public static StepPer Per(string name) => (StepPer)Index(StepNames.Pers, name);

    public static NoticeKind Notice(string name) => (NoticeKind)Index(NoticeKindNames.Kinds, name);

    private static int Index(IReadOnlyList<string> names, string name)
    {
        for (var i = 0; i < names.Count; i++)
            if (names[i] == name)
                return i;
        throw new LedgerFileException(
            $"the file holds \"{name}\", which this version does not know; run `trayledger check`");
    }
}
