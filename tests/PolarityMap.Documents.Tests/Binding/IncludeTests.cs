using System.Text;
using PolarityMap.Core.Plants;
using PolarityMap.Documents.Text;
using Xunit;

namespace PolarityMap.Documents.Tests.Binding;

/// <summary>Types that come from catalogue files. Places were counted in the text.</summary>
public class IncludeTests
{
    private const string Cords = "catalogue: Cords of the house\ntypes:\n  red cord: { kind: A-to-B cord, length: 3 m }\n";

    private static (Plant? Plant, string Problems) Read(string include, params (string Path, string Text)[] files)
    {
        MemorySource source = new MemorySource().Add("site/plant.yaml", $"plant: P\ninclude: {include}\nparts:\n  X: red cord\n");
        foreach ((string path, string text) in files)
            source.Add(path, text);
        return Reading.Read("site/plant.yaml", source);
    }

    [Theory]
    [InlineData("cords.yaml", "site/cords.yaml")]
    [InlineData("[cords.yaml]", "site/cords.yaml")]
    [InlineData("parts/cords.yaml", "site/parts/cords.yaml")]
    [InlineData("./cords.yaml", "site/./cords.yaml")]
    [InlineData("..cords.yaml", "site/..cords.yaml")]
    public void A_type_of_a_catalogue_file_is_used_like_the_document_s_own(string include, string path)
    {
        (Plant? plant, string problems) = Read(include, (path, Cords));

        Assert.Equal("", problems);
        Assert.Equal(("duplex cord", "3 m"), (plant!.Parts[0].Kind, plant.Parts[0].Length.ToString()));
        Assert.Equal(new SourcePlace("site/plant.yaml", 4, 3), plant.Parts[0].Place);
    }

    [Fact]
    public void Types_build_on_those_of_files_before_and_the_document_on_all_of_them()
    {
        MemorySource source = new MemorySource()
            .Add("p", "plant: P\nnetworks: { light: ~ }\ndefaults: { fibre: OM5 }\ninclude: [a, b]\ntypes:\n  own: { kind: second, length: 9 m }\nparts:\n  X: own\n  Y: second\n")
            .Add("a", "catalogue: A\ntypes:\n  first: { kind: Type-B trunk, legs: 2, network: light }\n")
            .Add("b", "catalogue: B\ntypes:\n  second: { kind: first, room: R }\n");
        (Plant? plant, string problems) = Reading.Read("p", source);

        Assert.Equal("", problems);
        Assert.Equal(["9 m R 4 0 OM5", " R 4 0 OM5"], plant!.Parts.Select(p => $"{p.Length} {p.Room} {p.Shape.Ports.Count} {p.Network} {p.Fibre}"));
    }

    [Fact]
    public void The_design_of_an_as_built_document_includes_from_its_own_folder()
    {
        MemorySource source = new MemorySource()
            .Add("built.yaml", "design: plan/plant.yaml\nas-built:\n  parts:\n    X: { kind: blue cord }\n")
            .Add("plan/plant.yaml", "plant: P\ninclude: c/cords.yaml\nparts:\n  X: red cord\n")
            .Add("plan/c/cords.yaml", Cords + "  blue cord: A-to-A cord\n");
        (Plant? plant, string problems) = Reading.Read("built.yaml", source);

        Assert.Equal("", problems);
        Assert.Equal("A-to-A", plant!.Parts[0].Caption[1]);
        Assert.Equal(["built.yaml", "plan/plant.yaml", "plan/c/cords.yaml"], source.Asked);
    }

    [Theory]
    [InlineData("[a.yaml, b.yaml]", "site/b.yaml:3:3: there is a type 'red cord' already, at site/a.yaml:3; expected a name of its own for each type\n")]
    [InlineData("[b.yaml, a.yaml]", "site/a.yaml:3:3: there is a type 'red cord' already, at site/b.yaml:3; expected a name of its own for each type\n")]
    public void A_type_of_two_files_is_told_with_both_places(string include, string problem) =>
        Assert.Equal(problem, Read(include, ("site/a.yaml", Cords), ("site/b.yaml", Cords)).Problems);

    [Fact]
    public void A_type_of_a_file_and_of_the_document_is_told_with_both_places()
    {
        MemorySource source = new MemorySource().Add("p", "plant: P\ninclude: c\ntypes:\n  red cord: A-to-A cord\nparts: {}\n").Add("c", Cords);

        Assert.Equal("p:4:3: there is a type 'red cord' already, at c:3; expected a name of its own for each type\n", Reading.Read("p", source).Problems);
    }

    [Fact]
    public void A_file_may_be_named_once() =>
        Assert.Equal(
            "site/plant.yaml:2:23: this file is included already, at line 2; expected each catalogue file once\n",
            Read("[cords.yaml, ./cords.yaml]", ("site/cords.yaml", Cords)).Problems);

    [Theory]
    [InlineData("types: {}\n", "site/cords.yaml:1:1: this is no catalogue file; expected a document with 'catalogue:' and a title at its start\n")]
    [InlineData("plant: Q\nparts: {}\n", "site/cords.yaml:1:1: this is a plant document, and only catalogue files are included; expected a document with 'catalogue:' and a title at its start\n")]
    [InlineData("catalogue: C\ninclude: more.yaml\ntypes: {}\n", "site/cords.yaml:2:1: a catalogue file has no key 'include'; expected one of catalogue, types\n")]
    [InlineData("catalogue: C\nparts: {}\n", "site/cords.yaml:2:1: a catalogue file has no key 'parts'; expected one of catalogue, types\n")]
    [InlineData("catalogue:\ntypes: {}\n", "site/cords.yaml:1:11: catalogue is empty; expected a title\n")]
    [InlineData("- a\n", "site/cords.yaml:1:1: a catalogue file is no list or text; expected 'catalogue:' with a title, and 'types:'\n")]
    [InlineData("catalogue: C\ntypes:\n  a cord: { kind: A-to-B cord, length: 3 }\n", "site/cords.yaml:3:40: '3' is no length: a length needs its unit: write '3 m'\n")]
    [InlineData("catalogue: C\ntypes:\n  a cord: { kind: A-to-B cord, network: light }\n", "site/cords.yaml:3:41: there is no network 'light'; expected a section 'networks:' that names it\n")]
    public void What_is_wrong_in_a_catalogue_file_is_told_there(string text, string problem)
    {
        MemorySource source = new MemorySource().Add("site/plant.yaml", "plant: P\ninclude: cords.yaml\nparts: {}\n").Add("site/cords.yaml", text);

        Assert.Equal(problem, Reading.Read("site/plant.yaml", source).Problems);
    }

    [Theory]
    [InlineData("../cords.yaml")]
    [InlineData("/cords.yaml")]
    public void A_file_outside_is_read_only_where_the_user_allows_it(string include)
    {
        MemorySource source = new MemorySource().Add("site/plant.yaml", $"plant: P\ninclude: {include}\nparts: {{}}\n").Add("site/../cords.yaml", Cords).Add("/cords.yaml", Cords);
        Assert.Contains("or the flag --allow-outside", Reading.Read("site/plant.yaml", source).Problems, StringComparison.Ordinal);
        Assert.Equal(["site/plant.yaml"], source.Asked);
        var problems = new ProblemList();

        Assert.NotNull(PlantDocument.Read("site/plant.yaml", source, problems, allowOutside: true));
        Assert.True(problems.IsEmpty);
    }

    [Theory]
    [InlineData("a\\b.yaml")]
    [InlineData("C:b.yaml")]
    [InlineData("https://x/y.yaml")]
    public void Not_even_then_is_a_path_read_that_not_every_system_finds(string include)
    {
        MemorySource source = new MemorySource().Add("p", $"plant: P\ninclude: {include}\nparts: {{}}\n");
        var problems = new ProblemList();

        Assert.Null(PlantDocument.Read("p", source, problems, allowOutside: true));
        Assert.Equal(["p"], source.Asked);
        Assert.Contains("is no path that every system can follow", problems.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Fifty_files_are_included_and_no_more()
    {
        static MemorySource Source(int count)
        {
            MemorySource source = new MemorySource().Add("p", $"plant: P\ninclude: [{string.Join(", ", Enumerable.Range(1, count).Select(n => $"c{n}"))}]\nparts: {{}}\n");
            for (int n = 1; n <= count; n++)
                source.Add($"c{n}", $"catalogue: C\ntypes: {{ t{n}: U1 cassette }}\n");
            return source;
        }

        Assert.Equal("", Reading.Read("p", Source(50)).Problems);
        MemorySource beyond = Source(51);
        Assert.Equal("p:2:252: a document includes at most 50 catalogue files\n", Reading.Read("p", beyond).Problems);
        Assert.Equal(["p"], beyond.Asked);
    }

    [Fact]
    public void The_files_have_a_size_together()
    {
        // Each is read alone, and two together are beyond 16 MiB.
        byte[] large = Encoding.UTF8.GetBytes("catalogue: C\n" + string.Concat(Enumerable.Repeat("#" + new string(' ', 1022) + "\n", 9 * 1024)));
        MemorySource source = new MemorySource().Add("p", "plant: P\ninclude: [a, b, c]\nparts: {}\n").Add("a", large).Add("b", large).Add("c", Cords);

        Assert.Equal("p:2:14: the catalogue files up to here have more than 16777216 bytes together; expected fewer or smaller ones\n", Reading.Read("p", source).Problems);
        Assert.Equal(["p", "a", "b"], source.Asked);
    }

    [Fact]
    public void A_catalogue_file_is_no_plant()
    {
        (Plant? plant, string problems) = Reading.Read("c", new MemorySource().Add("c", Cords));

        Assert.Null(plant);
        Assert.Equal("c:1:12: this is a catalogue file, not a plant; expected a plant document that names it under 'include:'\n", problems);
    }

    [Fact]
    public void Inside_a_folder_is_asked_of_the_source()
    {
        var source = new Linked();

        Assert.Contains("leads out", Reading.Read("site/plant.yaml", source).Problems, StringComparison.Ordinal);
        Assert.Equal(["site/plant.yaml", "site/ + site/parts/cords.yaml"], source.Asked);
    }

    /// <summary>A source with a link in it, which only it can know of.</summary>
    private sealed class Linked : IDocumentSource
    {
        public List<string> Asked { get; } = [];

        public bool TryRead(string path, int maxBytes, out byte[] bytes, out string why)
        {
            Asked.Add(path);
            (bytes, why) = (Encoding.UTF8.GetBytes("plant: P\ninclude: parts/cords.yaml\nparts: {}\n"), "");
            return true;
        }

        public bool TryReadInside(string folder, string path, int maxBytes, out byte[] bytes, out string why)
        {
            Asked.Add($"{folder} + {path}");
            (bytes, why) = ([], $"'{path}' leads out");
            return false;
        }
    }
}
