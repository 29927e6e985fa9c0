using PolarityMap.Core.Planning;
using PolarityMap.Core.Planning.Growth;
using PolarityMap.Core.Plants;
using Xunit;

namespace PolarityMap.Core.Tests.Planning.Growth;

/// <summary>Racks count on from the first, and what a plan takes of them is read back from its notes.</summary>
public sealed class TakenPlaceTests
{
    [Theory]
    [InlineData("ER-R1", 0, "ER-R1")]
    [InlineData("ER-R1", 1, "ER-R2")]
    [InlineData("ER-R9", 1, "ER-R10")]
    [InlineData("R01", 9, "R10")]
    [InlineData("Hall", 1, "Hall-2")]
    [InlineData("Hall", 2, "Hall-3")]
    public void A_rack_counts_on_from_the_number_that_the_first_ends_in(string first, int index, string name)
    {
        Assert.Equal(name, RackNames.After(first, index));
        Assert.Equal(index, RackNames.IndexOf(first, name));
    }

    [Theory]
    [InlineData("ER-R2", "ER-R1")]
    [InlineData("ER-R1", "EX-R2")]
    [InlineData("R01", "R2")]
    [InlineData("Hall", "Hall-1")]
    public void Another_name_is_no_rack_of_the_row(string first, string name) => Assert.Equal(-1, RackNames.IndexOf(first, name));

    // Racks of two units: a switch and cassettes in two panels of each end fill one and a half racks of the equipment room.
    [Fact]
    public void The_units_that_a_plan_takes_are_read_back()
    {
        Brief brief = ComparisonStatementTests.Twelve("10GBASE-SR", "OM4") with { RackUnits = 2, CassettesPerPanel = 1 };
        brief = brief with { Rooms = [brief.Rooms[0] with { Rack = "M-R1" }, brief.Rooms[1]] };
        Plant plant = PlanProof.Of(brief, new PlanCandidate(PlanMethod.Find("U1")!, 12)).Report!.Traced.Plant;
        Assert.Contains(plant.Parts, p => p.Note?.Contains("rack M-R2 unit 2", StringComparison.Ordinal) == true);
        BriefRoom taken = TakenPlaces.In(brief.Rooms[0], 2, plant, isKnown: true);
        Assert.Equal((3, 2), (taken.UnitsTaken, taken.PanelsTaken));
    }
}
