using BenchmarkDotNet.Running;
using Ledger.Benchmarks;

// `all` measures what users feel, as ratios, and prints a table for DEVELOPERS.md; anything else goes to BenchmarkDotNet.
if (args is ["all", ..])
    Ratios.Print(Console.Out, args.Length > 1 ? args[1] : "artifacts/publish/trayledger");
else
    BenchmarkSwitcher.FromAssembly(typeof(ReadingBenchmarks).Assembly).Run(args);
