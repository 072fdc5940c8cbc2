using Ledger.App.Tests.Native;
using Xunit.Sdk;
using Xunit.v3;

[assembly: TestCollectionOrderer(typeof(NativeFirst))]

namespace Ledger.App.Tests.Native;

/// <summary>
/// What needs the native binary comes first: while it is built, which takes longest, the other tests run.
/// </summary>
public sealed class NativeFirst : ITestCollectionOrderer
{
    public IReadOnlyCollection<T> OrderTestCollections<T>(IReadOnlyCollection<T> testCollections)
        where T : notnull, ITestCollection =>
        [
            .. testCollections.OrderByDescending(one =>
                one.TestCollectionDisplayName.Contains(typeof(NativeFirst).Namespace!, StringComparison.Ordinal)),
        ];
}
