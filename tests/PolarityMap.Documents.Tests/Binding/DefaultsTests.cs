using PolarityMap.Core.Optics;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using Xunit;

namespace PolarityMap.Documents.Tests.Binding;

/// <summary>What a plant says once, and what its networks may share.</summary>
public class DefaultsTests
{
    private static Plant Read(string defaults, string parts = "parts: {}") => Reading.Plant($"plant: P\n{defaults}\n{parts}\n");

    [Theory]
    [InlineData("")]
    [InlineData("defaults: {}")]
    public void Without_defaults_nothing_is_assumed_but_the_first_set_of_limits_and_the_usual_colours(string defaults)
    {
        PlantPractice practice = Read(defaults).Practice;

        Assert.Equal("ISO/IEC 11801", practice.Limits.Name);
        Assert.Equal("TIA-598", practice.Colours.Name);
        Assert.Null(practice.Margin);
        Assert.Null(practice.GroupIndex);
    }

    [Fact]
    public void Each_default_is_read()
    {
        PlantPractice practice = Read(
            """
            defaults:
              limits: TIA-568.3-E
              colours: DIN VDE 0888
              margin: 0.3 dB
              group-index: 1.48
            """).Practice;

        Assert.Equal(("TIA-568.3-E", "DIN VDE 0888", "0.30 dB", 1.48m), (practice.Limits.Name, practice.Colours.Name, practice.Margin.ToString(), practice.GroupIndex));
    }

    [Theory]
    [InlineData("1.3")]
    [InlineData("1.7")]
    [InlineData("1.4677")]
    public void A_group_index_is_one_that_glass_can_have(string index) =>
        Assert.Equal(decimal.Parse(index, System.Globalization.CultureInfo.InvariantCulture), Read($"defaults: {{ group-index: {index} }}").Practice.GroupIndex);

    [Fact]
    public void Colours_may_be_listed()
    {
        ColourSequence colours = Read("defaults: { colours: [green, red, slate] }").Practice.Colours;

        Assert.Equal(["green", "red", "slate", "green"], Enumerable.Range(1, 4).Select(n => colours[n].Name));
        Assert.Equal("as listed", colours.Name);
    }

    [Fact]
    public void Named_sequences_with_a_comma_stand_in_quotes_or_on_a_line_of_their_own()
    {
        Assert.Equal(16, Read("defaults: { colours: 'TIA-598, 13-16 lime first' }").Practice.Colours.Length);
        Assert.Equal(16, Read("defaults:\n  colours: TIA-598, 13-16 lime first").Practice.Colours.Length);
    }

    [Fact]
    public void The_fibre_is_that_of_every_part_that_says_nothing_else()
    {
        Plant plant = Read("defaults: { fibre: OM4 }", "types: { far: { kind: Type-B trunk, fibre: OS2 } }\nparts:\n  A: Type-B trunk\n  B: far\n  C: { kind: far, fibre: OM3 }\n  SW: { kind: duplex interface, ports: 2 }\nruns:\n  - SW/1, A-to-B cord 1 m, SW/2");

        Assert.Equal(["A OM4", "B OS2", "C OM3", "SW ", "SW/1~SW/2 OM4"], plant.Parts.OrderBy(p => p.Name, StringComparer.Ordinal).Select(p => $"{p.Name} {p.Fibre}"));
    }

    // Both habits are in use: pins in the cassette (four public sources), pins in the trunk (three).
    [Theory]
    [InlineData("", false, true)]
    [InlineData("defaults: { pins: cassettes }", false, true)]
    [InlineData("defaults: { pins: trunks }", true, false)]
    public void Pins_are_on_one_side_of_a_cassette_s_rear(string defaults, bool trunk, bool cassette)
    {
        Plant plant = Read(defaults, "parts:\n  T: Type-B trunk\n  K: U1 cassette\n  C: Type-B cord\n  OWN: { kind: Type-B trunk, pins: near }");

        Assert.Equal([trunk, trunk], Reading.Part(plant, "T").Shape.Ports.Select(p => p.Pinned == true));
        Assert.Equal(cassette, Reading.Part(plant, "K").Shape.Ports[^1].Pinned);
        Assert.Equal([false, false], Reading.Part(plant, "C").Shape.Ports.Select(p => p.Pinned == true));
        Assert.Equal([true, false], Reading.Part(plant, "OWN").Shape.Ports.Select(p => p.Pinned == true));
    }

    [Theory]
    [InlineData("OM4", Polish.Flat)]
    [InlineData("OS2", Polish.Angled)]
    public void The_end_face_follows_the_fibre_where_nothing_is_said(string fibre, Polish polish) =>
        Assert.Equal(polish, Read($"defaults: {{ fibre: {fibre} }}", "parts:\n  T: Type-B trunk").Parts[0].Shape.Ports[0].Polish);

    [Fact]
    public void Defaults_hold_wherever_they_stand_in_the_document() =>
        Assert.Equal("OM4", Reading.Plant("parts:\n  T: Type-B trunk\ndefaults: { fibre: OM4 }\nplant: P\n").Parts[0].Fibre?.Name);

    [Fact]
    public void A_network_has_a_colour_a_key_and_what_it_may_share()
    {
        Plant plant = Read(
            """
            networks:
              lighting: { colour: red, key: R1, plain-fits: yes, may-share: [panel, sheath, panel] }
              sound: { may-share: none, plain-fits: no }
              office: { may-share: [] }
              spare:
            """);

        Assert.Equal(
            ["lighting red R1 True Panel,Sheath", "sound   False nothing", "office   False nothing", "spare   False unsaid"],
            plant.Networks.Select(n => $"{n.Name} {n.Colour} {n.Key} {n.PlainFits} {(n.MayShare is null ? "unsaid" : n.MayShare.Count == 0 ? "nothing" : string.Join(',', n.MayShare))}"));
    }
}
