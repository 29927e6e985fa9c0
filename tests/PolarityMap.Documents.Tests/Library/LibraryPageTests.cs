using PlantsInCode;
using Xunit;

namespace PolarityMap.Documents.Tests.Library;

/// <summary>The page on the library shows code that compiles, and what it really prints. This project sees nothing but what is public.</summary>
public class LibraryPageTests
{
    private static readonly string s_page = File.ReadAllText(Path.Combine(Repository.Root, "docs", "library.md"));

    [Fact]
    public void The_code_on_the_page_is_the_code_that_is_compiled_here() =>
        Assert.Equal(File.ReadAllText(Path.Combine(Repository.Root, "tests", "PolarityMap.Documents.Tests", "Library", "LibraryExample.cs")), Block("csharp"));

    [Fact]
    public void What_the_page_says_it_prints_it_prints()
    {
        using var output = new StringWriter { NewLine = "\n" };
        LibraryExample.Run(output);
        Assert.Equal(Block("text"), output.ToString());
    }

    private static string Block(string language)
    {
        string fence = $"```{language}\n";
        int from = s_page.IndexOf(fence, StringComparison.Ordinal) + fence.Length;
        return s_page[from..s_page.IndexOf("```", from, StringComparison.Ordinal)];
    }
}
