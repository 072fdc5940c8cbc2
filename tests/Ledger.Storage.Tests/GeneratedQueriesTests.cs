using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;

namespace Ledger.Storage.Tests;

/// <summary>
/// Every query is rewritten at build time. One that is not would still answer, but by reflection: slower at each start,
/// and the native binary would hold all that Dapper can read, down to XML documents.
/// </summary>
public sealed class GeneratedQueriesTests
{
    [Fact]
    public void No_query_is_left_to_reflection()
    {
        using var file = new PEReader(File.OpenRead(typeof(LedgerFile).Assembly.Location));
        var assembly = file.GetMetadataReader();

        var left = assembly.MemberReferences.Select(assembly.GetMemberReference)
            .Where(member => Owner(assembly, member) is ("Dapper", "SqlMapper"))
            .Select(member => assembly.GetString(member.Name));

        Assert.Empty(left);
    }

    private static (string Namespace, string Name)? Owner(MetadataReader assembly, MemberReference member)
    {
        if (member.Parent.Kind != HandleKind.TypeReference)
            return null;
        var type = assembly.GetTypeReference((TypeReferenceHandle)member.Parent);
        return (assembly.GetString(type.Namespace), assembly.GetString(type.Name));
    }
}
