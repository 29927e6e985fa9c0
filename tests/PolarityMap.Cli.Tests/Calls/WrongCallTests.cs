using Xunit;

namespace PolarityMap.Cli.Tests.Calls;

/// <summary>Calls that cannot be carried out: status 2, one line of reason, what was expected, never a stack trace.</summary>
public sealed class WrongCallTests
{
    public static TheoryData<string> Calls =>
    [
        "",
        "chekc",
        "chekc plant.yaml",
        "frobnicate",
        "CHECK plant.yaml",
        "--frob",
        "check",
        "check --frob",
        "check --formt json",
        "check plant.yaml --formt json",
        "check plant.yaml --format",
        "check plant.yaml --format xml",
        "check plant.yaml plant.yaml",
        "check missing.yaml",
        "check missing.yaml --format json",
        "check no/such/folder/plant.yaml",
        "check .",
        "check folder",
        "check plant.yaml/inside",
        "check broken.yaml",
        "check broken.yaml --format json",
        "check empty.yaml",
        "check list.yaml",
        "check binary.yaml",
        "check syntax.yaml",
        "check orphan.yaml",
        "trace",
        "trace plant.yaml",
        "trace plant.yaml NOBODY",
        "trace plant.yaml SW-L/99",
        "trace plant.yaml SW-L/1:Z",
        "trace plant.yaml SW-L/",
        "trace plant.yaml /",
        "trace plant.yaml :",
        "trace plant.yaml SW-L/1:",
        "trace plant.yaml K-L/rear:0",
        "trace plant.yaml K-L/rear:-1",
        "trace plant.yaml K-L/rear:99999999999999999999",
        "trace broken.yaml SW-L/1",
        "draw",
        "draw missing.yaml",
        "draw broken.yaml -o out.svg",
        "draw plant.yaml -o",
        "draw plant.yaml -o plant.yaml/out.svg",
        "draw plant.yaml -o plant.yaml/deeper/out.svg",
        "draw plant.yaml --network none",
        "draw plant.yaml --part none",
        "draw dark.yaml",
        "explain Z99",
        "explain P01 P02",
        "explain P01 --format yaml",
        "schema now",
        "schema -o plant.yaml/schema.json",
        "new plant.yaml",
        "new folder",
        "new plant.yaml/inside.yaml",
        "new one two",
    ];

    [Theory]
    [MemberData(nameof(Calls))]
    public void It_has_status_2_a_reason_and_no_trace_of_the_program_s_inside(string call)
    {
        using Workbench bench = Bench();
        IReadOnlyList<string> before = bench.Files();
        Outcome outcome = bench.Run(call.Split(' ', StringSplitOptions.RemoveEmptyEntries));
        Assert.Equal(2, outcome.Status);
        string said = outcome.Out + outcome.Error;
        Assert.NotEqual("", said.Trim());
        Assert.DoesNotContain("   at ", said, StringComparison.Ordinal);
        Assert.DoesNotContain("Exception", said, StringComparison.Ordinal);
        Assert.DoesNotContain("defect", said, StringComparison.Ordinal);
        Assert.DoesNotContain("Unhandled", said, StringComparison.Ordinal);
        if (call.EndsWith("json", StringComparison.Ordinal) && call.Contains("--format json", StringComparison.Ordinal))
            Assert.Equal("", outcome.Error);
        else
            Assert.Equal("", outcome.Out);
        Assert.Equal(before, bench.Files());
    }

    [Theory]
    [InlineData("chekc plant.yaml", "there is no command 'chekc'; did you mean 'check'?")]
    [InlineData("exlpain", "there is no command 'exlpain'; did you mean 'explain'?")]
    [InlineData("check plant.yaml --formt json", "there is no option '--formt'; did you mean '--format'?")]
    [InlineData("check --formt json", "there is no option '--formt'; did you mean '--format'?")]
    [InlineData("check --evry plant.yaml", "there is no option '--evry'; did you mean '--every'?")]
    [InlineData("draw plant.yaml --outpt x.svg", "there is no option '--outpt'; did you mean '--output'?")]
    [InlineData("draw plant.yaml --netwrok x", "there is no option '--netwrok'; did you mean '--network'?")]
    [InlineData("", "name a command: check, trace, budget, locate, remedy, plan, draw, report, separation, export, import, explain, data, catalogue, schema, new")]
    [InlineData("check plant.yaml --format xml", "'xml' not recognized. Must be one of: 'text' 'json'")]
    public void A_slip_is_told_the_nearest_word(string call, string expected)
    {
        using Workbench bench = Bench();
        Outcome outcome = bench.Run(call.Split(' ', StringSplitOptions.RemoveEmptyEntries));
        Assert.Equal(2, outcome.Status);
        Assert.Contains(expected, outcome.ErrorLines[0], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("check --frob", "polaritymap check --help")]
    [InlineData("chekc", "polaritymap --help")]
    [InlineData("trace plant.yaml", "polaritymap trace --help")]
    public void The_last_line_says_where_the_help_is(string call, string help)
    {
        using Workbench bench = Bench();
        Assert.EndsWith($"see '{help}'", bench.Run(call.Split(' ')).ErrorLines[^1], StringComparison.Ordinal);
    }

    // What stands after two hyphens is a word and no option.
    [Fact]
    public void A_document_may_be_named_like_an_option_after_two_hyphens()
    {
        using var bench = new Workbench().With("--odd.yaml", Samples.Clean);
        Assert.Equal(0, bench.Run("check", "--", "--odd.yaml").Status);
    }

    private static Workbench Bench()
    {
        Workbench bench = new Workbench().With("plant.yaml", Samples.Clean).With("broken.yaml", Samples.Broken).With("dark.yaml", Samples.EmptyOfLight)
            .With("empty.yaml", "").With("list.yaml", "- one\n- two\n").With("syntax.yaml", "parts: {\n  a: [b\n").With("orphan.yaml", "design: nowhere.yaml\nas-built: {}\n");
        File.WriteAllBytes(bench.Path("binary.yaml"), [0xFF, 0xFE, 0x00, 0x01, 0x80, 0xC3, 0x28]);
        Directory.CreateDirectory(bench.Path("folder"));
        return bench;
    }
}
