using PolarityMap.Acceptance;
using PolarityMap.Reports.Model;
using PolarityMap.Reports.Pages;
using PolarityMap.Reports.Templates;
using Scriban.Runtime;
using Xunit;

namespace PolarityMap.Reports.Tests.Model;

/// <summary>What a template sees is told in the documentation, name by name.</summary>
public sealed class DocumentedNamesTests
{
    private static readonly string s_documentation = File.ReadAllText(Path.Combine(Repository.Root, "docs", "templates.md"));

    [Fact]
    public void Every_name_of_the_page_is_told() => AssertTold(ReportPage.ModelOf(WithAll(), new TemplateFolder()), 80);

    [Theory]
    [InlineData("lamp,LX-SW/7,off,,\nlamp,LX-SW/8,on,,\n")]
    [InlineData("lamp,LX-SW/7,off,,\nlamp,LX-SW/7,on,,\n")]
    public void Every_name_of_what_was_seen_is_told(string seen) =>
        AssertTold(ReportPage.ModelOf(Plants.Seen(Plants.FromGallery("opera-house/plant.yaml"), seen), new TemplateFolder()), 100);

    [Fact]
    public void Every_name_of_a_paper_is_told()
    {
        ReportInput input = WithAll();
        AssertTold(PaperPage.ModelOf(input, input.Schedules.Single(s => s.Name == "terminations"), new TemplateFolder()), 30);
    }

    [Fact]
    public void Every_template_is_told()
    {
        string readme = File.ReadAllText(Path.Combine(Repository.Root, "templates", "README.md"));
        Assert.All(TemplateFolder.BuiltIn.Where(n => !n.StartsWith("diagram", StringComparison.Ordinal)), n =>
        {
            Assert.Contains($"`{n}`", s_documentation, StringComparison.Ordinal);
            Assert.Contains($"`{n}`", readme, StringComparison.Ordinal);
        });
    }

    private static ReportInput WithAll() =>
        Plants.FromGallery("opera-house/as-built.yaml") with { Files = [new FileGroup("Papers", [new ReportFile("papers/a.html", "A", "for all")])] };

    private static void AssertTold(ModelObject model, int least)
    {
        var names = new SortedSet<string>(StringComparer.Ordinal);
        Collect(model, names);
        Assert.True(names.Count >= least, $"only {names.Count} names were seen");
        Assert.Equal([], names.Where(n => !s_documentation.Contains($"`{n}`", StringComparison.Ordinal) && !s_documentation.Contains($".{n}`", StringComparison.Ordinal) && !s_documentation.Contains($"`{n}.", StringComparison.Ordinal)));
    }

    private static void Collect(object? value, SortedSet<string> names)
    {
        switch (value)
        {
            case ModelObject inner:
                foreach (string key in inner.Keys)
                {
                    names.Add(key);
                    Collect(inner[key], names);
                }

                break;
            case ScriptArray list:
                foreach (object? item in list)
                    Collect(item, names);
                break;
        }
    }
}
