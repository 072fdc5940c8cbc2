using System.Runtime.CompilerServices;

namespace Ledger.Terminal.Tests.Fakes;

/// <summary>Keeps the driver away from the real terminal.</summary>
internal static class HeadlessDriver
{
    [ModuleInitializer]
    internal static void Start() => Environment.SetEnvironmentVariable("DisableRealDriverIO", "1");
}
