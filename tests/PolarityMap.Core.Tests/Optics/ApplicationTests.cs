using PolarityMap.Core.Optics;
using Xunit;

namespace PolarityMap.Core.Tests.Optics;

/// <summary>What holds for every row; the figures themselves are checked against the tables typed from the sheet.</summary>
public sealed class ApplicationTests
{
    public static TheoryData<string> Applications => [.. Application.Names];

    [Fact]
    public void Every_application_is_found_by_its_name_which_stands_once()
    {
        Assert.Equal(Application.All.Select(a => a.Name), Application.Names);
        Assert.Equal(Application.Names.Count, Application.Names.Distinct(StringComparer.OrdinalIgnoreCase).Count());
        Assert.All(Application.All, a => Assert.Same(a, Application.Find(a.Name)));
    }

    // Source: interface facts 2.1: 400GBASE-LR4 is no name of IEEE 802.3. 1 source.
    [Theory]
    [InlineData("400GBASE-LR4")]
    [InlineData("10gbase-sr")]
    [InlineData("10GBASE-SR ")]
    [InlineData("")]
    public void Another_name_finds_nothing(string name) => Assert.Null(Application.Find(name));

    [Theory]
    [MemberData(nameof(Applications))]
    public void Lanes_use_distinct_positions_inside_the_form(string name)
    {
        Application application = Application.Find(name)!;
        Assert.NotEmpty(application.Layouts);
        Assert.Equal(application.Form, application.Layouts[0].Form);
        Assert.Equal(application.Layouts.Count, application.Layouts.Select(l => l.Name).Distinct().Count());
        foreach (PortLayout layout in application.Layouts)
        {
            Assert.Same(layout, application.FindLayout(layout.Name));
            Assert.All(layout.Lanes, lane =>
            {
                Assert.InRange(lane.Receptacle, 0, layout.Receptacles - 1);
                Assert.InRange(lane.Position, 1, layout.Form.Positions());
            });
            Assert.Equal(layout.Lanes.Count, layout.Lanes.Select(l => (l.Receptacle, l.Position)).Distinct().Count());
            Assert.Equal(layout.Receptacles, layout.Lanes.Select(l => l.Receptacle).Distinct().Count());
            Assert.NotEqual("", layout.PositionsSource);
        }

        Assert.Null(application.FindLayout("three ports"));
    }

    [Theory]
    [MemberData(nameof(Applications))]
    public void Every_transmitting_lane_has_a_receiving_partner(string name)
    {
        foreach (PortLayout layout in Application.Find(name)!.Layouts)
        {
            int[] sends = [.. layout.Lanes.Where(l => l.Use != LaneUse.Receive).Select(l => l.Lane).Order()];
            int[] hears = [.. layout.Lanes.Where(l => l.Use != LaneUse.Transmit).Select(l => l.Lane).Order()];
            Assert.Equal(sends, hears);
            Assert.Equal(Enumerable.Range(1, sends.Distinct().Count()), sends.Distinct());
        }
    }

    [Theory]
    [MemberData(nameof(Applications))]
    public void Layouts_of_one_application_have_the_same_lanes(string name) =>
        Assert.Single(Application.Find(name)!.Layouts.Select(l => (l.Lanes.Count, l.Lanes.Max(s => s.Lane))).Distinct());

    [Theory]
    [MemberData(nameof(Applications))]
    public void A_position_names_the_wavelengths_of_what_it_does(string name)
    {
        Application application = Application.Find(name)!;
        foreach (LaneSpec lane in application.Layouts.SelectMany(l => l.Lanes))
        {
            bool sends = lane.Use != LaneUse.Receive && !application.IsWavelengthMultiplexed;
            bool hears = lane.Use != LaneUse.Transmit && !application.IsWavelengthMultiplexed;
            Assert.Equal((sends, hears), (lane.Transmit is not null, lane.Receive is not null));
            if (lane.Transmit is { } wavelength)
                Assert.Contains(wavelength, application.Wavelengths);
            if (lane.Use == LaneUse.Both)
                Assert.NotEqual(lane.Transmit, lane.Receive);
        }
    }

    // Source: interface facts 2.2 and 3, lane k sends at p and receives at N+1-p, so that a reversing link joins lane k to lane k. Derived;
    // the ten-lane port is the exception, whose pairing no source settles.
    [Theory]
    [MemberData(nameof(Applications))]
    public void The_two_positions_of_a_lane_mirror_each_other(string name)
    {
        Application application = Application.Find(name)!;
        if (application.Form == PortForm.Simplex || name == "100GBASE-SR10")
        {
            Assert.Empty(Breakouts.Of(name));
            return;
        }

        foreach (PortLayout layout in application.Layouts)
        {
            foreach (IGrouping<int, LaneSpec> lane in layout.Lanes.GroupBy(l => l.Lane))
            {
                Assert.Equal(2, lane.Count());
                Assert.Equal(layout.Form.Positions() + 1, lane.Sum(l => l.Position));
                Assert.Single(lane.Select(l => l.Receptacle).Distinct());
            }
        }
    }

    // Source: interface facts 2.2 (SR4.2) and the same idea for a duplex port: what one fibre of a pair sends the other one hears.
    [Theory]
    [InlineData("400GBASE-SR4.2")]
    [InlineData("two-wavelength duplex")]
    public void Where_both_fibres_go_both_ways_one_sends_what_the_other_hears(string name)
    {
        Application application = Application.Find(name)!;
        Assert.True(application.LanesAreTwoWay);
        Assert.False(application.IsWavelengthMultiplexed);
        foreach (IGrouping<int, LaneSpec> pair in application.Layouts[0].Lanes.GroupBy(l => l.Lane))
        {
            LaneSpec[] two = [.. pair];
            Assert.Equal((two[0].Transmit, two[0].Receive), (two[1].Receive, two[1].Transmit));
        }
    }

    [Theory]
    [MemberData(nameof(Applications))]
    public void A_counterpart_is_mutual_and_hears_what_this_one_sends(string name)
    {
        Application application = Application.Find(name)!;
        if (application.Counterpart is null)
        {
            Assert.False(application.Form == PortForm.Simplex, "one fibre cannot meet itself");
            return;
        }

        Application other = Application.Find(application.Counterpart)!;
        Assert.NotSame(application, other);
        Assert.Equal(name, other.Counterpart);
        LaneSpec here = Assert.Single(application.Layouts[0].Lanes);
        LaneSpec there = Assert.Single(other.Layouts[0].Lanes);
        Assert.Equal((here.Transmit, here.Receive), (there.Receive, there.Transmit));
        Assert.Equal(name[..^2], other.Name[..^2]);
    }

    [Theory]
    [MemberData(nameof(Applications))]
    public void Limits_name_known_fibre_of_one_kind_once(string name)
    {
        Application application = Application.Find(name)!;
        foreach (LimitProfile profile in LimitProfile.All)
        {
            IReadOnlyList<FibreLimit> limits = application.Limits(profile);
            Assert.Equal(limits.Count, limits.Select(l => l.Fibre).Distinct().Count());
            Assert.All(limits, l =>
            {
                Assert.NotNull(FibreClass.Find(l.Fibre));
                Assert.Same(l, application.Limit(profile, l.Fibre));
                Assert.True(l.Distance is { Millimetres: > 0 });
                Assert.Equal(l.Loss is null, l.LossConfidence.Kind == ConfidenceKind.Unknown);
                Assert.Equal(l.ConnectionShare is null, l.ConnectionShareConfidence.Kind == ConfidenceKind.Unknown);
                Assert.Equal(l.LeastLoss is null, l.LeastLossConfidence.Kind == ConfidenceKind.Unknown);
                Assert.NotEqual(ConfidenceKind.Unknown, l.DistanceConfidence.Kind);
                if (l is { ConnectionShare: { } share, Loss: { } loss })
                    Assert.True(share < loss);
                if (l is { LeastLoss: { } least, Loss: { } most })
                    Assert.True(least < most);
            });

            // Single-mode fibre comes as all three of its classes or not at all.
            Assert.Contains(limits.Count(l => !FibreClass.Find(l.Fibre)!.IsMultimode), (int[])[0, 3]);
        }

        Assert.Equal(name == "two-wavelength duplex", application.Limits(LimitProfile.Default).Count == 0);
        Assert.Null(application.Limit(LimitProfile.Default, "OM9"));
    }

    // A better class of the same core never allows less distance.
    [Theory]
    [MemberData(nameof(Applications))]
    public void Better_fibre_reaches_as_far(string name)
    {
        FibreLimit[] limits = [.. Application.Find(name)!.Limits(LimitProfile.Default)];
        foreach (FibreLimit a in limits)
        {
            foreach (FibreLimit b in limits)
            {
                (FibreClass fibreA, FibreClass fibreB) = (FibreClass.Find(a.Fibre)!, FibreClass.Find(b.Fibre)!);
                if (fibreA.Core == fibreB.Core && fibreA.Rank < fibreB.Rank)
                    Assert.True(a.Distance <= b.Distance, $"{a.Fibre}, {b.Fibre}");
            }
        }
    }

    // Source: interface facts 2.2, the arithmetic check: loss = share + distance times attenuation, printed to a tenth, so that it may be
    // 0.05 short. Multimode with the default profile, single-mode where the cable that the figure is given for is on record. Derived.
    [Theory]
    [MemberData(nameof(Applications))]
    public void The_share_and_the_longest_cable_fit_in_the_loss(string name)
    {
        Application application = Application.Find(name)!;
        foreach (FibreLimit limit in application.Limits(LimitProfile.Default))
        {
            FibreClass fibre = FibreClass.Find(limit.Fibre)!;
            Attenuation? cable = limit.AssumedCable ?? (fibre.IsMultimode ? LimitProfile.Default.AttenuationOf(fibre, application.Wavelengths[0]) : null);
            if (cable is not { } attenuation || limit.ConnectionShare is not { } share)
                continue;
            Assert.True(share + attenuation.Over(limit.Distance!.Value) <= limit.Loss!.Value + new Decibel(0.05m), limit.Fibre);
        }
    }

    // Source: interface facts 2.1 and 8, no. 3: the only rows in which TIA-568.3 is read to print other figures.
    [Fact]
    public void Only_two_applications_have_other_limits_under_TIA()
    {
        LimitProfile ieee = LimitProfile.Default;
        foreach (string profile in (string[])["TIA-568.3-D", "TIA-568.3-E"])
        {
            LimitProfile tia = LimitProfile.Find(profile)!;
            Assert.Equal(["1000BASE-LX", "10GBASE-SR"], Application.All.Where(a => !a.Limits(ieee).SequenceEqual(a.Limits(tia))).Select(a => a.Name));
            foreach (Application application in Application.All)
                Assert.Equal(application.Limits(ieee).Select(l => (l.Fibre, l.Distance)), application.Limits(tia).Select(l => (l.Fibre, l.Distance)));
        }
    }

    [Theory]
    [MemberData(nameof(Applications))]
    public void Every_application_says_where_it_comes_from(string name)
    {
        Application application = Application.Find(name)!;
        Assert.NotEqual("", application.Clause);
        Assert.StartsWith(application.Clause, application.Source);
        Assert.NotEqual(ConfidenceKind.Unknown, application.ClauseConfidence.Kind);
        Assert.NotEqual(ConfidenceKind.Unknown, application.WavelengthConfidence.Kind);
        Assert.NotEmpty(application.Wavelengths);
        Assert.All(application.Wavelengths, w => Assert.InRange(w.Nanometres, 770, 1625));
        Assert.Equal(application.Form >= PortForm.Array12, application.IsParallel);
    }
}
