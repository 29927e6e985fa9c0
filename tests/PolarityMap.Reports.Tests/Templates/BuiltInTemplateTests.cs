using System.Text.RegularExpressions;
using PolarityMap.Reports.Templates;
using Xunit;

namespace PolarityMap.Reports.Tests.Templates;

/// <summary>Escaped text is text only between tags and inside double quotes; the templates put it nowhere else.</summary>
public sealed partial class BuiltInTemplateTests
{
    public static TheoryData<string> Pages { get; } = [.. TemplateFolder.BuiltIn.Where(n => n.EndsWith(".html", StringComparison.Ordinal))];

    [Theory]
    [MemberData(nameof(Pages))]
    public void Values_stand_between_tags_or_inside_double_quotes(string name)
    {
        string text = TemplateFolder.TextOfBuiltIn(name);

        // Without the values in quotes no tag may hold a value, and no comment, script or style but those of the program's own.
        string bare = QuotedAttribute().Replace(text, "");
        Assert.DoesNotMatch(ValueInTag(), bare);
        Assert.DoesNotContain("<!--", text, StringComparison.Ordinal);
        Assert.DoesNotMatch(UnquotedValue(), text);
    }

    [Fact]
    public void Script_and_style_hold_the_programs_own_text_only()
    {
        foreach (string name in TemplateFolder.BuiltIn.Where(n => n.EndsWith(".html", StringComparison.Ordinal)))
        {
            foreach (Match match in Raw().Matches(TemplateFolder.TextOfBuiltIn(name)))
                Assert.Contains(match.Groups["inside"].Value, (string[])["{{ page.style }}", "{{ page.script }}"]);
        }
    }

    [Fact]
    public void No_attribute_runs_script_or_styles()
    {
        foreach (string name in TemplateFolder.BuiltIn.Where(n => n.EndsWith(".html", StringComparison.Ordinal)))
            Assert.DoesNotMatch(EventOrStyle(), TemplateFolder.TextOfBuiltIn(name));
    }

    [GeneratedRegex("=\"[^\"]*\"")]
    private static partial Regex QuotedAttribute();

    [GeneratedRegex(@"<[a-z][^>]*\{\{[^>]*>(?<!end \}\}>)")]
    private static partial Regex ValueInTag();

    [GeneratedRegex(@"=\s*'?\{\{")]
    private static partial Regex UnquotedValue();

    [GeneratedRegex(@"<(?:script|style)[^>]*>(?<inside>.*?)</(?:script|style)>", RegexOptions.Singleline)]
    private static partial Regex Raw();

    [GeneratedRegex(@"\s(?:on[a-z]+|style)=", RegexOptions.IgnoreCase)]
    private static partial Regex EventOrStyle();
}
