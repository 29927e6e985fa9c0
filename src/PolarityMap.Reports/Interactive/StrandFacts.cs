using PolarityMap.Core.Checks;
using PolarityMap.Core.Optics;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using PolarityMap.Drawing.Views;
using PolarityMap.Drawing.Views.Strands;

namespace PolarityMap.Reports.Interactive;

/// <summary>Light that an interface sends into a strand.</summary>
/// <param name="FromFirst">True when it enters at the strand's first end.</param>
/// <param name="Wavelength">Its wavelength, or null when that is not known.</param>
/// <param name="Lane">The number of the lane, or 0 where a number says nothing.</param>
internal sealed record StrandLight(bool FromFirst, Wavelength? Wavelength, int Lane);

/// <summary>What the page says of one strand.</summary>
internal sealed class StrandFacts
{
    private StrandFacts(TracedPlant traced, int strand)
    {
        Strand = strand;
        Number = traced.NumberOf(strand);
        Colour = StrandColours.Of(traced, strand);
        ReadOnlySpan<int> positions = traced.Strands[strand];
        IsLoop = traced.Strands.IsLoop(strand);
        From = EndWords(traced, positions[0]);
        To = EndWords(traced, positions[^1]);
        foreach (Hop hop in traced.Hops(strand))
        {
            string words = HopWords(traced, hop);
            Hops.Add(words);
            if (hop is { In: >= 0, Out: >= 0 })
                Passed.Add(HopLine.Words(traced, hop));
        }

        if (IsLoop || positions.Length < 2)
            return;
        AppendLight(traced, positions[0], fromFirst: true);
        AppendLight(traced, positions[^1], fromFirst: false);
    }

    /// <summary>The strand as the traced plant counts it.</summary>
    public int Strand { get; }

    /// <summary>The number it is shown by.</summary>
    public int Number { get; }

    public FibreColour Colour { get; }

    public bool IsLoop { get; }

    /// <summary>Its ends, with what is there and in which room.</summary>
    public string From { get; }

    /// <inheritdoc cref="From"/>
    public string To { get; }

    /// <summary>Its hops in words, one for each part, ends included.</summary>
    public List<string> Hops { get; } = [];

    /// <summary>The hops through parts, without the ends.</summary>
    public List<string> Passed { get; } = [];

    /// <summary>The light sent into it: none where it is dark, two where both ends send.</summary>
    public List<StrandLight> Lights { get; } = [];

    /// <summary>Indices into the plant's networks: those of its ends, else those of the parts that it passes.</summary>
    public IReadOnlyList<int> Networks { get; private set; } = [];

    /// <summary>Indices into the plant's links that have an end on it.</summary>
    public List<int> Links { get; } = [];

    /// <summary>Indices into the findings of the diagram.</summary>
    public List<int> Findings { get; } = [];

    /// <summary>The facts of the chosen strands, in the order of their numbers.</summary>
    public static IReadOnlyList<StrandFacts> Of(ViewInput input)
    {
        TracedPlant traced = input.Traced;
        var all = new List<StrandFacts>(input.Selection.Strands.Count);
        var byStrand = new StrandFacts?[traced.Strands.Count];
        foreach (int strand in input.Selection.Strands)
        {
            var facts = new StrandFacts(traced, strand) { Networks = NetworksOf(traced, strand) };
            byStrand[strand] = facts;
            all.Add(facts);
        }

        for (int link = 0; link < traced.Plant.Links.Count; link++)
        {
            foreach (int strand in Selection.StrandsOfLink(traced, link).Distinct())
                byStrand[strand]?.Links.Add(link);
        }

        for (int i = 0; i < input.Findings.Count; i++)
        {
            Finding finding = input.Findings[i];
            IEnumerable<int> strands = finding.Strands.Count > 0 ? finding.Strands : finding.Links.SelectMany(link => Selection.StrandsOfLink(traced, link));
            foreach (int strand in strands.Distinct())
                byStrand[strand]?.Findings.Add(i);
        }

        return all;
    }

    private static string EndWords(TracedPlant traced, int position)
    {
        string wavelength = traced.Graph.LaneAt(position) switch
        {
            { Direction: LaneDirection.Both, Sends: { } sends, Hears: { } hears } => $" {sends} and {hears}",
            { Sends: { } sends } => $" {sends}",
            { Hears: { } hears } => $" {hears}",
            _ => "",
        };
        return $"{traced.Address(position)}, {HopLine.EndWord(traced, position)}{wavelength}{InRoom(traced, position)}";
    }

    /// <summary>A hop with the room that the part is in, and the adapter in which its plug meets the next part's.</summary>
    private static string HopWords(TracedPlant traced, Hop hop)
    {
        string adapter = hop.Out >= 0 && traced.Graph.Outside[hop.Out] >= 0 && traced.MatingAt(hop.Out)?.Through is { } through
            ? $", then in {traced.Plant.Address(through)}{InRoom(traced.Plant.Parts[through.Part])}"
            : "";
        return $"{HopLine.Words(traced, hop)}{InRoom(traced.Plant.Parts[hop.Part])}{adapter}";
    }

    private static string InRoom(TracedPlant traced, int position) => InRoom(traced.Plant.Parts[traced.Graph.PartOf(position)]);

    private static string InRoom(Part part) => part.Room is { } room ? $", in {room}" : "";

    private void AppendLight(TracedPlant traced, int position, bool fromFirst)
    {
        if (traced.Graph.LaneAt(position) is not { Direction: LaneDirection.Transmit or LaneDirection.Both } lane)
            return;

        // Which lanes of two rows belong together is not settled, so a number would mislead, unless the document gives it.
        PortShape port = traced.Plant.Port(traced.Graph.PlaceOf(position).Port);
        bool isNumbered = port.Face.Family == ConnectorFamily.Array && (port.Face.Rows == 1 || port.Groups > 0);
        Lights.Add(new StrandLight(fromFirst, lane.Sends, isNumbered ? lane.Number : 0));
    }

    private static IReadOnlyList<int> NetworksOf(TracedPlant traced, int strand)
    {
        ReadOnlySpan<int> positions = traced.Strands[strand];
        var networks = new SortedSet<int>();
        foreach (int end in (ReadOnlySpan<int>)[positions[0], positions[^1]])
        {
            if (traced.Graph.HasLane(end))
                networks.Add(traced.Plant.NetworkOf(traced.Graph.PlaceOf(end).Port));
        }

        networks.Remove(-1);
        if (networks.Count == 0)
        {
            foreach (int position in positions)
                networks.Add(traced.Plant.Parts[traced.Graph.PartOf(position)].Network);
            networks.Remove(-1);
        }

        return [.. networks];
    }
}
