using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using Xunit;

namespace PolarityMap.Documents.Tests.Binding;

/// <summary>How losses, lists of networks, pairs and conversions are read.</summary>
public class AttributeTests
{
    private static Part Part(string description, string sections = "") =>
        Reading.Part(Reading.Plant($"plant: P\n{sections}parts:\n  X: {description}\n"), "X");

    [Theory]
    [InlineData("0.35 dB", "0.35 dB")]
    [InlineData("0.35dB", "0.35 dB")]
    [InlineData("0 dB", "0.00 dB")]
    [InlineData("100 dB", "100.00 dB")]
    [InlineData("\" 0.2  dB \"", "0.20 dB")]
    public void A_loss_has_its_unit(string written, string read)
    {
        Part cassette = Part($"{{ kind: U1 cassette, array-loss: {written}, expected-duplex-loss: {written} }}");

        Assert.Equal(read, cassette.Shape.Ports[^1].StatedLoss.ToString());
        Assert.Equal(read, cassette.Shape.Ports[0].ExpectedLoss.ToString());
        Assert.Null(cassette.Shape.Ports[0].StatedLoss);
    }

    [Theory]
    [InlineData("3.0 dB/km", "3.0 dB/km")]
    [InlineData("0.22dB/km", "0.22 dB/km")]
    public void An_attenuation_has_its_unit(string written, string read) =>
        Assert.Equal(read, Part($"{{ kind: Type-B trunk, attenuation: {written} }}").Attenuation.ToString());

    [Fact]
    public void Ports_of_several_networks_sit_side_by_side()
    {
        Plant plant = Reading.Plant("plant: P\nnetworks: { sound: ~, light: ~ }\nparts:\n  K: { kind: U1 cassette, networks: [light, sound], network: sound }\n");

        Assert.Equal([1, 0], plant.Parts[0].PortNetworks);
        Assert.Equal([1, 0, 0, 0, 0, 0, 0], Enumerable.Range(0, 7).Select(n => plant.NetworkOf(new PortRef(0, n))));
    }

    [Theory]
    [InlineData("{ kind: trunk, wiring: [[1, 12], [2, 11]] }", "1-12 2-11")]
    [InlineData("{ kind: Type-A trunk, wiring: [[3, 4]] }", "3-4")]
    [InlineData("{ kind: array cord, base: 8, wiring: [[1, 1], [12, 12]] }", "1-1 12-12")]
    [InlineData("{ kind: splice, fibres: 2, wiring: [[1, 2], [2, 1]] }", "1-2 2-1")]
    public void A_cable_may_have_its_wiring_written_out(string description, string joins)
    {
        Shape shape = Part(description).Shape;
        int width = shape.Ports[0].Face.Count;

        Assert.Equal(joins, string.Join(' ', Enumerable.Range(0, width).Where(p => shape.Inside[p] >= 0).Select(p => $"{p + 1}-{shape.Inside[p] - width + 1}")));
    }

    [Fact]
    public void A_wiring_written_out_replaces_the_type_of_a_type_and_the_reverse()
    {
        Plant plant = Reading.Plant(
            """
            plant: P
            types:
              own: { kind: trunk, wiring: [[1, 1]] }
              named: { kind: trunk, type: Type-C }
            parts:
              A: own
              B: { kind: own, type: Type-B }
              C: { kind: named, wiring: [[2, 2]] }
              D: named
            """);

        Assert.Equal(["own wiring", "Type-B", "own wiring", "Type-C"], plant.Parts.Select(p => p.Caption[1]));
    }

    [Fact]
    public void Lanes_may_be_written_out()
    {
        Shape shape = Part("{ kind: parallel interface, lanes: [[1, 3], [2, 4]] }").Shape;

        Assert.Equal(
            ["1 Transmit 1", "3 Receive 1", "2 Transmit 2", "4 Receive 2"],
            shape.Lanes.Select(l => $"{l.Position} {l.Direction} {l.Number}"));
    }

    /// <summary>The narrow positions of base 8 are 1-4 and 9-12 (four public sources), so the fifth of a list is position 9.</summary>
    [Theory]
    [InlineData("[[1, none, 3, 4, 5, 6, 7, 8], [1:9, '-', 11, 12, 13, 14, 15, 1:16]]", "1:1-1 1:3-3 1:4-4 1:9-5 1:10-6 1:11-7 1:12-8 2:1-9 2:3-11 2:4-12 2:9-13 2:10-14 2:11-15 2:12-16")]
    public void A_conversion_may_be_written_out(string wiring, string joins)
    {
        Shape shape = Part($"{{ kind: conversion module, conversion: 16 to 2x8, wiring: {wiring} }}").Shape;
        int wide = shape.Ports[2].FirstPosition;

        Assert.Equal("rear", shape.Ports[2].Name);
        Assert.Equal(joins, string.Join(' ', Enumerable.Range(0, wide).Where(p => shape.Inside[p] >= 0).Select(p => $"{(p / 12) + 1}:{(p % 12) + 1}-{shape.Inside[p] - wide + 1}")));
    }

    [Fact]
    public void The_second_wide_port_is_named_with_a_colon()
    {
        Shape shape = Part("{ kind: conversion harness, conversion: 2x12 to 3x8, wiring: [[1, 2:1, none, none, none, none, none, none], [none, none, none, none, none, none, none, none], [none, none, none, none, none, none, none, 2:12]] }").Shape;
        int leg1 = shape.Ports[2].FirstPosition;

        Assert.Equal(["array1", "array2", "leg1", "leg2", "leg3"], shape.Ports.Select(p => p.Name));
        Assert.Equal([0, 12], [shape.Inside[leg1], shape.Inside[leg1 + 1]]);
        Assert.Equal(23, shape.Inside[shape.PositionCount - 1]);
    }

    [Theory]
    [InlineData("single-fibre interface, application: 1000BASE-BX10-U", "interface 1000BASE-BX10-U")]
    [InlineData("duplex interface, application: 10GBASE-SR", "interface 10GBASE-SR")]
    [InlineData("parallel interface, application: 400GBASE-DR4, breakout: 4x", "400GBASE-DR4 split 4x")]
    public void Interfaces_know_what_they_are_for(string kind, string caption)
    {
        Part part = Part($"{{ kind: {kind} }}");

        Assert.Equal(caption, string.Join(' ', part.Caption));
        Assert.NotNull(part.Shape.Ports[0].Application);
    }

    [Fact]
    public void Every_detail_of_a_part_comes_from_its_attributes()
    {
        Part cord = Part("{ kind: A-to-B cord, length: 2 m, fibre: OM3, attenuation: 3.5 dB/km, jacket: aqua, key: R7, reversible: yes, note: a }");

        Assert.Equal(
            ("2 m", "OM3", "3.5 dB/km", "aqua", "R7", true),
            (cord.Length.ToString(), cord.Fibre!.Name, cord.Attenuation.ToString(), cord.Jacket, cord.Key, cord.IsReversible));
    }
}
