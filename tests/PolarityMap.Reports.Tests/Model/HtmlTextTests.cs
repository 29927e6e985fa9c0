using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;
using PolarityMap.Reports.Model;
using Xunit;

namespace PolarityMap.Reports.Tests.Model;

/// <summary>Text stays text, read back by an HTML parser of another house.</summary>
public sealed class HtmlTextTests
{
    [Theory]
    [InlineData("SW-L/1:A")]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("a & b &amp; c &lt;d&gt; &#65;")]
    [InlineData("\" onmouseover=\"x()\" '")]
    [InlineData("' onmouseover='x()' `")]
    [InlineData("</p><p id=x>--> ]]> <!--")]
    [InlineData("{{ plant.title }}")]
    [InlineData("µ λ → ≥ 1.5 dB · ø")]
    [InlineData("😀 of another plane")]
    public void Text_between_tags_and_in_an_attribute_is_read_back_as_it_was(string text)
    {
        IHtmlDocument page = new HtmlParser().ParseDocument($"<p title=\"{HtmlText.Of(text)}\">{HtmlText.Of(text)}</p>");

        IElement paragraph = Assert.Single(page.Body!.QuerySelectorAll("*"));
        Assert.Equal(text, paragraph.TextContent);
        Assert.Equal(text, paragraph.GetAttribute("title"));
        Assert.Single(paragraph.Attributes);
    }

    [Theory]
    [InlineData("שלום", "\u2068שלום\u2069")]
    [InlineData("PORT-שלום/12:3", "PORT-\u2068שלום\u2069/12:3")]
    [InlineData("שלום עולם/1 to مرحبا/2", "\u2068שלום עולם\u2069/1 to \u2068مرحبا\u2069/2")]
    [InlineData("ש<b>", "\u2068ש\u2069&lt;b&gt;")]
    public void Letters_from_right_to_left_are_kept_to_themselves(string text, string html) => Assert.Equal(html, HtmlText.Of(text));

    [Theory]
    [InlineData("SW\u202E1-L")]
    [InlineData("SW\u20671-L\u2069")]
    [InlineData("SW\u200F1-L")]
    [InlineData("SW\u061C1-L")]
    public void Characters_that_turn_the_direction_are_dropped(string text) => Assert.Equal("SW1-L", HtmlText.Of(text));

    [Fact]
    public void Characters_that_no_page_may_hold_are_replaced()
    {
        Assert.Equal("a\uFFFDb\uFFFDc d", HtmlText.Of("a\0b\u001Bc\nd"));
        Assert.Equal("\uFFFD", HtmlText.Of("\uD800"));
    }
}
