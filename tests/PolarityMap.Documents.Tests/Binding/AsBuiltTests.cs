using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Documents.Text;
using Xunit;

namespace PolarityMap.Documents.Tests.Binding;

/// <summary>As-built differences, in the design itself or in a document of their own. Matings were written by hand.</summary>
public class AsBuiltTests
{
    private const string Design =
        """
        plant: Designed
        site: House
        revision: A
        parts:
          SW-[1..2]: { kind: duplex interface, ports: 4 }
          K[1..4]: U1 cassette
          T: { kind: Type-B trunk, legs: 2 }
          C: { kind: A-to-B cord, length: 2 m }
          PAN: { kind: array panel, keys: aligned }
          QS: { kind: parallel interface, ports: 2 }
        runs:
          - SW-1/1, C, SW-2/1
          - SW-1/2, A-to-B cord 3 m, SW-2/2
          - K[1..2]/rear, T/1..2, K[3..4]/rear
          - QS/1, Type-B cord 1 m, PAN/1, Type-B cord 1 m, QS/2

        """;

    private const string Designed =
        """
        SW-1/1 = C/near
        C/far = SW-2/1
        SW-1/2 = SW-1/2~SW-2/2/near
        SW-1/2~SW-2/2/far = SW-2/2
        K1/rear = T/near1 opposed
        T/far1 = K3/rear opposed
        K2/rear = T/near2 opposed
        T/far2 = K4/rear opposed
        QS/1 = QS/1~PAN/1/near aligned
        QS/1~PAN/1/far = PAN/1~QS/2/near aligned in PAN/1
        PAN/1~QS/2/far = QS/2 aligned
        """;

    private static Plant Built(string differences)
    {
        Plant same = Reading.Plant(Design + "as-built:\n" + differences);
        (Plant? other, string problems) = Reading.Read(
            "site/built.yaml",
            new MemorySource().Add("site/built.yaml", "design: plant.yaml\nas-built:\n" + differences).Add("site/plant.yaml", Design));
        Assert.Equal("", problems);
        Assert.Equal(Reading.Matings(same), Reading.Matings(other!));
        Assert.Equal(same.Parts.Select(p => (p.Name, p.Kind, p.Length)), other!.Parts.Select(p => (p.Name, p.Kind, p.Length)));
        return same;
    }

    private static void Differ(string differences, params (string Line, string Now)[] changes)
    {
        string expected = Designed;
        foreach ((string line, string now) in changes)
        {
            Assert.Contains(line + "\n", Designed + "\n", StringComparison.Ordinal);
            expected = ("\n" + expected + "\n").Replace("\n" + line + "\n", now.Length == 0 ? "\n" : "\n" + now + "\n", StringComparison.Ordinal).Trim('\n');
        }

        Assert.Equal(expected, Reading.Matings(Built(differences)));
    }

    [Fact]
    public void The_design_is_as_it_says() => Assert.Equal(Designed, Reading.Matings(Design));

    [Fact]
    public void An_attribute_that_differs_leaves_the_others()
    {
        Plant plant = Built("  parts:\n    C: { type: A-to-A }\n    SW-1/2~SW-2/2: { length: 9 m }\n    K[3..4]: { room: Attic }\n");

        Assert.Equal(("A-to-A", "2 m"), (Reading.Part(plant, "C").Caption[1], Reading.Part(plant, "C").Length?.ToString()));
        Assert.Equal(("A-to-B", "9 m"), (Reading.Part(plant, "SW-1/2~SW-2/2").Caption[1], Reading.Part(plant, "SW-1/2~SW-2/2").Length?.ToString()));
        Assert.True(Reading.Part(plant, "SW-1/2~SW-2/2").IsInline);
        Assert.Equal(["Attic", "Attic"], plant.Parts.Where(p => p.Room is not null).Select(p => p.Room));
        Assert.Equal(Designed, Reading.Matings(plant));
    }

    [Fact]
    public void A_part_may_be_of_another_kind_with_the_same_ports()
    {
        Plant plant = Built("  parts:\n    K1: { kind: straight cassette }\n    C: { kind: A-to-A cord }\n");

        Assert.Equal(["cassette", "straight"], Reading.Part(plant, "K1").Caption);
        Assert.Null(Reading.Part(plant, "C").Length);
    }

    [Fact]
    public void An_A_to_A_cord_found_on_site_is_found_by_the_checker() =>
        Assert.Contains("P01", Reading.Codes(Built("  parts:\n    C: { type: A-to-A }\n")), StringComparison.Ordinal);

    [Fact]
    public void The_adapter_of_a_cassette_changes_its_mating() =>
        Differ("  parts:\n    K3: { keys: aligned }\n", ("T/far1 = K3/rear opposed", "T/far1 = K3/rear aligned"));

    [Fact]
    public void The_adapters_of_a_panel_change_the_matings_in_it() =>
        Differ(
            "  parts:\n    PAN: { keys: opposed }\n",
            ("QS/1~PAN/1/far = PAN/1~QS/2/near aligned in PAN/1", "QS/1~PAN/1/far = PAN/1~QS/2/near opposed in PAN/1"));

    [Fact]
    public void Keys_that_come_with_another_type_change_the_mating_as_well()
    {
        string text = Design.Replace("parts:", "types:\n  aligned one: { kind: U1 cassette, keys: aligned }\nparts:", StringComparison.Ordinal);

        Assert.Equal(
            Designed.Replace("K1/rear = T/near1 opposed", "K1/rear = T/near1 aligned", StringComparison.Ordinal),
            Reading.Matings(text + "as-built:\n  parts:\n    K1: { kind: aligned one }\n"));
    }

    [Fact]
    public void A_receptacle_keeps_its_keys_whatever_adapter_is_against_it()
    {
        const string Text = "plant: P\nparts:\n  K: U1 cassette\n  QS: parallel interface\nruns:\n  - K/rear, QS/1\nas-built:\n  parts:\n    K: { keys: opposed }\n";

        Assert.Equal("K/rear = QS/1 aligned", Reading.Matings(Text));
        Assert.Equal("K/rear = QS/1 aligned", Reading.Matings(Text.Replace("K: U1 cassette", "K: { kind: U1 cassette, keys: aligned }", StringComparison.Ordinal)));
    }

    [Fact]
    public void Exchanged_ports_hold_each_others_plugs() =>
        Differ("  exchanged:\n    - SW-2/1 and SW-2/2\n", ("C/far = SW-2/1", "C/far = SW-2/2"), ("SW-1/2~SW-2/2/far = SW-2/2", "SW-1/2~SW-2/2/far = SW-2/1"));

    [Fact]
    public void Ranges_of_ports_are_exchanged_in_step() =>
        Differ(
            "  exchanged:\n    - K[1..2]/rear and K[3..4]/rear\n",
            ("K1/rear = T/near1 opposed", "K3/rear = T/near1 opposed"),
            ("T/far1 = K3/rear opposed", "T/far1 = K1/rear opposed"),
            ("K2/rear = T/near2 opposed", "K4/rear = T/near2 opposed"),
            ("T/far2 = K4/rear opposed", "T/far2 = K2/rear opposed"));

    [Fact]
    public void Plugs_may_be_named_instead_of_ports() =>
        Differ("  exchanged:\n    - T/far1 and T/far2\n", ("T/far1 = K3/rear opposed", "T/far2 = K3/rear opposed"), ("T/far2 = K4/rear opposed", "T/far1 = K4/rear opposed"));

    [Fact]
    public void Plugs_in_a_panel_are_named_by_the_ends_of_their_cords() =>
        Differ(
            "  exchanged:\n    - QS/1~PAN/1/far and T/far2\n",
            ("QS/1~PAN/1/far = PAN/1~QS/2/near aligned in PAN/1", "T/far2 = PAN/1~QS/2/near aligned in PAN/1"),
            ("T/far2 = K4/rear opposed", "QS/1~PAN/1/far = K4/rear opposed"));

    [Fact]
    public void A_port_exchanged_twice_is_exchanged_in_the_order_of_the_list() =>
        Differ(
            "  exchanged:\n    - SW-2/1 and SW-2/2\n    - SW-2/1 and SW-1/1\n",
            ("SW-1/1 = C/near", "SW-2/1 = C/near"),
            ("C/far = SW-2/1", "C/far = SW-2/2"),
            ("SW-1/2~SW-2/2/far = SW-2/2", "SW-1/2~SW-2/2/far = SW-1/1"));

    [Fact]
    public void A_moved_plug_sits_in_the_other_port() =>
        Differ("  moved:\n    - SW-2/1 to SW-2/4\n", ("C/far = SW-2/1", "C/far = SW-2/4"));

    [Fact]
    public void A_port_that_a_plug_has_left_is_free_for_the_next() =>
        Differ(
            "  moved:\n    - SW-2/1 to SW-2/4\n    - SW-2/2 to SW-2/1\n",
            ("C/far = SW-2/1", "C/far = SW-2/4"),
            ("SW-1/2~SW-2/2/far = SW-2/2", "SW-1/2~SW-2/2/far = SW-2/1"));

    [Fact]
    public void An_unplugged_port_is_mated_to_nothing() =>
        Differ("  unplugged:\n    - K1/rear\n    - SW-2/1..2\n", ("K1/rear = T/near1 opposed", ""), ("C/far = SW-2/1", ""), ("SW-1/2~SW-2/2/far = SW-2/2", ""));

    [Fact]
    public void A_plug_pulled_twice_is_told() =>
        Assert.Equal(
            "p:19:7: nothing is mated at C/far, so there is nothing to pull; expected a port that is mated in the design\n",
            Reading.Problems(Design + "as-built:\n  unplugged:\n    - SW-2/1\n    - C/far\n"));

    [Fact]
    public void The_sections_are_applied_in_one_order_whatever_their_order_in_the_text() =>
        Assert.Equal(
            Reading.Matings(Design + "as-built:\n  exchanged:\n    - SW-2/1 and SW-2/2\n  moved:\n    - SW-2/1 to SW-2/4\n"),
            Reading.Matings(Design + "as-built:\n  moved:\n    - SW-2/1 to SW-2/4\n  exchanged:\n    - SW-2/1 and SW-2/2\n"));

    [Fact]
    public void A_difference_is_told_at_its_own_place() =>
        Assert.Equal(
            [new SourcePlace("p", 18, 7), new SourcePlace("p", 18, 7)],
            Reading.Plant(Design + "as-built:\n  exchanged:\n    - SW-2/1 and SW-2/2\n").Matings.Where(m => m.Place.Line > 16).Select(m => m.Place));

    [Fact]
    public void A_document_of_its_own_adds_to_the_title_of_the_design()
    {
        MemorySource source = new MemorySource()
            .Add("built.yaml", "design: sub/plant.yaml\nplant: Built\ndate: 2026-03-20\nas-built: {}\n").Add("sub/plant.yaml", Design);
        (Plant? plant, string problems) = Reading.Read("built.yaml", source);

        Assert.Equal("", problems);
        Assert.Equal(new PlantTitle("Built") { Site = "House", Revision = "A", Date = "2026-03-20" }, plant!.Title);
        Assert.Equal(["built.yaml", "sub/plant.yaml"], source.Asked);
    }

    private static string Refused(string overlay, string path = "folder/built.yaml")
    {
        MemorySource source = new MemorySource().Add(path, overlay).Add("folder/plant.yaml", Design).Add("plant.yaml", Design).Add("folder/other.yaml", "design: plant.yaml\nas-built: {}\n");
        (Plant? plant, string problems) = Reading.Read(path, source);
        Assert.Null(plant);
        Assert.All(source.Asked, asked => Assert.StartsWith("folder/", asked, StringComparison.Ordinal));
        return problems;
    }

    [Theory]
    [InlineData("../plant.yaml")]
    [InlineData("a/../../plant.yaml")]
    [InlineData("..")]
    [InlineData("/plant.yaml")]
    [InlineData("C:/plant.yaml")]
    public void A_design_outside_the_folder_is_refused_unread(string path) =>
        Assert.Equal(
            $"folder/built.yaml:1:9: '{path}' leaves the folder of this document; expected a path inside the folder, or the flag --allow-outside if that is meant\n",
            Refused($"design: {path}\nas-built: {{}}\n"));

    [Theory]
    [InlineData("https://x/plant.yaml")]
    [InlineData("C:plant.yaml")]
    [InlineData("..\\plant.yaml")]
    [InlineData("a\\b.yaml")]
    public void A_design_that_not_every_system_finds_is_refused_unread(string path) =>
        Assert.Equal(
            $"folder/built.yaml:1:9: '{path}' is no path that every system can follow; expected a path with forward slashes, without colons\n",
            Refused($"design: {path}\nas-built: {{}}\n"));

    [Theory]
    [InlineData("../plant.yaml", "folder/../plant.yaml")]
    [InlineData("/srv/plant.yaml", "/srv/plant.yaml")]
    [InlineData("C:/plant.yaml", "C:/plant.yaml")]
    public void A_design_outside_the_folder_is_read_where_the_user_allows_it(string written, string asked)
    {
        MemorySource source = new MemorySource().Add("folder/built.yaml", $"design: {written}\nas-built: {{}}\n").Add(asked, Design);
        var problems = new ProblemList();

        Assert.NotNull(PlantDocument.Read("folder/built.yaml", source, problems, allowOutside: true));
        Assert.Equal("", problems.ToString());
    }

    [Theory]
    [InlineData("", 8)]
    [InlineData(" \"\"", 9)]
    [InlineData(" ~", 9)]
    [InlineData(" [plant.yaml]", 9)]
    [InlineData(" {a: b}", 9)]
    public void A_design_is_a_path(string path, int column) =>
        Assert.Equal(
            $"folder/built.yaml:1:{column}: design names the plant document that was built; expected a path such as 'plant.yaml'\n",
            Refused($"design:{path}\nas-built: {{}}\n"));

    [Fact]
    public void A_design_that_is_not_there_is_told_where_it_is_named() =>
        Assert.Equal("folder/built.yaml:2:9: there is no document 'folder/plan.yaml'\n", Refused("as-built: {}\ndesign: plan.yaml\n"));

    [Fact]
    public void A_design_of_a_design_is_refused() =>
        Assert.Equal(
            "folder/other.yaml:1:9: the design of an as-built document is a plant of its own, not another as-built document\n",
            Refused("design: other.yaml\nas-built: {}\n"));

    [Fact]
    public void A_document_that_is_its_own_design_is_refused() =>
        Assert.Equal(
            "folder/built.yaml:1:9: the design of an as-built document is a plant of its own, not another as-built document\n",
            Refused("design: built.yaml\nas-built: {}\n"));

    [Fact]
    public void A_document_with_a_design_has_differences_and_no_parts() =>
        Assert.Equal(
            "folder/built.yaml:1:1: the document names a design and no differences; expected a section 'as-built:'\n"
            + "folder/built.yaml:2:1: an as-built document has no key 'parts'; expected one of plant, site, revision, date, author, number, design, as-built\n",
            Refused("design: plant.yaml\nparts: {}\n"));

    [Fact]
    public void Problems_of_the_design_are_told_in_the_design()
    {
        MemorySource source = new MemorySource().Add("b", "design: d\nas-built: {}\n").Add("d", "plant: P\nparts:\n  K: U3 cassette\n");

        Assert.StartsWith("d:3:6: there is no kind or type 'U3 cassette'; ", Reading.Read("b", source).Problems, StringComparison.Ordinal);
    }

    [Fact]
    public void Moving_a_plug_into_an_adapter_is_refused_with_advice() =>
        Assert.Equal(
            "p:18:15: 'PAN/2' names an adapter, where two plugs meet; expected the end of a cord or trunk, such as TRUNK/far\n",
            Reading.Problems(Design + "as-built:\n  moved:\n    - QS/1 to PAN/2\n"));

    [Theory]
    [InlineData("none", "A B")] // A-to-B: near A comes out at far B
    [InlineData("far", "A A")]
    [InlineData("near", "A A")]
    [InlineData("both", "A B")]
    public void A_reversible_cord_may_be_found_reversed(string reversed, string ends)
    {
        string design = Design.Replace("C: { kind: A-to-B cord,", "C: { kind: A-to-B cord, reversible: yes,", StringComparison.Ordinal);
        Part cord = Reading.Part(Reading.Plant(design + $"as-built:\n  parts:\n    C: {{ reversed: {reversed} }}\n"), "C");

        Assert.True(cord.IsAsBuilt);
        Assert.True(cord.IsReversible);
        Assert.Equal(ends, "A " + cord.Shape.Ports[1].Face.PositionName(cord.Shape.Inside[0] - 1));
    }

    [Fact]
    public void A_cord_that_cannot_be_reversed_is_not_found_reversed() =>
        Assert.Equal(
            "p:18:20: only a reversible cord can have reversed ends; write reversible: yes\n",
            Reading.Problems(Design + "as-built:\n  parts:\n    C: { reversed: near }\n"));

    [Fact]
    public void Pins_polish_losses_and_fibre_may_be_found_to_differ()
    {
        Plant plant = Built("  parts:\n    K1: { pins: unpinned, polish: angled, array-loss: 0.5 dB, duplex-polish: angled }\n    T: { pins: both, fibre: OM3, far-polish: flat }\n");
        Part cassette = Reading.Part(plant, "K1");
        Part trunk = Reading.Part(plant, "T");

        Assert.Equal((false, Polish.Angled, "0.50 dB"), (cassette.Shape.Ports[6].Pinned, cassette.Shape.Ports[6].Polish, cassette.Shape.Ports[6].StatedLoss.ToString()));
        Assert.Equal(Polish.Angled, cassette.Shape.Ports[0].Polish);
        Assert.All(trunk.Shape.Ports, p => Assert.True(p.Pinned));
        Assert.Equal("OM3", trunk.Fibre?.Name);
        Assert.Equal(Designed, Reading.Matings(plant));
    }

    [Fact]
    public void A_cable_found_with_a_wiring_of_its_own_has_no_type_any_more()
    {
        Plant plant = Built("  parts:\n    T: { wiring: [[1, 1]] }\n");

        Assert.Equal(["trunk", "own wiring"], Reading.Part(plant, "T").Caption);
    }

    [Fact]
    public void A_port_found_with_another_breakout_is_described_in_the_design() =>
        Assert.Equal(
            "p:18:9: QS as built would have other ports than as designed; describe it in the design instead\n",
            Reading.Problems(Design + "as-built:\n  parts:\n    QS: { breakout: 4x }\n"));

    [Fact]
    public void The_defaults_of_the_design_hold_for_what_differs()
    {
        Plant plant = Reading.Plant("defaults: { fibre: OS2, pins: trunks }\n" + Design + "as-built:\n  parts:\n    T: { length: 5 m }\n");

        Assert.Equal("OS2", Reading.Part(plant, "T").Fibre?.Name);
        Assert.All(Reading.Part(plant, "T").Shape.Ports, p => Assert.Equal((true, Polish.Angled), (p.Pinned, p.Polish)));
    }

    [Fact]
    public void What_is_in_the_way_in_the_design_is_named_with_its_file()
    {
        MemorySource source = new MemorySource().Add("built.yaml", "design: plan.yaml\nas-built:\n  moved:\n    - SW-2/1 to SW-2/2\n").Add("plan.yaml", Design);

        Assert.Equal(
            "built.yaml:4:7: SW-2/2 is mated already, at plan.yaml:13; expected a free port, or an entry under exchanged\n",
            Reading.Read("built.yaml", source).Problems);
    }

    [Fact]
    public void Names_that_hold_the_word_between_are_told_apart()
    {
        const string Text = "plant: P\nparts:\n  Q and A: { kind: duplex interface, ports: 2 }\n  A to Z: { kind: duplex interface, ports: 2 }\nruns:\n  - Q and A/1, A to Z/1\nas-built:\n";

        Assert.Equal("Q and A/1 = A to Z/2", Reading.Matings(Text + "  moved: [A to Z/1 to A to Z/2]\n"));
        Assert.StartsWith("p:8:15: Q and A/1 and A to Z/1 are mated to each other", Reading.Problems(Text + "  exchanged: [Q and A/1 and A to Z/1]\n"), StringComparison.Ordinal);
    }
}
