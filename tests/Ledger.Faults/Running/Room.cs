using Ledger.Faults.Injection;

namespace Ledger.Faults.Running;

/// <summary>
/// A folder of its own with a ledger in it, and the program that works there. It is in memory where the system has such
/// a folder.
/// </summary>
public sealed class Room : IDisposable
{
    private const string Memory = "/dev/shm";

    /// <summary>The demo year as the program makes it; made once, since it is always the same.</summary>
    private static readonly Lazy<byte[]> _demoYear = new(() =>
    {
        using var room = new Room();
        room.Do("demo", "--into", room.Ledger, "--no-ui");
        return File.ReadAllBytes(room.Ledger);
    });

    private readonly DirectoryInfo _outer;

    /// <summary>An empty room.</summary>
    public Room()
    {
        var near = Directory.Exists(Memory) ? Memory : System.IO.Path.GetTempPath();
        _outer = Directory.CreateDirectory(System.IO.Path.Combine(near, $"trayledger-faults-{Guid.NewGuid():N}"));
        Folder = _outer.CreateSubdirectory("room").FullName;
    }

    /// <summary>The folder that the program sees.</summary>
    public string Folder { get; }

    /// <summary>The ledger.</summary>
    public string Ledger => Path("ledger.db");

    /// <summary>What is in the room, by its path from there.</summary>
    public IReadOnlyList<string> Files =>
        [.. Directory.EnumerateFiles(Folder, "*", SearchOption.AllDirectories)
            .Select(file => System.IO.Path.GetRelativePath(Folder, file)).Order()];

    private string Log => System.IO.Path.Combine(_outer.FullName, "calls");

    /// <summary>The path of something in the room.</summary>
    public string Path(string name) => System.IO.Path.Combine(Folder, name);

    /// <summary>Puts the demo year in the ledger's place.</summary>
    public void KeepTheDemoYear() => File.WriteAllBytes(Ledger, _demoYear.Value);

    /// <summary>Another room that holds the same.</summary>
    public Room Copy()
    {
        var copy = new Room();
        foreach (var file in Files)
        {
            Directory.CreateDirectory(System.IO.Path.GetDirectoryName(copy.Path(file))!);
            File.Copy(Path(file), copy.Path(file));
        }

        return copy;
    }

    /// <summary>Runs the program on the ledger here.</summary>
    public Ran Run(params string[] arguments) => RunOn(Ledger, arguments);

    /// <summary>Runs the program on another file.</summary>
    public static Ran RunOn(string ledger, params string[] arguments) =>
        Executables.Run(NativeBinary.FilePath, ["--file", ledger, .. arguments]);

    /// <summary>Runs the program and expects it to succeed.</summary>
    /// <exception cref="InvalidOperationException">It did not.</exception>
    public Ran Do(params string[] arguments) => Run(arguments) is { Status: 0 } ran ? ran
        : throw new InvalidOperationException($"{string.Join(' ', arguments)}: {Run(arguments)}");

    /// <summary>Runs the program with its calls counted, and a fault at one of them.</summary>
    public Ran RunWith(Fault? fault, IEnumerable<string> arguments)
    {
        File.Delete(Log);
        var ran = Executables.Run(NativeBinary.FilePath, ["--file", Ledger, .. arguments], variables: Faulty(fault));
        return ran with { Calls = Calls };
    }

    /// <summary>
    /// What the environment must hold for a program's calls to be counted, and one of them to go wrong.
    /// </summary>
    internal IReadOnlyDictionary<string, string> Faulty(Fault? fault) => new Dictionary<string, string>
    {
        ["LD_PRELOAD"] = Preload.Library, ["FAULTS_ROOT"] = Folder, ["FAULTS_LOG"] = Log,
        ["FAULTS_KIND"] = fault?.Word ?? "none", ["FAULTS_AT"] = $"{fault?.At ?? 0}",
    };

    /// <summary>The calls that were counted, or the one that was struck: "write ledger.db-wal".</summary>
    internal IReadOnlyList<string> Calls => !File.Exists(Log) ? []
        : [.. File.ReadAllLines(Log)
            .Select(line => line.Replace(Folder + "/", "", StringComparison.Ordinal).Replace('\t', ' '))];

    /// <inheritdoc/>
    public void Dispose() => _outer.Delete(recursive: true);
}
