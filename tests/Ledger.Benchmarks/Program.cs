using BenchmarkDotNet.Running;
using Ledger.Benchmarks;

// `all` measures what users feel, as ratios, and prints a table for DEVELOPERS.md; the name of one group prints that
// part of it; anything else goes to BenchmarkDotNet.
if (args is [var group, ..] && Ratios.Knows(group))
    Ratios.Print(Console.Out, group, args.Length > 1 ? args[1] : "artifacts/publish/trayledger");
else
    BenchmarkSwitcher.FromAssembly(typeof(ReadingBenchmarks).Assembly).Run(args);
