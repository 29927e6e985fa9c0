using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Schedules.Kinds;

/// <summary>The networks with their colours, keys and what they may share.</summary>
public sealed class NetworkList : ScheduleKind
{
    public override string Name => "networks";

    public override string Title => "Networks";

    public override string Purpose => "For everyone on site: which networks there are, by which colour and key they are told apart, and what they may share.";

    public override IReadOnlyList<ScheduleColumn> Columns { get; } =
    [
        new("network", "Network"),
        new("colour", "Colour"),
        new("key", "Key"),
        new("plain-fits", "Plain fits"),
        new("may-share", "May share"),
        new("strands", "Lit strands", CellKind.Whole),
    ];

    protected override IEnumerable<IReadOnlyList<Cell>> Rows(ScheduleInput input)
    {
        var lit = new int[input.Plant.Networks.Count];
        foreach (int strand in input.Facts.InOrder)
        {
            if (input.Traced.IsActive(strand) && input.Facts.State(strand) == "lit" && input.Facts.NetworkIndex(strand) is >= 0 and int network)
                lit[network]++;
        }

        for (int i = 0; i < lit.Length; i++)
        {
            Network network = input.Plant.Networks[i];
            string share = network.MayShare is not { } shared ? "" : shared.Count == 0 ? "none" : string.Join(", ", shared.Select(s => s.Word()));
            yield return [Cell.Of(network.Name), Cell.Of(network.Colour), Cell.Of(network.Key), Cell.Of(network.PlainFits ? "yes" : ""), Cell.Of(share), Cell.Of(lit[i])];
        }
    }
}
