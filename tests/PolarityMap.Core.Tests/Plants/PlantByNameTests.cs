using PolarityMap.Core.Checks;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using Xunit;

namespace PolarityMap.Core.Tests.Plants;

public class PlantByNameTests
{
    // Method U1 (TIA-568.3): a U1 cassette at each end of a Type-B trunk and A-to-B cords at both ends.
    [Fact]
    public void A_channel_of_method_U1_made_by_names_is_proven()
    {
        PlantBuilder builder = Channel("A-to-B");
        TracedPlant traced = TracedPlant.Of(builder.Build());
        var context = new CheckContext(traced);
        Assert.Empty(Checker.Check(context));
        Assert.True(Assert.Single(context.Outcomes.All).IsProven);
    }

    [Fact]
    public void The_same_with_an_A_to_A_cord_is_refuted()
    {
        TracedPlant traced = TracedPlant.Of(Channel("A-to-A").Build());
        Assert.NotEmpty(Checker.Check(traced));
        Assert.False(Assert.Single(new CheckContext(traced).Outcomes.All).IsProven);
    }

    [Theory]
    [InlineData("SW-L", "duplex interface", "already")]
    [InlineData("X", "duplex interfce", "no kind or type")]
    public void A_part_that_cannot_be_is_refused(string name, string type, string why) =>
        Assert.Contains(why, Assert.Throws<ArgumentException>(() => Channel("A-to-B").AddPart(name, type)).Message, StringComparison.Ordinal);

    [Fact]
    public void Attributes_that_do_not_go_together_are_refused_with_their_names() =>
        Assert.Contains("reversed", Assert.Throws<ArgumentException>(() => new PlantBuilder().AddPart("C", "duplex cord", v => v.Set("type", "A-to-B").Set("reversed", "far"))).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData("SWL/1", "no part")]
    [InlineData("SW-L", "PART/PORT")]
    [InlineData("SW-L/9", "it has 1")]
    public void An_address_that_nothing_has_is_refused(string address, string why) =>
        Assert.Contains(why, Assert.Throws<ArgumentException>(() => Channel("A-to-B").PortAt(address)).Message, StringComparison.Ordinal);

    [Fact]
    public void Two_plugs_of_arrays_need_a_word_on_their_keys()
    {
        var builder = new PlantBuilder();
        builder.AddPart("T1", "Type-B trunk");
        builder.AddPart("T2", "Type-B trunk");
        Assert.Contains("keys", Assert.Throws<ArgumentException>(() => builder.Mate("T1/far", "T2/near")).Message, StringComparison.Ordinal);
        builder.Mate("T1/far", "T2/near", Keying.Opposed);
        Assert.Equal(Keying.Opposed, Assert.Single(builder.Matings).Keys);
    }

    private static PlantBuilder Channel(string lastCord)
    {
        var builder = new PlantBuilder();
        builder.AddPart("SW-L", "duplex interface");
        builder.AddPart("SW-R", "duplex interface");
        builder.AddPart("C-L", "A-to-B cord");
        builder.AddPart("C-R", "duplex cord", v => v.Set("type", lastCord));
        builder.AddPart("K-L", "U1 cassette");
        builder.AddPart("K-R", "U1 cassette");
        builder.AddPart("T", "Type-B trunk");
        foreach ((string a, string b) in ((string, string)[])[("SW-L/1", "C-L/near"), ("C-L/far", "K-L/1"), ("K-L/rear", "T/near"), ("T/far", "K-R/rear"), ("K-R/1", "C-R/near"), ("C-R/far", "SW-R/1")])
            builder.Mate(a, b);
        builder.AddLink("SW-L/1", "SW-R/1");
        return builder;
    }
}
