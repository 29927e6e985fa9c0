using PolarityMap.Core.Checks;

namespace PolarityMap.Acceptance.Gallery;

/// <summary>A figure of the gallery: the call of <c>draw</c>, in the document's folder, that makes it.</summary>
/// <param name="Svg">The file, named from the document's folder.</param>
/// <param name="Options">What follows the document in the call, without <c>-o</c>.</param>
internal sealed record Figure(string Svg, params string[] Options);

/// <summary>A text of the gallery: the call, in the document's folder, that prints it.</summary>
/// <param name="File">The file, named from the document's folder.</param>
/// <param name="Call">The call.</param>
internal sealed record PrintedText(string File, params string[] Call);

/// <summary>A document of the gallery with everything that is made from it.</summary>
/// <param name="Folder">Its folder inside the gallery.</param>
/// <param name="Name">Its file name without <c>.yaml</c>.</param>
/// <param name="Written">The text where it comes from a rule; null for a document written by hand.</param>
/// <param name="Figures">The drawings made from it.</param>
internal sealed record GalleryDocument(string Folder, string Name, string? Written, IReadOnlyList<Figure> Figures)
{
    /// <summary>Further texts printed from it, beside what the check says.</summary>
    public IReadOnlyList<PrintedText> Texts { get; init; } = [];

    public string File => $"{Name}.yaml";

    public string Report => $"{Name}.check.txt";
}

/// <summary>The one list of what the gallery shows.</summary>
internal static class GalleryIndex
{
    public const string Methods = "methods";

    public const string Arrays = "arrays";

    public const string Faults = "faults";

    public const string Demo = "opera-house";

    private static readonly string[] Networks = ["lighting", "sound", "machinery", "office"];

    public static IReadOnlyList<GalleryDocument> Documents { get; } =
    [
        .. Written(Methods),
        .. Written(Arrays),
        .. RuleCatalogue.All.SelectMany(rule => (GalleryDocument[])
        [
            new(Faults, rule.Code, rule.Example, [new Figure($"{rule.Code}.svg")]),
            new(Faults, $"{rule.Code}.repaired", rule.Repaired, [new Figure($"{rule.Code}.repaired.svg")]),
        ]),
        new(Demo, "plant", null, [.. Networks.Select(n => new Figure($"{n}.svg", "--network", n)), new Figure("desk-7.svg", "--part", "DESK7")])
        {
            Texts = [new PrintedText("plant.budget.txt", "budget", "plant.yaml"), new PrintedText("plant.separation.txt", "separation", "plant.yaml")],
        },
        new(Demo, "as-built", null, [.. Networks.Select(n => new Figure($"as-built-{n}.svg", "--network", n))]),
    ];

    /// <summary>Every document of a folder that is written by hand and drawn as a whole.</summary>
    private static IEnumerable<GalleryDocument> Written(string folder) =>
        Directory.EnumerateFiles(Path.Combine(Repository.Gallery, folder), "*.yaml")
            .Select(f => Path.GetFileNameWithoutExtension(f)).Order(StringComparer.Ordinal)
            .Select(name => new GalleryDocument(folder, name, null, [new Figure($"{name}.svg")]));

    public static GalleryDocument Find(string folder, string name) => Documents.Single(d => d.Folder == folder && d.Name == name);
}
