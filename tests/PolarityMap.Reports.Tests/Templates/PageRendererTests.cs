using PolarityMap.Reports.Model;
using PolarityMap.Reports.Templates;
using Xunit;

namespace PolarityMap.Reports.Tests.Templates;

public sealed class PageRendererTests
{
    [Fact]
    public void Every_text_of_a_model_is_escaped_whatever_the_template_does()
    {
        ModelObject model = new ModelObject().Text("t", "<b>").Texts("list", ["<i>", "&"])
            .Inner("o", new ModelObject().Text("t", "\"")).List("items", [new ModelObject().Text("t", "'")]);

        Assert.Equal("&lt;b&gt; &lt;i&gt;&amp; &quot; &#39;", Render("{{ t }} {{ for l in list }}{{ l }}{{ end }} {{ o.t }} {{ items[0].t }}", model));
    }

    [Theory]
    [InlineData("one\n  {{ plnt }}", "page.html:2:6: ", "plnt")]
    [InlineData("{{ plant.titel }}", "page.html:1:", "there is no 'titel' here; expected one of title")]
    [InlineData("a\nb\n{{ for x in }}\n{{ end }}", "page.html:3:", "expression")]
    [InlineData("{{ if plant.title }}\nno end", "page.html:1:", "end")]
    [InlineData("\n\n{{ include 'nowhere.html' }}", "page.html:3:", "there is no template 'nowhere.html'; expected one of")]
    [InlineData("{{ include '../secret.html' }}", "page.html:1:", "is no name of a template")]
    [InlineData("{{ include '/etc/passwd' }}", "page.html:1:", "is no name of a template")]
    [InlineData("{{ include 'page.html' }}", "page.html:1:", "")]
    [InlineData("{{ while true }}x{{ end }}", "page.html:1:", "")]
    [InlineData("{{ for i in 1..2000000000 }}x{{ end }}", "page.html:1:", "")]
    [InlineData("{{ func f; f; end; f }}", "page.html:1:", "")]
    public void A_wrong_template_is_told_with_file_line_and_column(string text, string place, string why)
    {
        var wrong = Assert.Throws<TemplateException>(() => Render(text, Model()));

        Assert.Contains(place, wrong.Message, StringComparison.Ordinal);
        Assert.Contains(why, wrong.Message, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain('\n', wrong.Message);
    }

    [Fact]
    public void An_error_in_an_included_template_names_that_one()
    {
        var folder = new TemplateFolder(n => n switch { "page.html" => "\n{{ include 'own.html' }}", "own.html" => "\n\n {{ plant.nothing }}", _ => null }, "mine/");

        var wrong = Assert.Throws<TemplateException>(() => new PageRenderer(folder).Render("page.html", Model()));

        Assert.StartsWith("mine/own.html:3:", wrong.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_template_of_the_folder_stands_in_for_the_one_inside_and_the_others_stay()
    {
        var folder = new TemplateFolder(n => n == "cautions.html" ? "<p>ours</p>" : null, "mine");

        Assert.Equal("<p>ours</p>", folder.Text("cautions.html"));
        Assert.Equal(TemplateFolder.TextOfBuiltIn("reading.html"), folder.Text("reading.html"));
        Assert.Equal(["cautions.html"], folder.OwnUsed);
    }

    [Fact]
    public void A_template_cannot_change_what_the_next_page_sees()
    {
        ModelObject model = Model();

        Assert.Equal("changed", Render("{{ plant = 'changed' }}{{ plant }}", model));
        Assert.Equal("Title", Render("{{ plant.title }}", model));
    }

    private static ModelObject Model() => new ModelObject().Inner("plant", new ModelObject().Text("title", "Title"));

    private static string Render(string text, ModelObject model) =>
        new PageRenderer(new TemplateFolder(n => n == "page.html" ? text : null, "")).Render("page.html", model);
}
