using System.Reflection;
using System.Xml.Linq;
using Dapper;
using Ledger.Core.Tests.Support;

namespace Ledger.App.Tests.Native;

/// <summary>What the native binary leaves out of the reader of tables.</summary>
public sealed class UnusedHandlersTests
{
    /// <summary>A part that another version names otherwise would be built in again without a word.</summary>
    [Fact]
    public void Every_part_that_is_emptied_is_there_and_is_about_XML()
    {
        var emptied = Repository.Files("src", "*.xml")
            .SelectMany(file => XDocument.Parse(file.Text).Descendants("method"))
            .Where(method => method.Ancestors("assembly").First().Attribute("fullname")!.Value == "Dapper").ToList();
        Assert.NotEmpty(emptied);
        Assert.All(emptied, method =>
        {
            var type = typeof(SqlMapper).Assembly.GetType(method.Parent!.Attribute("fullname")!.Value,
                throwOnError: true)!;
            var part = type.GetMethod(
                method.Attribute("name")!.Value,
                BindingFlags.Instance | BindingFlags.NonPublic | BindingFlags.DeclaredOnly)!;
            Assert.Contains(
                part.GetParameters().Select(parameter => parameter.ParameterType).Append(part.ReturnType),
                one => one.Namespace!.StartsWith("System.Xml", StringComparison.Ordinal));
        });
    }
}
