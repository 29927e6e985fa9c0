using PolarityMap.Core.Plants;
using Xunit;

namespace PolarityMap.Documents.Tests.Binding;

/// <summary>How parts, types, networks and the title are read.</summary>
public class PartTests
{
    [Theory]
    [InlineData("SW-[1..3]", "SW-1|SW-2|SW-3")]
    [InlineData("SW-[3..1]", "SW-3|SW-2|SW-1")]
    [InlineData("SW-[08..10]", "SW-08|SW-09|SW-10")]
    [InlineData("R[1,5]-[1..2]", "R1-1|R1-2|R5-1|R5-2")]
    [InlineData("P[1..7 by 3]", "P1|P4|P7")]
    [InlineData("Bühne links", "Bühne links")]
    public void A_name_with_ranges_stands_for_many_parts(string name, string names) =>
        Assert.Equal(names.Split('|'), Reading.Plant($"plant: P\nparts:\n  {name}: duplex interface\n").Parts.Select(p => p.Name));

    [Fact]
    public void A_part_has_its_attributes_and_the_place_of_its_name()
    {
        Plant plant = Reading.Plant(
            """
            plant: P
            networks:
              sound: { colour: pink }
              light:
            parts:
              T: { kind: trunk, type: Type-C, base: 8, legs: 3, spare: 2..3, length: 62 m, network: light, room: 101, note: "a: b" }
            """);
        Part trunk = Reading.Part(plant, "T");

        Assert.Equal("trunk", trunk.Kind);
        Assert.Equal(["trunk", "Type-C"], trunk.Caption);
        Assert.Equal(6, trunk.Shape.Ports.Count);
        Assert.Equal([2, 3], trunk.SpareLegs);
        Assert.Equal("62 m", trunk.Length?.ToString());
        Assert.Equal(1, trunk.Network);
        Assert.Equal("101", trunk.Room);
        Assert.Equal("a: b", trunk.Note);
        Assert.Equal(new SourcePlace("p", 6, 3), trunk.Place);
        Assert.Equal([new Network("sound", "pink", new SourcePlace("p", 3, 3)), new Network("light", null, new SourcePlace("p", 4, 3))], plant.Networks);
    }

    [Theory]
    [InlineData("3", "3")]
    [InlineData("2..4", "2 3 4")]
    [InlineData("[1, 3..4]", "1 3 4")]
    [InlineData("\"[1,3]\"", "1 3")]
    [InlineData("[]", "")]
    public void Spare_legs_are_numbers_ranges_or_a_list(string spare, string legs) =>
        Assert.Equal(legs, string.Join(' ', Reading.Plant($"plant: P\nparts:\n  T: {{ kind: Type-A trunk, legs: 4, spare: {spare} }}\n").Parts[0].SpareLegs));

    [Fact]
    public void A_type_may_be_built_on_a_type_and_the_nearest_attribute_counts()
    {
        Plant plant = Reading.Plant(
            """
            plant: P
            types:
              trunk of two: { kind: Type-B trunk, legs: 2, length: 10 m, room: Cellar }
              long trunk: { kind: trunk of two, length: 90 m }
            parts:
              A: trunk of two
              B: long trunk
              C: { kind: long trunk, legs: 4 }
              D: { kind: long trunk, type: Type-A }
            """);

        Assert.Equal(["10 m", "90 m", "90 m", "90 m"], plant.Parts.Select(p => p.Length?.ToString()));
        Assert.Equal([4, 4, 8, 4], plant.Parts.Select(p => p.Shape.Ports.Count));
        Assert.Equal(["Type-B", "Type-B", "Type-B", "Type-A"], plant.Parts.Select(p => p.Caption[1]));
        Assert.All(plant.Parts, p => Assert.Equal("Cellar", p.Room));
    }

    [Fact]
    public void A_cord_of_an_own_type_has_its_attributes_and_the_length_of_the_run()
    {
        Plant plant = Reading.Plant(
            """
            plant: P
            networks: { sound: { colour: pink } }
            types:
              pink cord: { kind: A-to-A cord, network: sound, length: 1 m }
            parts:
              SW: { kind: duplex interface, ports: 4 }
            runs:
              - SW/1, pink cord, SW/2
              - SW/3, pink cord 7 m, SW/4
            """);

        Assert.Equal(["1 m", "7 m"], plant.Parts.Where(p => p.IsInline).Select(p => p.Length?.ToString()));
        Assert.All(plant.Parts.Where(p => p.IsInline), p => Assert.Equal((0, "A-to-A"), (p.Network, p.Caption[1])));
    }

    [Fact]
    public void An_own_type_comes_before_a_built_in_one_of_the_same_name() =>
        Assert.Equal(
            "A-to-A",
            Reading.Plant("plant: P\ntypes:\n  A-to-B cord: { kind: duplex cord, type: A-to-A }\nparts:\n  C: A-to-B cord\n").Parts[0].Caption[1]);

    [Fact]
    public void The_title_takes_every_field_of_the_title_block()
    {
        PlantTitle title = Reading.Plant(
            """
            plant: "The plant: its title"
            site: A house
            revision: 3
            date: 2024-02-29
            author: B. Uilder
            number: 007
            parts: {}
            """).Title;

        Assert.Equal(
            new PlantTitle("The plant: its title") { Site = "A house", Revision = "3", Date = "2024-02-29", Author = "B. Uilder", Number = "007" },
            title);
    }

    [Fact]
    public void Fields_of_the_title_that_are_not_given_are_absent() =>
        Assert.Equal(new PlantTitle("P"), Reading.Plant("plant: P\nparts: {}\n").Title);

    // ISO 8601 calendar dates with hyphens; 2026 is no leap year and 1900 was none either.
    [Theory]
    [InlineData("2026-03-01", true)]
    [InlineData("2000-02-29", true)]
    [InlineData("2026-02-29", false)]
    [InlineData("1900-02-29", false)]
    [InlineData("2026-3-1", false)]
    [InlineData("2026-13-01", false)]
    [InlineData("20260301", false)]
    [InlineData("01.03.2026", false)]
    [InlineData("2026-03-01T10:00:00", false)]
    [InlineData("\" 2026-03-01\"", false)]
    public void A_date_is_a_day_of_the_calendar(string date, bool sound)
    {
        (Plant? plant, string problems) = Reading.Read($"plant: P\ndate: {date}\nparts: {{}}\n");

        Assert.Equal(sound, plant is not null);
        if (!sound)
            Assert.StartsWith("p:2:7: '", problems, StringComparison.Ordinal);
    }

    [Fact]
    public void At_most_a_hundred_networks_are_read()
    {
        static string Document(int count) => "plant: P\nnetworks:\n" + string.Concat(Enumerable.Range(1, count).Select(n => $"  n{n}:\n")) + "parts: {}\n";

        Assert.Equal(100, Reading.Plant(Document(100)).Networks.Count);
        Assert.Equal("p:103:3: a plant has at most 100 networks\n", Reading.Problems(Document(102)));
    }
}
