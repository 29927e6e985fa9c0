using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using Xunit;

namespace PolarityMap.Core.Tests.Plants;

public sealed class PlantBuilderTests
{
    [Fact]
    public void Parts_are_numbered_in_the_order_of_mention_and_the_rest_come_last()
    {
        Plant plant = new Bench()
            .Add("UNUSED-1", "duplex interface")
            .Add("PANEL", "duplex panel")
            .Add("B", "duplex cord", v => v.Set("type", "A-to-B"))
            .Add("UNUSED-2", "duplex interface")
            .Add("A", "duplex cord", v => v.Set("type", "A-to-B"))
            .Mate("A/far", "B/near", through: "PANEL/1")
            .Build();
        Assert.Equal(["A", "PANEL", "B", "UNUSED-1", "UNUSED-2"], plant.Parts.Select(p => p.Name));
    }

    [Fact]
    public void Matings_links_and_open_plugs_follow_their_parts_to_the_new_numbers()
    {
        Plant plant = new Bench()
            .Add("PANEL", "duplex panel")
            .Add("R", "duplex interface")
            .Add("L", "duplex interface")
            .Add("C", "duplex cord", v => v.Set("type", "A-to-B"))
            .Mate("L/1", "C/near")
            .Open("C/far", "PANEL/7")
            .Link("L/1", "R/1")
            .Build();
        Assert.Equal("L/1", plant.Address(plant.Matings[0].A));
        Assert.Equal("C/near", plant.Address(plant.Matings[0].B));
        Assert.Equal("C/far", plant.Address(plant.OpenPlugs[0].Plug));
        Assert.Equal("PANEL/7", plant.Address(plant.OpenPlugs[0].Adapter));
        Assert.Equal("L/1", plant.Address(plant.Links[0].From));
        Assert.Equal("R/1", plant.Address(plant.Links[0].To));
    }

    [Fact]
    public void Addresses_name_positions_and_lanes_where_there_are_any()
    {
        Plant plant = new Bench().Add("Q", "parallel interface").Add("L", "duplex interface").Add("S", "simplex cord").Link("Q/1:3", "L/1").Build();
        Assert.Equal("Q/1:12", plant.Address(new PortRef(0, 0), 12));
        Assert.Equal("L/1:B", plant.Address(new PortRef(1, 0), 2));
        Assert.Equal("S/far", plant.Address(new PortRef(2, 1), 1));
        Assert.Equal("Q/1:3", plant.Address(plant.Links[0].From));
        Assert.Equal("L/1", plant.Address(plant.Links[0].To));
    }

    // Source: the method's own contract; the parts are added against the order in which the matings mention them.
    [Fact]
    public void A_builder_that_goes_on_after_a_plant_leaves_the_plant_as_it_was()
    {
        Shape cord = Bench.ShapeOf("duplex cord", v => v.Set("type", "A-to-B"));
        Shape ports = Bench.ShapeOf("duplex interface", v => v.Set("ports", 2));
        var builder = new PlantBuilder();
        int right = builder.AddPart(new Part("R", "duplex interface", ports, default));
        int first = builder.AddPart(new Part("C", "duplex cord", cord, default));
        int left = builder.AddPart(new Part("L", "duplex interface", ports, default));
        var mating = new Mating(new PortRef(left, 0), new PortRef(first, 0), Keying.Aligned, default);
        builder.AddMating(mating);
        builder.AddLink(new Link(new LinkEnd(new PortRef(left, 0), 0), new LinkEnd(new PortRef(right, 1), 0), default));
        Plant before = builder.Build();
        builder.AddMating(new Mating(new PortRef(first, 1), new PortRef(right, 1), Keying.Aligned, default));
        Plant after = builder.Build();

        Assert.Equal(["L", "C", "R"], before.Parts.Select(p => p.Name));
        Assert.Equal(new PortRef(left, 0), mating.A);
        foreach (Plant plant in (Plant[])[before, after])
        {
            Assert.Equal("L/1", plant.Address(plant.Matings[0].A));
            Assert.Equal("C/near", plant.Address(plant.Matings[0].B));
            Assert.Equal("R/2", plant.Address(plant.Links[0].To));
        }

        Assert.Single(before.Matings);
        Assert.Equal("R/2", after.Address(after.Matings[1].B));
    }

    [Fact]
    public void Faces_that_differ_may_be_tried_and_no_fibre_meets_another()
    {
        var builder = new PlantBuilder();
        builder.AddPart(new Part("L", "duplex interface", Bench.ShapeOf("duplex interface"), default));
        builder.AddPart(new Part("X", "array cord", Bench.ShapeOf("array cord", v => v.Set("type", "Type-A")), default));
        builder.AddMating(new Mating(new PortRef(0, 0), new PortRef(1, 0), Keying.Aligned, default));
        Plant plant = builder.Build();
        Assert.False(plant.Fits(plant.Matings[0]));
        Assert.All(StrandGraph.Of(plant).Outside.ToArray(), p => Assert.Equal(-1, p));
    }

    // Source: the method's own contract: equal faces, or one simplex and the other naming a position of its port.
    [Theory]
    [InlineData("duplex cord", 1)]
    [InlineData("simplex cord", 3)]
    public void Only_a_simplex_plug_takes_a_single_position_and_only_one_that_the_port_has(string plug, int position)
    {
        var builder = new PlantBuilder();
        builder.AddPart(new Part("L", "duplex interface", Bench.ShapeOf("duplex interface", v => v.Set("ports", 2)), default));
        builder.AddPart(new Part("C", plug, plug == "duplex cord" ? Bench.ShapeOf(plug, v => v.Set("type", "A-to-B")) : Bench.ShapeOf(plug), default));
        Assert.Throws<ArgumentException>(
            () => builder.AddMating(new Mating(new PortRef(0, 0), new PortRef(1, 0), Keying.Aligned, default) { PositionOfA = position }));
    }

    [Fact]
    public void A_position_is_mated_to_one_other_only()
    {
        Shape cord = Bench.ShapeOf("duplex cord", v => v.Set("type", "A-to-B"));
        var builder = new StrandGraphBuilder();
        for (int i = 0; i < 3; i++)
            Assert.Equal(i, builder.AddPart(cord));
        builder.Mate(new PortRef(0, 1), new PortRef(1, 0), Keying.Aligned);
        Assert.Throws<ArgumentException>(() => builder.Mate(new PortRef(0, 1), new PortRef(2, 0), Keying.Aligned));
        Assert.Throws<ArgumentException>(() => builder.Mate(new PortRef(2, 0), new PortRef(1, 0), Keying.Aligned));
        Assert.Throws<InvalidOperationException>(() => builder.AddPart(cord));
    }

    [Fact]
    public void A_place_in_a_document_prints_in_the_usual_form() =>
        Assert.Equal("hall.yaml:12:5", new SourcePlace("hall.yaml", 12, 5).ToString());
}
