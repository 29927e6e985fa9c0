using PolarityMap.Core.Optics;
using PolarityMap.Core.Planning;
using PolarityMap.Core.Planning.Growth;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using Xunit;

namespace PolarityMap.Core.Tests.Planning.Growth;

/// <summary>
/// That a growth buys nothing which the plant has. The count is made by hand from the briefs: whichever way they are led, the
/// links of a network to a room take so many ports of cassettes at each end, so many legs and so many cords, and what of these is
/// not in the plant has to be bought. A growth that adds just as many is the smallest.
/// </summary>
public sealed class SmallestGrowthTests
{
    private static readonly SourcePlace s_nowhere = new("brief", 0, 0);

    [Fact]
    public void No_growth_adds_more_than_what_the_plant_lacks()
    {
        int grown = 0, scattered = 0;
        var wrong = new List<string>();
        for (int number = 0; number < Soak.Times(300); number++)
        {
            var random = new Random(number);
            Brief full = Make(random, out int ports);
            if (Planner.Served(full) is not { } plan)
                continue;
            Brief less = full with { Outlets = Other(random, full, fewer: true) }, more = full with { Outlets = Other(random, full, fewer: false) };
            TracedPlant at = plan.Report!.Traced;
            foreach (Brief next in new[] { less, more })
            {
                GrowthResult result = GrowthPlanner.Plan(at, next);
                if (result.Difference is null)
                    break;
                Assert.True(result.IsMet, $"case {number}: {result.Reason}");
                grown++;
                scattered += next == more && result.Difference.Added.Count > 0 ? 1 : 0;
                wrong.AddRange(Compare(at.Plant, next, result, ports).Select(w => $"case {number}{(next == more ? " more" : " less")} {next.Separation} base {2 * ports} spare {next.Spare} {string.Join("; ", next.Outlets.Select(o => $"{o.Name} {string.Join('/', o.Links)}"))}: {w}"));
                at = result.After!.Report!.Traced;
            }
        }

        Assert.True(wrong.Count == 0, $"{wrong.Count} of {grown}\n" + string.Join('\n', wrong.Take(40)));
        Assert.True(grown > 190 && scattered > 90, $"{grown} grown, {scattered} onto what was left free");
    }

    private static IEnumerable<string> Compare(Plant before, Brief brief, GrowthResult result, int ports)
    {
        GrowthDifference difference = result.Difference!;
        int most = brief.TrunkLegs[^1];
        for (int n = 0; n < brief.Networks.Count; n++)
        {
            string name = brief.Networks[n].Name;
            int links = brief.Outlets.Sum(o => o.Name.Count * o.Links[n]), arrays = Ceiling(brief.Spare.Over(links), ports);
            bool Is(Part part, string kind, string? room) => part.Kind == kind && part.Network >= 0 && difference.Networks[part.Network].Name == name && (room is null || part.Room == room);
            int Had(string kind, string? room) => before.Parts.Count(p => Is(p, kind, room));
            int Adds(string kind, string? room) => difference.Added.Count(p => Is(difference.Parts[p], kind, room));
            foreach (string room in new[] { "Main", "Hall" })
            {
                int lacks = Math.Max(0, arrays - Had("cassette", room)), adds = Adds("cassette", room);
                if (adds != lacks)
                    yield return $"{name}: {adds} cassettes in {room}, lacks {lacks} of {arrays}";
            }

            int legs = before.Parts.Where(p => Is(p, "trunk", null)).Sum(p => p.Shape.Ports.Count / 2), lacked = Ceiling(Math.Max(0, arrays - legs), most);
            if (Adds("trunk", null) != lacked)
                yield return $"{name}: {Adds("trunk", null)} trunks, lacks {lacked}";
            foreach (IGrouping<Length, Part> cords in difference.Parts.Where(p => Is(p, "cord", null)).GroupBy(p => p.Length!.Value))
            {
                int lacks = Math.Max(0, links - before.Parts.Count(p => Is(p, "cord", null) && p.Length == cords.Key));
                int adds = difference.Added.Count(p => Is(difference.Parts[p], "cord", null) && difference.Parts[p].Length == cords.Key);
                if (adds != lacks)
                    yield return $"{name}: {adds} cords of {cords.Key}, lacks {lacks}";
            }
        }

        if (brief.Separation != SeparationPolicy.Gathered)
            yield break;
        foreach (BriefOutlets outlets in brief.Outlets)
        {
            int arrays = Ceiling(brief.Spare.Over(outlets.LinksEach), ports);
            for (int i = 0; i < outlets.Name.Count; i++)
            {
                string outlet = outlets.Name.At(i);
                int had = before.Parts.Count(p => p.Kind == "outlet" && (p.Name == outlet || p.Name.StartsWith(outlet + "-", StringComparison.Ordinal)));
                int adds = difference.Added.Count(p => difference.Parts[p] is { Kind: "outlet" } part && (part.Name == outlet || part.Name.StartsWith(outlet + "-", StringComparison.Ordinal)));
                if (adds != Math.Max(0, arrays - had))
                    yield return $"{outlet}: {adds} outlets, lacks {Math.Max(0, arrays - had)}";
            }
        }
    }

    private static int Ceiling(int count, int each) => (count + each - 1) / each;

    private static Brief Make(Random random, out int ports)
    {
        PlanCandidate candidate = new(PlanMethod.All[random.Next(PlanMethod.All.Count)], PlanCandidate.Bases[random.Next(3)]);
        ports = candidate.Base / 2;
        int networks = random.Next(1, 4);
        bool gathered = random.Next(2) == 0;
        Brief brief = new()
        {
            Title = new PlantTitle("Random"),
            Fibre = FibreClass.Find("OM4")!,
            Networks = [.. Enumerable.Range(0, networks).Select(n => new BriefNetwork(new Network($"net{n + 1}", "red", s_nowhere) { Key = $"K{n + 1}" }, $"N{n + 1}", Application.Find("10GBASE-SR")!))],
            Rooms = [new BriefRoom("Main", "M", s_nowhere), new BriefRoom("Hall", "H", s_nowhere) { Distance = Length.FromMillimetres(20_000), From = 0 }],
            Outlets = [],
            Method = candidate.Method,
            Base = candidate.Base,
            Separation = gathered ? SeparationPolicy.Gathered : SeparationPolicy.Own,
            Spare = new Percentage(random.Next(3) == 0 ? 25 : 0),
            ArrayLoss = new Decibel(0.25m),
            DuplexLoss = new Decibel(0.15m),
        };
        return brief with { Outlets = [.. Enumerable.Range(0, 2).Select(g => new BriefOutlets(new PlannedName($"D{(char)('A' + g)}", 1, random.Next(1, 9), ""), 1, Links(random, networks), s_nowhere) { Distance = gathered ? Length.FromMillimetres(10_000) : null })] };
    }

    private static int[] Links(Random random, int networks)
    {
        int[] links = [.. Enumerable.Range(0, networks).Select(_ => random.Next(0, 3))];
        links[random.Next(networks)]++;
        return links;
    }

    /// <summary>Some outlets of each group, or each with other links.</summary>
    private static List<BriefOutlets> Other(Random random, Brief brief, bool fewer)
    {
        var outlets = new List<BriefOutlets>();
        foreach (BriefOutlets group in brief.Outlets)
        {
            int from = fewer ? random.Next(0, group.Name.Count) : 0, count = fewer ? random.Next(1, group.Name.Count - from + 1) : group.Name.Count + random.Next(0, 4);
            outlets.Add(group with { Name = group.Name.Slice(from, count), Links = fewer || random.Next(2) == 0 ? group.Links : [.. group.Links.Zip(Links(random, brief.Networks.Count), Math.Max)] });
        }

        return outlets;
    }
}
