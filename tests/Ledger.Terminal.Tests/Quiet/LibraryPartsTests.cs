using System.Reflection;
using Ledger.Terminal.Quiet;
using Terminal.Gui.App;
using Terminal.Gui.Drivers;

namespace Ledger.Terminal.Tests.Quiet;

/// <summary>The library's inner parts are those that were tried; another version must be tried first.</summary>
public sealed class LibraryPartsTests
{
    [Fact]
    public void They_are_of_the_version_that_they_were_written_for() =>
        Assert.Equal(LibraryParts.Version, typeof(Application).Assembly.GetName().Version);

    [Fact]
    public void An_application_is_made_with_the_quiet_parts_and_none_is_used_in_any_other_file()
    {
        using var wake = new Wake();
        using var input = new QuietInput(wake);
        IOutput output = new QuietOutput(_ => { }, () => { });
        using var app = LibraryParts.NewApplication(input, output);
        app.Init();
        Assert.Equal(DriverRegistry.Names.ANSI, app.Driver!.GetName());

        app.Driver.GetOutputBuffer().AddStr("one");
        app.Driver.Refresh();
        Assert.DoesNotContain(true, app.Driver.GetOutputBuffer().DirtyLines);
        Assert.All(
            typeof(LibraryParts).Assembly.GetTypes().SelectMany(type => type.GetMethods(
                BindingFlags.Static | BindingFlags.Instance | BindingFlags.NonPublic
                    | BindingFlags.Public | BindingFlags.DeclaredOnly)),
            method => Assert.True(
                method.DeclaringType == typeof(LibraryParts)
                || method.CustomAttributes.All(mark => mark.AttributeType.Name != "UnsafeAccessorAttribute"),
                $"{method.DeclaringType} reaches into a library"));
    }
}
