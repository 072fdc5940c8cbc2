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
    /// What the native binary leaves out: the reading of the library's configuration at every start, and the shell that
    /// it starts to look for a clipboard's program. The file of substitutions in the App's Wiring names them.
    /// </summary>
    public static IReadOnlyList<string> LeftOut { get; } =
    [
        "Terminal.Gui.ModuleInitializers: System.Void InitializeConfiguration()",
        "Terminal.Gui.Drivers.UnixClipboard: System.Boolean CheckSupport()",
    ];

    /// <summary>
    /// An application with an input and an output of our own, for which <see cref="Application.Create"/> has no place.
    /// </summary>
    public static IApplication NewApplication(AnsiInput input, IOutput output) =>
        (IApplication)Construct(new AnsiComponentFactory(input, output));

    /// <summary>Has the views of an initialised application draw on another buffer of the same size.</summary>
    public static void DrawOn(IApplication app, IOutputBuffer buffer)
    {
        var driver = app.Driver!;
        buffer.SetSize(driver.Cols, driver.Rows);
        BufferOf(driver) = buffer;
    }

    [UnsafeAccessor(UnsafeAccessorKind.Field, Name = "_outputBuffer")]
    private static extern ref IOutputBuffer BufferOf(
        [UnsafeAccessorType("Terminal.Gui.Drivers.DriverImpl, Terminal.Gui")] object driver);

    [UnsafeAccessor(UnsafeAccessorKind.Constructor)]
    [return: UnsafeAccessorType("Terminal.Gui.App.ApplicationImpl, Terminal.Gui")]
    private static extern object Construct(IComponentFactory factory);
}
