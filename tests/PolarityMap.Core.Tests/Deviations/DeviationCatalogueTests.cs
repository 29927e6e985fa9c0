using PolarityMap.Core.Deviations;
using Xunit;

namespace PolarityMap.Core.Tests.Deviations;

/// <summary>The list of kinds: complete, and each of use somewhere.</summary>
public sealed class DeviationCatalogueTests
{
    /// <summary>
    /// What has to be there, in the order in which it was asked for, and the kind that stands for it. Source: interface facts 5, the
    /// causes.
    /// </summary>
    public static TheoryData<string, string> Asked => new()
    {
        { "A-to-A for A-to-B cord and back", "other-cord" },
        { "reversible cord reversed", "cord-reversed" },
        { "trunk of another type", "other-trunk" },
        { "cassette of another wiring", "other-wiring" },
        { "cassette or panel mounted inverted", "upside-down" },
        { "adapter of the other keying", "other-keying" },
        { "array leg in the wrong port", "leg-in-wrong-port" },
        { "two legs exchanged", "legs-exchanged" },
        { "cord in the neighbouring port", "cord-in-next-port" },
        { "two cords exchanged", "cords-exchanged" },
        { "pair crossed in a field termination", "pair-crossed" },
        { "two fibres exchanged in a splice tray", "fibres-exchanged" },
        { "one fibre broken at a part", "fibre-broken" },
        { "connector not seated", "not-seated" },
        { "dirty mating", "dirty" },
        { "wrong fibre class", "other-fibre" },
        { "wrong network's cord", "foreign-cord" },
    };

    public static TheoryData<string> Names => [.. DeviationCatalogue.All.Select(k => k.Name)];

    private static readonly Lazy<HashSet<string>> s_met = new(() =>
        [.. SmallPlants.Names.SelectMany(n => new DeviationContext(SmallPlants.Of(n)).All().Select(d => d.Kind.Name))]);

    [Theory]
    [MemberData(nameof(Asked))]
    public void What_was_asked_for_is_there(string what, string name) => Assert.True(DeviationCatalogue.Find(name) is not null, what);

    // A kind that applies nowhere would be a word without meaning.
    [Theory]
    [MemberData(nameof(Names))]
    public void A_kind_occurs_in_at_least_one_small_plant(string name) => Assert.Contains(name, s_met.Value);

    [Theory]
    [MemberData(nameof(Names))]
    public void A_kind_says_all_about_itself(string name)
    {
        DeviationKind kind = DeviationCatalogue.Find(name)!;
        Assert.Matches("^[a-z]+(-[a-z]+)*$", kind.Name);
        Assert.False(string.IsNullOrWhiteSpace(kind.Title));
        Assert.False(kind.Title.EndsWith('.'));
        Assert.EndsWith(".", kind.Symptom, StringComparison.Ordinal);
        Assert.True(kind.Weight > 0);
        Assert.InRange(kind.LookMinutes, 0, 60);
        Assert.InRange(kind.MendMinutes, 1, 120);
        Assert.Contains("common practice", kind.Source, StringComparison.Ordinal);
        Assert.Contains("Never look into a fibre end", kind.Caution, StringComparison.Ordinal);
        Assert.Contains("Local codes", kind.Caution, StringComparison.Ordinal);
    }

    [Fact]
    public void Names_and_titles_are_unique_and_a_kind_is_found_by_its_name()
    {
        Assert.Equal(DeviationCatalogue.All.Count, DeviationCatalogue.All.Select(k => k.Name).Distinct().Count());
        Assert.Equal(DeviationCatalogue.All.Count, DeviationCatalogue.All.Select(k => k.Title).Distinct().Count());
        for (int i = 0; i < DeviationCatalogue.All.Count; i++)
        {
            Assert.Same(DeviationCatalogue.All[i], DeviationCatalogue.Find(DeviationCatalogue.All[i].Name));
            Assert.Equal(i, DeviationCatalogue.IndexOf(DeviationCatalogue.All[i]));
        }

        Assert.Null(DeviationCatalogue.Find("wrong-moon"));
    }

    // Source: interface facts 5, published orderings, the order suggested for a link that never worked.
    [Fact]
    public void The_weights_follow_the_order_of_a_link_that_never_worked()
    {
        string[][] order =
        [
            ["other-cord", "cord-reversed", "other-array-cord", "foreign-cord"],
            ["cord-in-next-port", "cords-exchanged", "leg-in-wrong-port", "legs-exchanged"],
            ["other-wiring", "other-keying"],
            ["pair-crossed", "pairs-transposed", "fibres-exchanged"],
            ["other-trunk"],
            ["dirty"],
            ["not-seated"],
            ["fibre-broken", "other-fibre"],
        ];
        for (int i = 1; i < order.Length; i++)
            Assert.True(order[i - 1].Min(Weight) > order[i].Max(Weight), $"{order[i - 1][0]} before {order[i][0]}");

        static double Weight(string name) => DeviationCatalogue.Find(name)!.Weight;
    }

    // Where one place can be wrong in many ways, all of them together weigh no more than a few places do.
    [Theory]
    [InlineData("cords-exchanged")]
    [InlineData("fibre-broken")]
    [InlineData("other-trunk")]
    public void Many_variants_of_one_place_share_its_weight(string name)
    {
        foreach (string plant in SmallPlants.Names)
        {
            var context = new DeviationContext(SmallPlants.Of(plant));
            DeviationKind kind = DeviationCatalogue.Find(name)!;
            Deviation[] all = [.. context.All().Where(d => d.Kind == kind)];
            foreach (IGrouping<int, Deviation> at in all.GroupBy(d => d.Parts[name == "cords-exchanged" ? 2 : 0]))
            {
                // Each of the plugs at a part weighs half of an exchange.
                double places = name == "cords-exchanged" ? at.SelectMany(d => d.Parts.Take(2)).Distinct().Count() / 2.0 : 1;
                Assert.True(at.Sum(d => d.Weight) <= (kind.Weight * places) + 1e-9, $"{plant}: {at.First().Text}");
            }
        }
    }
}
