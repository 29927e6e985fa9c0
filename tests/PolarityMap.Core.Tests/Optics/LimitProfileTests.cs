using PolarityMap.Core.Optics;
using Xunit;

namespace PolarityMap.Core.Tests.Optics;

/// <summary>How a profile chooses its column; the figures themselves are checked against the tables typed from the sheet.</summary>
public sealed class LimitProfileTests
{
    public static TheoryData<string> Profiles => [.. LimitProfile.Names];

    [Fact]
    public void The_default_is_the_first_and_every_profile_is_found_by_its_name()
    {
        Assert.Equal("ISO/IEC 11801", LimitProfile.Default.Name);
        Assert.Equal(LimitProfile.Default, LimitProfile.All[0]);
        Assert.All(LimitProfile.All, p => Assert.Same(p, LimitProfile.Find(p.Name)));
        Assert.Equal(["ISO/IEC 11801", "TIA-568.3-D", "TIA-568.3-E"], LimitProfile.Names);
        Assert.Null(LimitProfile.Find("TIA-568.3"));
    }

    [Theory]
    [MemberData(nameof(Profiles))]
    public void Below_1000_nm_multimode_takes_the_850_column(string profile)
    {
        LimitProfile limits = LimitProfile.Find(profile)!;
        foreach (FibreClass fibre in FibreClass.All.Where(f => f.IsMultimode))
        {
            foreach (int nm in (int[])[770, 844, 910, 940, 947, 959, 999])
                AssertColumn(limits, fibre, nm, 850, "850 nm column");
        }
    }

    // The column exists for OM5 only.
    [Theory]
    [MemberData(nameof(Profiles))]
    public void Near_953_nm_only_the_class_that_has_that_column_takes_it(string profile)
    {
        LimitProfile limits = LimitProfile.Find(profile)!;
        foreach (FibreClass fibre in FibreClass.All.Where(f => f.IsMultimode))
        {
            foreach (int nm in (int[])[948, 953, 958])
                AssertColumn(limits, fibre, nm, fibre.Name == "OM5" ? 953 : 850, fibre.Name == "OM5" ? "953 nm column" : "850 nm column");
        }

        FibreClass om5 = FibreClass.Find("OM5")!;
        Assert.True(limits.AttenuationOf(om5, new(953)).DecibelPerKm < limits.AttenuationOf(om5, new(940)).DecibelPerKm);
    }

    [Theory]
    [MemberData(nameof(Profiles))]
    public void From_1260_to_1400_nm_every_class_takes_the_middle_column(string profile)
    {
        LimitProfile limits = LimitProfile.Find(profile)!;
        foreach (FibreClass fibre in FibreClass.All)
        {
            foreach (decimal nm in (decimal[])[1260, 1270, 1295.56m, 1331, 1400])
                AssertColumn(limits, fibre, nm, 1310, fibre.IsMultimode ? "1300 nm column" : "1310 nm column");
        }
    }

    [Theory]
    [MemberData(nameof(Profiles))]
    public void Above_1400_nm_single_mode_takes_the_1550_column_and_multimode_its_last(string profile)
    {
        LimitProfile limits = LimitProfile.Find(profile)!;
        foreach (FibreClass fibre in FibreClass.All)
        {
            foreach (decimal nm in (decimal[])[1400.5m, 1490, 1550, 1625])
                AssertColumn(limits, fibre, nm, 1550, fibre.IsMultimode ? "1300 nm column" : "1550 nm column");
        }
    }

    [Theory]
    [MemberData(nameof(Profiles))]
    public void Between_the_columns_the_larger_neighbour_holds(string profile)
    {
        LimitProfile limits = LimitProfile.Find(profile)!;
        foreach (FibreClass fibre in FibreClass.All)
        {
            decimal larger = Math.Max(limits.AttenuationOf(fibre, new(850)).DecibelPerKm, limits.AttenuationOf(fibre, new(1310)).DecibelPerKm);
            Assert.Equal(larger, limits.AttenuationOf(fibre, new(1000)).DecibelPerKm);
            Assert.Equal(larger, limits.AttenuationOf(fibre, new(1259)).DecibelPerKm);
        }
    }

    [Theory]
    [MemberData(nameof(Profiles))]
    public void Single_mode_below_its_columns_takes_the_first(string profile)
    {
        LimitProfile limits = LimitProfile.Find(profile)!;
        foreach (FibreClass fibre in FibreClass.All.Where(f => !f.IsMultimode))
            AssertColumn(limits, fibre, 850, 1310, "1310 nm column");
    }

    [Theory]
    [MemberData(nameof(Profiles))]
    public void Every_figure_says_where_it_comes_from_and_how_well_it_is_attested(string profile)
    {
        LimitProfile limits = LimitProfile.Find(profile)!;
        foreach (FibreClass fibre in FibreClass.All)
        {
            foreach (int nm in (int[])[850, 953, 1310, 1550])
            {
                (Attenuation value, Confidence confidence, string from) = limits.AttenuationRow(fibre, new(nm));
                Assert.Equal(limits.AttenuationOf(fibre, new(nm)), value);
                Assert.NotEqual(ConfidenceKind.Unknown, confidence.Kind);
                Assert.Contains(fibre.Name, from);
            }
        }

        Assert.Equal(limits.MatingMax, limits.MatingRow.Value);
        Assert.Equal(limits.SpliceMax, limits.SpliceRow.Value);
        Assert.Equal(limits.ReferencePlug(true), limits.ReferencePlugRow(true).Value);
        Assert.Equal(limits.ReferencePlug(false), limits.ReferencePlugRow(false).Value);
        Assert.All([limits.MatingRow, limits.SpliceRow, limits.ReferencePlugRow(true), limits.ReferencePlugRow(false)], row =>
        {
            Assert.Equal(ConfidenceKind.Confirmed, row.Confidence.Kind);
            Assert.StartsWith(profile == "ISO/IEC 11801" ? "ISO/IEC" : "ANSI/" + profile, row.From);
        });
    }

    // Source: interface facts 4.2: a reference plug is better than an ordinary one, whatever the edition (1 source each).
    [Theory]
    [MemberData(nameof(Profiles))]
    public void A_reference_plug_loses_no_more_than_an_ordinary_mating(string profile)
    {
        LimitProfile limits = LimitProfile.Find(profile)!;
        Assert.True(limits.ReferencePlug(true) <= limits.MatingMax);
        Assert.True(limits.ReferencePlug(false) <= limits.MatingMax);
    }

    // An estimate above the limit would fail every good plant. Bound: the limits of the default profile; single-mode against its indoor class.
    [Fact]
    public void No_estimate_is_above_the_limit_it_estimates()
    {
        LimitProfile limits = LimitProfile.Default;
        Assert.All([true, false], either =>
        {
            Assert.True(LossEstimates.Mating(either) <= limits.MatingMax);
            Assert.True(LossEstimates.Splice(either) <= limits.SpliceMax);
        });
        foreach (FibreClass fibre in FibreClass.All)
        {
            foreach (int nm in (int[])[850, 1100, 1300, 1310, 1400, 1550])
            {
                (Attenuation value, Confidence confidence, string from) = LossEstimates.AttenuationRow(fibre, new(nm));
                Assert.True(value.DecibelPerKm <= limits.AttenuationOf(fibre, new(nm)).DecibelPerKm, $"{fibre} at {nm} nm");
                Assert.Equal(value, LossEstimates.AttenuationOf(fibre, new(nm)));
                Assert.Equal(ConfidenceKind.CommonPractice, confidence.Kind);
                Assert.Contains("common practice", from);
            }
        }
    }

    private static void AssertColumn(LimitProfile limits, FibreClass fibre, decimal asked, decimal column, string words)
    {
        (Attenuation value, _, string from) = limits.AttenuationRow(fibre, new(asked));
        Assert.Equal(limits.AttenuationOf(fibre, new(column)), value);
        Assert.EndsWith(words, from);
    }
}
