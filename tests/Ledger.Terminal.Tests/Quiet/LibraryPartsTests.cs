using System.Reflection;
using System.Runtime.CompilerServices;
using System.Xml.Linq;
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

    /// <summary>
    /// A native binary that leaves out what is not there is built without a word, and each of its commands is slow.
    /// </summary>
    [Fact]
    public void What_the_native_binary_leaves_out_of_the_library_is_there()
    {
        var left = Repository.Files("src", "*.xml").SelectMany(file => XDocument.Parse(file.Text).Descendants("method"))
            .Where(method => method.Ancestors("assembly").First().Attribute("fullname")!.Value == "Terminal.Gui")
            .ToList();
        Assert.Equal(LibraryParts.LeftOut,
            left.Select(
                method => $"{method.Parent!.Attribute("fullname")!.Value}: {method.Attribute("signature")!.Value}"));
        var (atStart, forClipboard) = (Part(LibraryParts.LeftOut[0]), Part(LibraryParts.LeftOut[1]));
        Assert.Equal("System.Void InitializeConfiguration()", $"{atStart.ReturnType} {atStart.Name}()");
        Assert.Equal("System.Boolean CheckSupport()", $"{forClipboard.ReturnType} {forClipboard.Name}()");
        Assert.Empty(atStart.GetParameters().Concat(forClipboard.GetParameters()));
        Assert.NotNull(atStart.GetCustomAttribute<ModuleInitializerAttribute>());
    }

    private static MethodInfo Part(string name)
    {
        var type = typeof(Application).Assembly.GetType(name.Split(": ")[0], throwOnError: true)!;
        return type.GetMethod(name.Split(' ')[^1].TrimEnd('(', ')'),
            BindingFlags.Static | BindingFlags.Instance | BindingFlags.NonPublic | BindingFlags.Public)!;
    }
}
