using PolarityMap.Core.Parts;
using Xunit;

namespace PolarityMap.Core.Tests.Parts;

/// <summary>What holds for the shape of every kind with every combination of its choices and the limits of its numbers.</summary>
public sealed class EveryKindTests
{
    public static TheoryData<string> Kinds => [.. PartKinds.All.Select(k => k.Name)];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Inside_a_part_every_joined_position_has_one_partner_that_leads_back(string kind)
    {
        foreach (Shape shape in Shapes(kind))
        {
            for (int p = 0; p < shape.PositionCount; p++)
            {
                int partner = shape.Inside[p];
                Assert.InRange(partner, -1, shape.PositionCount - 1);
                Assert.NotEqual(p, partner);
                if (partner >= 0)
                    Assert.Equal(p, shape.Inside[partner]);
            }

            int[] partners = [.. shape.Inside.Where(p => p >= 0)];
            Assert.Equal(partners.Length, partners.Distinct().Count());
        }
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_strand_that_enters_a_part_on_one_side_leaves_on_the_other_side_and_the_same_leg(string kind)
    {
        foreach (Shape shape in Shapes(kind))
        {
            List<PortShape> portOf = [.. shape.Ports.SelectMany(p => Enumerable.Repeat(p, p.PositionCount))];
            for (int p = 0; p < shape.PositionCount; p++)
            {
                if (shape.Inside[p] < 0)
                    continue;
                PortShape here = portOf[p];
                PortShape there = portOf[shape.Inside[p]];
                Assert.NotEqual(here.Side, there.Side);
                Assert.True(here.Leg == there.Leg || here.Leg == 0 || there.Leg == 0);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Ports_follow_each_other_without_gaps_and_have_names_of_their_own(string kind)
    {
        foreach (Shape shape in Shapes(kind))
        {
            int next = 0;
            foreach (PortShape port in shape.Ports)
            {
                Assert.Equal(next, port.FirstPosition);
                next += port.IsAdapter ? 0 : port.Face.Rows * port.Face.Columns;
            }

            Assert.Equal(next, shape.PositionCount);
            Assert.Equal(shape.Ports.Count, shape.Ports.Select(p => p.Name).Distinct().Count());
            Assert.Equal(shape.Ports.Count - 1, shape.FindPort(shape.Ports[^1].Name));
            Assert.Equal(-1, shape.FindPort("no such port"));
        }
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Lanes_sit_on_positions_that_lead_nowhere_inside_and_each_on_its_own(string kind)
    {
        foreach (Shape shape in Shapes(kind))
        {
            Assert.Equal(shape.IsInterface, shape.Lanes.Count > 0);
            Assert.Equal(shape.Lanes.Count, shape.Lanes.Select(l => (l.Port, l.Position)).Distinct().Count());
            foreach (Lane lane in shape.Lanes)
            {
                int position = shape.Ports[lane.Port].FirstPosition + lane.Position - 1;
                Assert.Equal(-1, shape.Inside[position]);
                Assert.Equal(lane, shape.LaneAt(position));
            }

            Assert.Equal(shape.Lanes.Count, Enumerable.Range(0, shape.PositionCount).Count(p => shape.LaneAt(p) is not null));
        }
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Array_ports_that_hold_an_adapter_say_their_keys_and_no_other_port_does(string kind)
    {
        foreach (PortShape port in Shapes(kind).SelectMany(s => s.Ports))
        {
            if (port.Face.Family != ConnectorFamily.Array)
                Assert.Null(port.Keys);
            Assert.True(!port.KeysFixed || port.Keys is not null);
        }
    }

    [Fact]
    public void Cables_are_the_shapes_that_are_entered_at_one_end_and_left_at_the_other()
    {
        foreach (PartKind kind in PartKinds.All)
        {
            Assert.All(Shapes(kind.Name), s => Assert.Equal(kind.IsCable, s.IsCable));
            Assert.True(kind.IsCable || !kind.Attributes.Any(a => a.Name == "length"));
        }
    }

    [Fact]
    public void Kinds_and_their_attributes_have_names_of_their_own_and_say_what_they_are()
    {
        Assert.Equal(PartKinds.All.Count, PartKinds.All.Select(k => k.Name).Distinct().Count());
        foreach (PartKind kind in PartKinds.All)
        {
            Assert.Same(kind, PartKinds.Find(kind.Name));
            Assert.EndsWith(".", kind.Summary);
            Assert.Equal(kind.AllAttributes.Count, kind.AllAttributes.Select(a => a.Name).Distinct().Count());
            Assert.All(kind.AllAttributes, a => Assert.Matches("^[A-Z].*[.…]$", a.Meaning));
            Assert.All(kind.Attributes, a => Assert.False(a.Required && a.Default is not null));
        }

        Assert.Null(PartKinds.Find("no such kind"));
    }

    [Fact]
    public void Every_kind_has_a_caption_of_one_or_two_lines()
    {
        foreach (PartKind kind in PartKinds.All)
        {
            Assert.All(Combinations(kind), values =>
            {
                IReadOnlyList<string> caption = kind.Caption(values);
                Assert.InRange(caption.Count, 1, 2);
                Assert.All(caption, line => Assert.NotEqual("", line));
            });
        }
    }

    [Fact]
    public void Every_type_of_the_catalogue_fixes_attributes_of_a_kind_to_words_and_numbers_that_it_takes()
    {
        Assert.Equal(Catalogue.All.Count, Catalogue.All.Select(t => t.Name).Distinct().Count());
        foreach (CatalogueType type in Catalogue.All)
        {
            Assert.Same(type, Catalogue.Find(type.Name));
            Assert.NotEmpty(type.Fixed);
            foreach ((string attribute, string word) in type.Fixed)
            {
                AttributeSpec spec = PartKinds.Find(type.Kind)!.Attributes.Single(a => a.Name == attribute);
                Assert.Contains(word, spec.Numbers.Count > 0 ? spec.Numbers.Select(n => $"{n}") : spec.Words);
            }

            // A catalogue name must not hide a kind.
            Assert.Null(PartKinds.Find(type.Name));
        }

        Assert.Null(Catalogue.Find("no such type"));
    }

    private static List<Shape> Shapes(string kind)
    {
        PartKind found = PartKinds.Find(kind)!;
        var shapes = new List<Shape>();
        foreach (AttributeValues values in Combinations(found))
        {
            var faults = new List<AttributeFault>();
            Shape? shape = found.Build(values, faults);
            Assert.Equal(faults.Count > 0, shape is null);
            if (shape is not null)
                shapes.Add(shape);
        }

        Assert.NotEmpty(shapes);
        return shapes;
    }

    /// <summary>
    /// Every two values of every two attributes together, the others left out, or the first of their words where one is
    /// required. All at once would be millions of parts.
    /// </summary>
    private static List<AttributeValues> Combinations(PartKind kind)
    {
        IReadOnlyList<AttributeSpec> specs = kind.Attributes;
        var rows = new List<AttributeValues>();
        for (int i = 0; i < specs.Count; i++)
        {
            for (int j = i; j < specs.Count; j++)
            {
                foreach (object? one in ValuesOf(specs[i]))
                {
                    foreach (object? other in i == j ? [one] : ValuesOf(specs[j]))
                    {
                        List<(AttributeSpec, object?)> row = [(specs[i], one), (specs[j], other)];
                        row.AddRange(specs.Where((s, k) => s.Required && k != i && k != j).Select(s => (s, ValuesOf(s)[0])));
                        rows.Add(Values(kind, row));
                    }
                }
            }
        }

        return rows;
    }

    /// <summary>Every choice, every listed number, and the lowest, second and highest of a range; null to leave an optional one out.</summary>
    private static object?[] ValuesOf(AttributeSpec spec)
    {
        object?[] values = spec.Sort switch
        {
            AttributeSort.Choice or AttributeSort.Wiring => [.. spec.Words],
            AttributeSort.WholeNumber when spec.Numbers.Count > 0 => [.. spec.Numbers.Cast<object>()],
            AttributeSort.WholeNumber => [spec.Min, spec.Min + 1, spec.Max],
            _ => [],
        };
        return spec.Required ? values : [null, .. values];
    }

    private static AttributeValues Values(PartKind kind, List<(AttributeSpec Spec, object? Value)> row)
    {
        var values = new AttributeValues(kind.AllAttributes);
        foreach ((AttributeSpec spec, object? value) in row)
        {
            if (value is string word)
                values.Set(spec.Name, word);
            else if (value is int number)
                values.Set(spec.Name, number);
        }

        return values;
    }
}
