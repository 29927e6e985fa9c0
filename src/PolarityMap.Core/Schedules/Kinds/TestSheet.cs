using PolarityMap.Core.Budget;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Core.Schedules.Kinds;

/// <summary>A row for each strand between two interfaces: what a test of its cabling may read, and blanks for what it does read.</summary>
public sealed class TestSheet : ScheduleKind
{
    public override string Name => "tests";

    public override string Title => "Test sheet";

    public override string Purpose =>
        "For whoever tests: the end points of the cabling of every strand, the polarity to expect, the most that a light-source test may read with reference cords in place of the patch cords, and blanks to fill.";

    public override IReadOnlyList<ScheduleColumn> Columns { get; } =
    [
        new("strand", "Strand", CellKind.Whole),
        new("link", "Link"),
        new("network", "Network"),
        new("end-a", "End A"),
        new("room-a", "Room A"),
        new("end-b", "End B"),
        new("room-b", "Room B"),
        new("polarity", "Expected polarity"),
        new("length", "Length (m)", CellKind.Metres),
        new("method", "Reference method"),
        new("wavelength-1", "Wavelength 1"),
        new("limit-1", "Limit 1 (dB)", CellKind.Decibels),
        new("measured-1-ab", "Measured 1, A to B (dB)", CellKind.Blank),
        new("measured-1-ba", "Measured 1, B to A (dB)", CellKind.Blank),
        new("wavelength-2", "Wavelength 2"),
        new("limit-2", "Limit 2 (dB)", CellKind.Decibels),
        new("measured-2-ab", "Measured 2, A to B (dB)", CellKind.Blank),
        new("measured-2-ba", "Measured 2, B to A (dB)", CellKind.Blank),
        new("date", "Date", CellKind.Blank),
        new("tester", "Tester", CellKind.Blank),
        new("result", "Result", CellKind.Blank),
    ];

    protected override IEnumerable<IReadOnlyList<Cell>> Rows(ScheduleInput input)
    {
        TracedPlant traced = input.Traced;
        BudgetTable table = BudgetTable.Of(traced);
        var budgets = new StrandBudget?[traced.Strands.Count];
        foreach (StrandBudget budget in table.Strands)
            budgets[budget.Strand] ??= budget;
        foreach (int strand in input.Facts.InOrder)
        {
            if (!traced.IsActive(strand))
                continue;
            ReadOnlySpan<int> positions = traced.Strands[strand];
            (int first, int last) = (positions[0], positions[^1]);
            AcceptanceLimit? limit = budgets[strand] is { } of ? table.Acceptance(of) : null;
            PortRef a = traced.Graph.PlaceOf(limit?.From ?? first).Port, b = traced.Graph.PlaceOf(limit?.To ?? last).Port;
            yield return
            [
                Cell.Of(traced.NumberOf(strand)), Cell.Of(input.Facts.Link(strand)), Cell.Of(input.Facts.Network(strand)),
                Cell.Of(traced.Address(limit?.From ?? first)), Cell.Of(PartFacts.Room(input.Plant, a)),
                Cell.Of(traced.Address(limit?.To ?? last)), Cell.Of(PartFacts.Room(input.Plant, b)),
                Cell.Of(Polarity(input, strand, first, last)), Cell.Of(limit?.Length), Cell.Of(limit?.Method ?? "no limit: see the budget"),
                .. Test(limit, 0), Cell.Empty, Cell.Empty, .. Test(limit, 1), Cell.Empty, Cell.Empty,
                Cell.Empty, Cell.Empty, Cell.Empty,
            ];
        }
    }

    private static Cell[] Test(AcceptanceLimit? limit, int index) => limit is not null && index < limit.Tests.Count
        ? [Cell.Of(limit.Tests[index].Wavelength.ToString()), Cell.Of(limit.Tests[index].Limit)]
        : [Cell.Empty, Cell.Empty];

    /// <summary>Which end sends and which hears; a strand that a finding is about is not to be signed off.</summary>
    private static string Polarity(ScheduleInput input, int strand, int first, int last)
    {
        TracedPlant traced = input.Traced;
        LaneDirection? one = traced.Graph.LaneAt(first)?.Direction, other = traced.Graph.LaneAt(last)?.Direction;
        string link = input.Facts.Link(strand);
        if (input.Facts.State(strand) is var state && state != "lit")
            return $"FAULT: {state}";
        if (link.Length > 0 && !input.Facts.ReachesItsLink(strand))
            return $"FAULT: comes out at {traced.Address(first)} and {traced.Address(last)}";
        return (one, other) switch
        {
            (LaneDirection.Receive, _) => $"transmit {traced.Address(last)} to receive {traced.Address(first)}",
            (LaneDirection.Both, _) => $"{traced.Address(first)} and {traced.Address(last)}, both ways",
            _ => $"transmit {traced.Address(first)} to receive {traced.Address(last)}",
        };
    }
}
