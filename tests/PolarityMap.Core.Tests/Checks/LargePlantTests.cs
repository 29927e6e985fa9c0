using PolarityMap.Core.Checks;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using Xunit;

namespace PolarityMap.Core.Tests.Checks;

/// <summary>Plants of two thousand links, built part by part without names to look up.</summary>
public sealed class LargePlantTests
{
    private const int Links = 2_000;

    [Fact]
    public void Two_thousand_right_links_raise_nothing() => Assert.Empty(Checker.Check(Campus(Links, "A-to-B")));

    [Fact]
    public void Two_thousand_dead_links_are_two_thousand_findings_each_at_its_link()
    {
        IReadOnlyList<Finding> findings = Checker.Check(Campus(Links, "A-to-A"));
        Assert.Equal(Links, findings.Count);
        Assert.All(findings, f => Assert.Equal("P01", f.Rule.Code));
        Assert.Equal(Enumerable.Range(0, Links), findings.Select(f => Assert.Single(f.Links)));
    }

    /// <summary>Method U1 on eight fibres, four links to a trunk; all right cords of one type.</summary>
    internal static TracedPlant Campus(int links, string rightCord)
    {
        Shape cassette = Bench.ShapeOf("cassette", v => v.Set("wiring", "U1").Set("base", 8));
        Shape trunk = Bench.ShapeOf("trunk", v => v.Set("type", "Type-B").Set("base", 8));
        Shape left = Bench.ShapeOf("duplex cord", v => v.Set("type", "A-to-B"));
        Shape right = Bench.ShapeOf("duplex cord", v => v.Set("type", rightCord));
        Shape ports = Bench.ShapeOf("duplex interface", v => v.Set("ports", 4));
        int rear = cassette.FindPort("rear");
        var builder = new PlantBuilder();
        int line = 0;
        int Add(string name, Shape shape) => builder.AddPart(new Part(name, "", shape, new SourcePlace("campus.yaml", ++line, 1)));
        void Mate(int a, int portA, int b, int portB) => builder.AddMating(
            new Mating(new PortRef(a, portA), new PortRef(b, portB), Keying.Opposed, new SourcePlace("campus.yaml", ++line, 1)));
        void MateDuplex(int a, int portA, int b, int portB) => builder.AddMating(
            new Mating(new PortRef(a, portA), new PortRef(b, portB), Keying.Aligned, new SourcePlace("campus.yaml", ++line, 1)));
        for (int n = 0; n < links / 4; n++)
        {
            int l = Add($"L{n}", ports), r = Add($"R{n}", ports), t = Add($"T{n}", trunk), kl = Add($"KL{n}", cassette), kr = Add($"KR{n}", cassette);
            Mate(kl, rear, t, 0);
            Mate(t, 1, kr, rear);
            for (int port = 0; port < 4; port++)
            {
                int cl = Add($"CL{n}-{port}", left), cr = Add($"CR{n}-{port}", right);
                MateDuplex(l, port, cl, 0);
                MateDuplex(cl, 1, kl, port);
                MateDuplex(kr, port, cr, 0);
                MateDuplex(cr, 1, r, port);
                builder.AddLink(new Link(new LinkEnd(new PortRef(l, port), 0), new LinkEnd(new PortRef(r, port), 0), new SourcePlace("campus.yaml", ++line, 1)));
            }
        }

        return TracedPlant.Of(builder.Build());
    }
}
