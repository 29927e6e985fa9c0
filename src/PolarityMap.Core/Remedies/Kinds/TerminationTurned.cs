using PolarityMap.Core.Checks;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Remedies.Kinds;

/// <summary>
/// The duplex adapters of a field termination turned, or its fibres laid in order: either makes or undoes the one crossing that
/// permanent duplex cabling has (TIA-568-A 12.7.1, ISO/IEC 14763-2, EN 50174-1; three public sources).
/// </summary>
internal sealed class TerminationTurned : ChangeKind
{
    private const int MinutesOfAdapter = 2;
    private const int MinutesOfFibre = 15;

    public override string Name => "termination-turned";

    public override string Title => "the adapters of a termination turned, or its fibres laid anew";

    public override string Caution => RemedyCautions.Shards;

    public override bool MayClear(Rule rule) => false;

    public override IEnumerable<Change> AtPart(ChangeContext context, int part)
    {
        Part termination = context.Plant.Parts[part];
        if (termination.Kind != "field termination" || termination.Values is not { } values)
            yield break;
        string? now = values.WiringList("wiring") is null ? values.Word("wiring") : null;
        int duplexPorts = termination.Shape.Ports.Count - 1;
        foreach (string wiring in (string[])["consecutive", "consecutive-turned"])
        {
            // Turning is enough between these two; anything else means new connectors or splices.
            bool turned = now is "consecutive" or "consecutive-turned";
            string text = turned
                ? $"turn the duplex adapters of {ChangeWords.Name(context.Plant, part)} by half a turn"
                : $"lay the fibres of {ChangeWords.Name(context.Plant, part)} anew: {wiring}";
            int minutes = turned ? MinutesOfAdapter * duplexPorts : MinutesOfFibre * 2 * duplexPorts;
            if (context.Alter(this, part, text, minutes, wiring, new Setting("wiring", wiring)) is { Patch.IsEmpty: false } change)
                yield return change;
        }
    }
}
