using CsCheck;
using PolarityMap.Core.Checks;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using PolarityMap.Documents.Text;
using Xunit;

namespace PolarityMap.Documents.Tests.Hostile;

/// <summary>Documents of the gallery with words and lines deleted, doubled or replaced: read or refused, and no third way.</summary>
public class MutationTests
{
    private static readonly string[] Texts =
        [.. Repository.Examples().Where(p => !p.EndsWith("as-built.yaml", StringComparison.Ordinal)).Select(p => File.ReadAllText(Path.Combine(Repository.Root, p)))];

    /// <summary>Words that stand where others do, besides those of the documents themselves.</summary>
    private static readonly string[] Words =
    [
        "opposed", "aligned", "near", "far", "near1", "far3", "rear", ":A", ":B", ":7", "[1..9]", "1..99", "[", "]", "{", "}", ",", ":", "- ", "#", "~", "\"", "'",
        "as-built:", "exchanged:", "moved:", "unplugged:", "plugged:", "design: x", "networks:", "types:", "defaults:", "include: x", "catalogue: C", "fibre: OM4", "0.35 dB", "3 dB/km", "may-share: none", "none", "conversion module", "cable", "breakout: 4x", " to ", "simplex cord", "outlet", "array panel", "harness", "0", "-1", "2 m", "62", "\n", "  ", "\t", "&a", "*a",
    ];

    private static string[] Cut(string text)
    {
        // A word is letters and digits, or one other character: a text is the sum of its words.
        var words = new List<string>();
        for (int at = 0; at < text.Length;)
        {
            int end = at + 1;
            while (char.IsLetterOrDigit(text[at]) && end < text.Length && char.IsLetterOrDigit(text[end]))
                end++;
            words.Add(text[at..end]);
            at = end;
        }

        return [.. words];
    }

    private static string Mutate(string text, (int Kind, uint Where, uint What)[] edits)
    {
        foreach ((int kind, uint where, uint what) in edits)
        {
            bool lines = kind >= 4;
            List<string> pieces = lines ? [.. text.Split('\n').Select(l => l + "\n")] : [.. Cut(text)];
            int at = (int)(where % (uint)pieces.Count);
            int other = (int)(what % (uint)pieces.Count);
            switch (kind % 4)
            {
                case 0:
                    pieces.RemoveAt(at);
                    break;
                case 1:
                    pieces.Insert(at, pieces[at]);
                    break;
                case 2:
                    (pieces[at], pieces[other]) = (pieces[other], pieces[at]);
                    break;
                default:
                    pieces[at] = lines ? pieces[other] : Words[what % (uint)Words.Length];
                    break;
            }

            text = string.Concat(pieces);
            if (text.Length == 0)
                return text;
        }

        return text;
    }

    internal static Gen<string> Documents { get; } = Gen.Select(
        Gen.Int[0, Texts.Length - 1],
        Gen.Select(Gen.Int[0, 7], Gen.UInt, Gen.UInt).Array[1, 5],
        (text, edits) => Mutate(Texts[text], edits));

    [Fact]
    public void A_mutated_document_gives_a_plant_or_a_problem_with_its_place() => Documents.Sample(CheckRead, iter: 1_200);

    [Fact]
    public void A_mutated_design_and_its_differences_give_a_plant_or_a_problem_with_its_place()
    {
        string folder = Path.Combine(Repository.Root, "gallery", "opera-house");
        string design = File.ReadAllText(Path.Combine(folder, "plant.yaml"));
        string built = File.ReadAllText(Path.Combine(folder, "as-built.yaml"));
        Gen.Select(Gen.Int[0, 7], Gen.UInt, Gen.UInt).Array[1, 3].Sample(
            edits => Check("as-built.yaml", new() { ["as-built.yaml"] = Mutate(built, edits), ["plant.yaml"] = design }),
            iter: 60);
    }

    private static void CheckRead(string text) => Check("p", new() { ["p"] = text });

    private static void Check(string path, Dictionary<string, string> files)
    {
        var source = new MemorySource();
        foreach ((string name, string text) in files)
            source.Add(name, text);
        var problems = new ProblemList();
        Plant? plant = PlantDocument.Read(path, source, problems);

        Assert.Equal(plant is null, !problems.IsEmpty);
        if (plant is not null)
            _ = Checker.Check(TracedPlant.Of(plant));
        foreach (Problem problem in problems.Items)
        {
            string[] lines = files[problem.Place.File].Split('\n');
            Assert.InRange(problem.Place.Line, 1, lines.Length);
            Assert.InRange(problem.Place.Column, 1, lines[problem.Place.Line - 1].Length + 1);
            Assert.DoesNotContain('\n', problem.ToString());
        }
    }
}
