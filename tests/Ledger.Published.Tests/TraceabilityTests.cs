namespace Ledger.Published.Tests;

/// <summary>
/// The worked example of a standard: GS1, EPCIS Standard 2.0 (2022), section 9.6.4, example of a TransformationEvent.
/// On 31 October 2013 two single items
/// (4012345.011122.25 and 4000001.065432.99886655), 10 kg of lot 4444, 30 items of lot 987 and 220 items of a class
/// become four single items, serials 25 to 28 of
/// 4012345.077889. Trace back from one output leads to all five inputs, trace forward from one input to all four
/// outputs.
/// </summary>
public class TraceabilityTests
{
    private static readonly TraceNode[] Inputs = [.. Enumerable.Range(1, 5)
        .Select(id => new TraceNode(TraceKind.Container, id))];
    private static readonly TraceNode[] Outputs = [.. Enumerable.Range(25, 4)
        .Select(serial => new TraceNode(TraceKind.Sheet, serial))];
    private static readonly TraceNode Transformation = new(TraceKind.Session, 1);
    private static readonly Moment At = new(new(2013, 10, 31), 1);

    [Fact]
    public void Back_from_an_output_are_all_inputs_and_forward_from_an_input_all_outputs()
    {
        var walk = new TraceWalk(new Links([.. Inputs.Select(input => new TraceLink(input, Transformation, At)),
            .. Outputs.Select(output => new TraceLink(Transformation, output, At))]), new(2013, 12, 31));
        Assert.Equal(Inputs, walk.Back(Outputs[1]).Of(TraceKind.Container).Select(reached => reached.Node)
            .OrderBy(node => node.Id));
        Assert.Equal(Outputs, walk.Forward([Inputs[3]]).Of(TraceKind.Sheet).Select(reached => reached.Node)
            .OrderBy(node => node.Id));
        Assert.Contains(Outputs[1], walk.Forward([.. walk.Back(Outputs[1]).Nodes.Keys]).Nodes.Keys);
    }

    /// <summary>A process whose inputs and outputs come on different days (a bath mixed in May, used until August) only
    /// links what came after what.</summary>
    [Fact]
    public void What_went_in_later_is_not_back_of_what_came_out_before()
    {
        var bath = new TraceNode(TraceKind.Bath, 1);
        var walk = new TraceWalk(
            new Links([
                new(Inputs[0], bath, new(new(2013, 5, 1), 1)), new(bath, Outputs[0], new(new(2013, 6, 1), 1)),
                new(Inputs[1], bath, new(new(2013, 7, 1), 1)), new(bath, Outputs[1], new(new(2013, 8, 1), 1)),
            ]),
            new(2013, 12, 31));
        Assert.Equal([Inputs[0]], walk.Back(Outputs[0]).Of(TraceKind.Container).Select(reached => reached.Node));
        Assert.Equal([Inputs[0], Inputs[1]], walk.Back(Outputs[1]).Of(TraceKind.Container)
            .Select(reached => reached.Node).OrderBy(node => node.Id));
        Assert.Equal([Outputs[1]], walk.Forward([Inputs[1]]).Of(TraceKind.Sheet).Select(reached => reached.Node));
        Assert.True(walk.Forward([Inputs[1]]).IsShared(Outputs[1]));
    }

    private sealed class Links(IReadOnlyList<TraceLink> links) : ITraceRecords
    {
        public IReadOnlyList<TraceLink> Into(IReadOnlyCollection<TraceNode> nodes, LocalDate asOf) =>
            [.. links.Where(link => nodes.Contains(link.To))];

        public IReadOnlyList<TraceLink> OutOf(IReadOnlyCollection<TraceNode> nodes, LocalDate asOf) =>
            [.. links.Where(link => nodes.Contains(link.From))];
    }
}
