using PolarityMap.Core.Checks;
using PolarityMap.Core.Deviations;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Core.Locate;

/// <summary>
/// What a search found, in the form in which drawings show findings: the suspect parts by rank, and the two ends of the next test,
/// on the plant as the likeliest explanation has it.
/// </summary>
public static class SuspectFindings
{
    /// <summary>More suspects than this say no more on a drawing.</summary>
    private const int MostSuspects = 4;

    /// <summary>The suspects S1, S2, … and the ends IN and LOOK of the next test.</summary>
    /// <param name="result">What was found.</param>
    /// <param name="asBuilt">The plant as the first explanation has it, its parts numbered as before.</param>
    public static IReadOnlyList<Finding> Of(LocateResult result, TracedPlant asBuilt)
    {
        int[] doubted = [.. DoubtedStrands(result, asBuilt)];
        var findings = new List<Finding>();
        var named = new HashSet<int>();
        foreach (Explanation explanation in result.Explanations)
        {
            foreach (Deviation deviation in explanation.Deviations)
            {
                if (findings.Count < MostSuspects && named.Add(deviation.Parts[0]))
                    findings.Add(Suspect(deviation, explanation.Share, findings.Count + 1, explanation == result.Explanations[0], asBuilt, doubted));
            }
        }

        if (result.Next is { } next)
            findings.AddRange(Ends(next, asBuilt, doubted));
        return findings;
    }

    private static Finding Suspect(Deviation deviation, double share, int rank, bool isFirst, TracedPlant asBuilt, int[] doubted)
    {
        Part part = asBuilt.Plant.Parts[deviation.Parts[0]];
        FindingSite[] at = deviation.Port is { } port && deviation.Differences.All(d => d is not PartDiffers) ? [FindingSite.Of(port)] : [.. deviation.Parts.Select(p => new FindingSite(p))];
        var mark = new Pointer($"S{rank}", $"suspect, {share * 100:0} %");
        return new Finding(mark, part.Place, $"{deviation.Text}.", "", "")
        {
            At = at,
            Strands = Through(deviation.Parts, asBuilt, doubted),
            Remedies = isFirst ? [new Remedy(deviation.Mend, "agrees with everything that was seen", deviation.Patch.IsEmpty ? Remedy.NoPart : deviation.Parts[0]) { IsInside = deviation.Patch.Inside.Count > 0 }] : [],
        };
    }

    /// <summary>The ends of a test.</summary>
    private static IEnumerable<Finding> Ends(NextTest next, TracedPlant asBuilt, int[] doubted)
    {
        const string inHere = "next test: put light in here";
        const string lookHere = "next test: look here";
        switch (next.Test)
        {
            case LightTest light:
                yield return End("IN", inHere, light.From);
                int seen = next.Outcomes.Select(o => o.Observation).OfType<LightSeen>().Select(o => o.Seen).FirstOrDefault(s => s >= 0, -1);
                yield return seen >= 0 ? End("LOOK", lookHere, seen) : AtPart(light.Look);
                break;
            case LossTest loss:
                yield return End("IN", inHere, loss.From);
                yield return End("LOOK", "next test: measure here", loss.Seen);
                break;
            case LampTest lamp:
                int listener = asBuilt.Graph.PositionOf(lamp.Port, 1);
                yield return End("LOOK", "next test: look at the link lamp", listener);
                break;
            case LookTest look:
                yield return AtPart(look.Part);
                break;
        }

        Finding End(string code, string title, int position)
        {
            PortRef port = asBuilt.Graph.PlaceOf(position).Port;
            return Told(code, title, $"{asBuilt.Address(position)}.", port.Part, FindingSite.Of(port), [asBuilt.StrandOf(position)]);
        }

        Finding AtPart(int part) =>
            Told("LOOK", lookHere, $"{asBuilt.Plant.Parts[part].Name}.", part, new FindingSite(part), Through([part], asBuilt, doubted));

        Finding Told(string code, string title, string message, int part, FindingSite at, IReadOnlyList<int> strands) =>
            new(new Pointer(code, title), asBuilt.Plant.Parts[part].Place, message, "", "") { At = [at], Strands = strands };
    }

    /// <summary>The strands that what was seen is about, where it refutes the plant as described.</summary>
    private static SortedSet<int> DoubtedStrands(LocateResult result, TracedPlant asBuilt)
    {
        var strands = new SortedSet<int>();
        foreach (int index in result.Refuting)
        {
            switch (result.Observations[index])
            {
                case LightSeen light:
                    strands.Add(asBuilt.StrandOf(light.From));
                    break;
                case LossMeasured loss:
                    strands.Add(asBuilt.StrandOf(loss.From));
                    break;
                case LampSeen lamp:
                    foreach (Lane lane in asBuilt.Plant.Parts[lamp.Port.Part].Shape.Lanes)
                    {
                        if (lane.Port == lamp.Port.Port)
                            strands.Add(asBuilt.StrandOf(asBuilt.Graph.PositionOf(lamp.Port, lane.Position)));
                    }

                    break;
            }
        }

        return strands;
    }

    /// <summary>Those of some strands that pass parts; where none does, the first strand that passes the first part.</summary>
    private static IReadOnlyList<int> Through(IReadOnlyList<int> parts, TracedPlant asBuilt, int[] doubted)
    {
        int[] through = [.. doubted.Where(s => Passes(asBuilt, s, parts))];
        if (through.Length > 0)
            return through;
        int first = asBuilt.Graph.FirstPositionOf(parts[0]);
        return asBuilt.Plant.Parts[parts[0]].Shape.PositionCount == 0 ? [] : [asBuilt.StrandOf(first)];
    }

    private static bool Passes(TracedPlant asBuilt, int strand, IReadOnlyList<int> parts)
    {
        foreach (int position in asBuilt.Strands[strand])
        {
            if (parts.Contains(asBuilt.Graph.PartOf(position)))
                return true;
        }

        return false;
    }

    /// <summary>Points at a place; no rule that a plant is checked by.</summary>
    private sealed class Pointer(string code, string title) : Rule
    {
        public override string Code => code;

        public override string Title => title;

        public override Severity Severity => Severity.Note;

        public override string Why => "It agrees with what was seen on site.";

        public override string Clears => "A test that shows something else.";

        public override string Source => "what was seen on site";

        public override string Example => "";

        public override string Repaired => "";

        public override void Check(CheckContext context, List<Finding> findings)
        {
        }
    }
}
