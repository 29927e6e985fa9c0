namespace PolarityMap.Acceptance.Gallery;

/// <summary>Plants that grow to a new brief, and a large one.</summary>
internal static class GrownGallery
{
    private const string Five = "opera-house-five", Boxes = "stage-boxes", Parallel = "stage-boxes-parallel", Campus = "campus";

    /// <summary>Briefs written by hand, in the folder of plans.</summary>
    public static IReadOnlyList<string> Briefs { get; } = [BriefOf(Five), BriefOf(Boxes), BriefOf(Parallel), BriefOf(Campus)];

    /// <summary>The plants, each after that which it grows from.</summary>
    public static IReadOnlyList<GalleryDocument> Documents { get; } =
    [
        Grown(Five, "opera-house-U1", "### A fifth network", "VD-SW/7"),
        new(GalleryIndex.Planned, Boxes, null, [new Figure($"{Boxes}.svg", "--part", "LX-T-BOX1")])
        {
            Heading = "### Stage boxes, now with pairs",
            Plan = ["plan", BriefOf(Boxes), "-o", $"{Boxes}.yaml"],
        },
        Grown(Parallel, Boxes, "### Stage boxes, pairs give way to parallel links", "LX-SW/1"),
        new(GalleryIndex.Planned, Campus, null, [new Figure($"{Campus}-lectures.svg", "--view", "overview", "--network", "lectures")])
        {
            Heading = "### A campus of 3,000 links, one network of three drawn",
            IsLarge = true,
            Plan = ["plan", BriefOf(Campus), "-o", $"{Campus}.yml"],
            Texts = [new PrintedText($"{Campus}.plan.txt", "plan", BriefOf(Campus))],
        },
    ];

    private static string BriefOf(string name) => $"{name}.brief.yml";

    private static GalleryDocument Grown(string name, string from, string heading, string link)
    {
        string[] plan = ["plan", "--from", $"{from}.yaml", "--to", BriefOf(name)];
        return new GalleryDocument(GalleryIndex.Planned, name, null, [new Figure($"{name}.svg", "--link", link)])
        {
            Heading = heading,
            Plan = [.. plan, "-o", $"{name}.yaml"],
            Texts = [new PrintedText($"{name}.growth.txt", plan)],
        };
    }
}
