using System.Text.Json;
using PolarityMap.Core.Checks;
using Xunit;

namespace PolarityMap.Acceptance.Gallery;

/// <summary>What the check says of the gallery's documents, read from its JSON as another program would.</summary>
public sealed class GalleryFindingsTests
{
    public static TheoryData<string> Codes => [.. RuleCatalogue.All.Select(r => r.Code)];

    public static TheoryData<string> MethodNames => [.. GalleryIndex.Documents.Where(d => d.Folder == GalleryIndex.Methods).Select(d => d.Name)];

    // The rule that a document illustrates is the oracle: its code, and nothing beside it.
    [Theory]
    [MemberData(nameof(Codes))]
    public void The_document_of_a_fault_raises_its_code_and_no_other(string code)
    {
        (int status, string[] codes, _) = Check(GalleryIndex.Faults, code, RuleCatalogue.Find(code)!.Example);
        Assert.Equal([code], codes.Distinct());
        Assert.Equal(RuleCatalogue.Find(code)!.Severity == Severity.Error ? 1 : 0, status);
    }

    [Theory]
    [MemberData(nameof(Codes))]
    public void The_repaired_document_of_a_fault_raises_nothing(string code)
    {
        (int status, string[] codes, _) = Check(GalleryIndex.Faults, $"{code}.repaired", RuleCatalogue.Find(code)!.Repaired);
        Assert.Empty(codes);
        Assert.Equal(0, status);
    }

    // Where a repaired document says what is meant, that is proven, and not only free of findings.
    [Theory]
    [MemberData(nameof(Codes))]
    public void A_repaired_document_proves_every_link_it_declares(string code)
    {
        (_, _, JsonElement repaired) = Check(GalleryIndex.Faults, $"{code}.repaired", RuleCatalogue.Find(code)!.Repaired);
        Assert.All(repaired.GetProperty("links").EnumerateArray(), link => Assert.True(link.GetProperty("proven").GetBoolean()));
    }

    [Theory]
    [MemberData(nameof(MethodNames))]
    public void A_method_is_clean_and_all_its_links_are_proven(string name)
    {
        (int status, string[] codes, JsonElement report) = Check(GalleryIndex.Methods, name);
        Assert.Equal(0, status);
        Assert.Empty(codes);
        JsonElement links = report.GetProperty("links");

        // Six duplex links fill a 12-position trunk; a parallel link of four lanes fills it alone.
        Assert.Equal(name.StartsWith("duplex", StringComparison.Ordinal) ? 6 : 1, links.GetArrayLength());
        Assert.All(links.EnumerateArray(), link => Assert.True(link.GetProperty("proven").GetBoolean()));
    }

    public static TheoryData<string> ArrayNames => [.. GalleryIndex.Documents.Where(d => d.Folder == GalleryIndex.Arrays).Select(d => d.Name)];

    [Theory]
    [MemberData(nameof(ArrayNames))]
    public void A_document_on_arrays_is_clean_and_all_its_links_are_proven(string name)
    {
        (int status, string[] codes, JsonElement report) = Check(GalleryIndex.Arrays, name);
        Assert.Equal(0, status);
        Assert.Empty(codes);
        Assert.NotEqual(0, report.GetProperty("links").GetArrayLength());
        Assert.All(report.GetProperty("links").EnumerateArray(), link => Assert.True(link.GetProperty("proven").GetBoolean()));
    }

    // Methods A, B, C for both, U1 and U2 for duplex only: the five methods of the cabling standards (common practice).
    [Fact]
    public void Every_standard_method_is_in_the_gallery() =>
        Assert.Equal(
            ["duplex-A", "duplex-B", "duplex-C", "duplex-U1", "duplex-U2", "parallel-A", "parallel-B", "parallel-C"],
            GalleryIndex.Documents.Where(d => d.Folder == GalleryIndex.Methods).Select(d => d.Name));

    [Fact]
    public void The_opera_house_as_designed_is_clean_with_64_links_proven()
    {
        (int status, string[] codes, JsonElement report) = Check(GalleryIndex.Demo, "plant");
        Assert.Equal(0, status);
        Assert.Empty(codes);
        Assert.Equal(64, report.GetProperty("links").EnumerateArray().Count(l => l.GetProperty("proven").GetBoolean()));
    }

    // The overlay's comments say which three faults were found: a wrong cord, two legs exchanged, two cords of different
    // networks exchanged. The last is seen from both networks.
    [Fact]
    public void The_opera_house_as_found_raises_a_crossed_pair_a_wrong_leg_and_a_wrong_network()
    {
        (int status, string[] codes, JsonElement report) = Check(GalleryIndex.Demo, "as-built");
        Assert.Equal(1, status);
        Assert.Equal(["D02", "D05", "D06", "D06"], codes);

        // One link with the wrong cord, two legs of four links each, one link of each of two networks.
        Assert.Equal(1 + (2 * 4) + 2, report.GetProperty("links").EnumerateArray().Count(l => !l.GetProperty("proven").GetBoolean()));
    }

    [Fact]
    public void The_report_names_the_line_of_the_overlay_that_made_an_exchange()
    {
        (_, _, JsonElement report) = Check(GalleryIndex.Demo, "as-built");
        string[] overlay = File.ReadAllLines(Path.Combine(Repository.Gallery, GalleryIndex.Demo, "as-built.yaml"));
        string[] Made(string code) =>
        [
            .. report.GetProperty("findings").EnumerateArray().First(f => f.GetProperty("code").GetString() == code)
                .GetProperty("related").EnumerateArray().Where(p => p.GetProperty("file").GetString() == "as-built.yaml")
                .Select(p => overlay[p.GetProperty("line").GetInt32() - 1]),
        ];
        Assert.Contains(Made("D05"), l => l.Contains("SD-Z2/rear and SD-Z3/rear", StringComparison.Ordinal));
        Assert.Contains(Made("D06"), l => l.Contains("ZB9/3 and ZB9/4", StringComparison.Ordinal));
    }

    private static (int Status, string[] Codes, JsonElement Report) Check(string folder, string name, string? text = null)
    {
        string place = Path.Combine(Repository.Gallery, folder);
        DirectoryInfo? temporary = text is null ? null : Directory.CreateTempSubdirectory("fault-");
        try
        {
            if (temporary is not null)
            {
                place = temporary.FullName;
                File.WriteAllText(Path.Combine(place, $"{name}.yaml"), text);
            }

            Outcome outcome = Product.Run(place, "check", $"{name}.yaml", "--format", "json");
            Assert.Equal("", outcome.Error);
            JsonElement report = JsonDocument.Parse(outcome.Out).RootElement;
            return (outcome.Status, [.. report.GetProperty("findings").EnumerateArray().Select(f => f.GetProperty("code").GetString()!)], report);
        }
        finally
        {
            temporary?.Delete(recursive: true);
        }
    }
}
