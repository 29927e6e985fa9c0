using PolarityMap.Documents.Text;
using Xunit;

namespace PolarityMap.Documents.Tests.Corpus;

/// <summary>
/// One faulty document for each kind of error, with the lines that are to be printed about it beside it. Places were counted
/// by a mark in the text, not by the reader.
/// </summary>
public class ErrorCorpusTests
{
    public static TheoryData<string> Documents =>
        [.. Directory.EnumerateFiles(Repository.Errors, "*.yaml").Select(f => Path.GetFileNameWithoutExtension(f)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Documents))]
    public void A_faulty_document_is_told_what_is_wrong_and_where(string name)
    {
        string file = name + ".yaml";
        MemorySource source = new MemorySource().Add(file, File.ReadAllText(Path.Combine(Repository.Errors, file)));

        Assert.Equal(File.ReadAllText(Path.Combine(Repository.Errors, name + ".expected.txt")), Reading.Read(file, source).Problems);
    }

    [Fact]
    public void Every_document_of_the_corpus_has_its_lines_and_the_reverse()
    {
        string[] documents = [.. Directory.EnumerateFiles(Repository.Errors, "*.yaml").Select(f => Path.GetFileNameWithoutExtension(f)).Order(StringComparer.Ordinal)];
        string[] lines = [.. Directory.EnumerateFiles(Repository.Errors, "*.expected.txt").Select(f => Path.GetFileName(f).Replace(".expected.txt", "", StringComparison.Ordinal)).Order(StringComparer.Ordinal)];

        Assert.Equal(documents, lines);
        Assert.True(documents.Length > 100);
    }

    [Theory]
    [MemberData(nameof(Documents))]
    public void A_message_is_one_short_line(string name)
    {
        var problems = new ProblemList();
        _ = PlantDocument.Read(name, new MemorySource().Add(name, File.ReadAllText(Path.Combine(Repository.Errors, name + ".yaml"))), problems);

        Assert.All(problems.Items, p => Assert.DoesNotContain('\n', p.ToString()));
        Assert.All(problems.Items, p => Assert.InRange(p.ToString().Length, 20, 420));
    }
}
