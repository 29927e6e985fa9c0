using PolarityMap.Core.Checks;
using PolarityMap.Core.Strands;

namespace PolarityMap.Core.Remedies;

/// <summary>
/// What each finding of a plant is about. Two findings are the same when one rule says something of the same subject:
/// <list type="bullet">
/// <item>polarity and loss: the lanes at the ends of their strands;</item>
/// <item>destination: the links; of a wrong network the lanes;</item>
/// <item>mechanical, fibre, separation, document: the places in the plant, a strand through a foreign part by its lanes too;</item>
/// <item>what has none of these: the line of the document.</item>
/// </list>
/// Rules that give one fault different names are counted as one: a link that comes out at a wrong port (D01, D03, D04, D05),
/// a pair whose transmitters face each other (P01, P02, D02), a loss over the limit (L01, L04).
/// </summary>
internal static class Subjects
{
    /// <summary>Rules that tell one fault by different names; the first of a row stands for all of it.</summary>
    private static readonly string[][] s_alike = [["D01", "D03", "D04", "D05"], ["P01", "P02", "D02"], ["L01", "L04"]];

    /// <summary>For each rule of the catalogue the index of the one that it is counted as.</summary>
    private static readonly Dictionary<string, int> s_groups = Groups();

    /// <summary>The number by which a rule and those that say the same are known.</summary>
    public static int GroupOf(string code) => s_groups[code];

    /// <summary>What a finding is about, some of it perhaps twice; never nothing.</summary>
    public static List<Subject> Of(CheckContext context, Finding finding)
    {
        var subjects = new List<Subject>();
        int group = GroupOf(finding.Rule.Code);
        switch (finding.Rule.Family)
        {
            case "destination" when finding.Rule.Code is not ("D02" or "D06"):
            case "document" when finding.Links.Count > 0:
                AddLinks(finding, group, subjects);
                break;
            case "polarity" when finding.Rule.Code == "P05":
                AddLinks(finding, group, subjects);
                break;
            case "polarity" or "destination" or "loss":
                foreach (int lane in Lanes(context.Traced, finding.Strands))
                    subjects.Add(new Subject(group, SubjectKind.Lane, lane));
                break;
            default:
                AddSites(context, finding, group, subjects);
                break;
        }

        // A loop has no ends, and what is said of a legend has no place in the plant.
        if (subjects.Count == 0)
        {
            foreach (int strand in finding.Strands)
                subjects.Add(new Subject(group, SubjectKind.Site, context.Traced.Graph.PartOf(context.Traced.Strands[strand][0])));
        }

        if (subjects.Count == 0)
            subjects.Add(new Subject(group, SubjectKind.Line, finding.Place.Line, finding.Place.Column));
        return subjects;
    }

    /// <summary>The lanes at the ends of some strands.</summary>
    public static IEnumerable<int> Lanes(TracedPlant traced, IReadOnlyList<int> strands)
    {
        foreach (int strand in strands)
        {
            int first = traced.Strands[strand][0], last = traced.Strands[strand][^1];
            if (traced.Graph.HasLane(first))
                yield return first;
            if (last != first && traced.Graph.HasLane(last))
                yield return last;
        }
    }

    private static void AddLinks(Finding finding, int group, List<Subject> subjects)
    {
        foreach (int link in finding.Links)
            subjects.Add(new Subject(group, SubjectKind.Link, link));
    }

    private static void AddSites(CheckContext context, Finding finding, int group, List<Subject> subjects)
    {
        // A part that foreign light enters is at fault anew for each link that is led through it.
        if (finding.Rule.Code == "S01")
        {
            foreach (FindingSite site in finding.At)
            {
                foreach (int lane in Lanes(context.Traced, finding.Strands))
                    subjects.Add(new Subject(group, SubjectKind.LaneInPart, lane, site.Part));
            }

            return;
        }

        foreach (FindingSite site in finding.At)
        {
            if (site.Port is not { } port)
            {
                // Parts and ports are numbered apart.
                subjects.Add(new Subject(group, SubjectKind.Site, site.Part));
                continue;
            }

            int a = context.Plant.NumberOf(port), b = site.Meets is { } other ? context.Plant.NumberOf(other) : int.MaxValue;
            subjects.Add(new Subject(group, SubjectKind.Site, Math.Min(a, b), Math.Max(a, b)));
        }
    }

    private static Dictionary<string, int> Groups()
    {
        var groups = new Dictionary<string, int>();
        for (int i = 0; i < RuleCatalogue.All.Count; i++)
            groups[RuleCatalogue.All[i].Code] = i;
        foreach (string[] alike in s_alike)
        {
            foreach (string code in alike)
                groups[code] = groups[alike[0]];
        }

        return groups;
    }
}
