using System.Runtime.CompilerServices;
using Terminal.Gui.App;
using Terminal.Gui.Drivers;

namespace Ledger.Terminal.Quiet;

/// <summary>
/// All that is used of the library's inner parts. They may differ in any other version of it, so a test holds this file
/// to the one that it was written for and tried with.
/// </summary>
internal static class LibraryParts
{
    /// <summary>The version that these parts are of.</summary>
    public static Version Version { get; } = new(2, 5, 0, 0);

    /// <summary>
    /// What the native binary leaves out: the reading of the library's configuration at every start. The file of
    /// substitutions in the App's Wiring names it.
    /// </summary>
    public const string LeftOut = "Terminal.Gui.ModuleInitializers: System.Void InitializeConfiguration()";

    /// <summary>
    /// An application with an input and an output of our own, for which <see cref="Application.Create"/> has no place.
    /// </summary>
    public static IApplication NewApplication(AnsiInput input, IOutput output) =>
        (IApplication)Construct(new AnsiComponentFactory(input, output));

    [UnsafeAccessor(UnsafeAccessorKind.Constructor)]
    [return: UnsafeAccessorType("Terminal.Gui.App.ApplicationImpl, Terminal.Gui")]
    private static extern object Construct(IComponentFactory factory);
}
