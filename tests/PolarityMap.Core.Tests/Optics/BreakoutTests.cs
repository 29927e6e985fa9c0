using PolarityMap.Core.Optics;
using Xunit;

namespace PolarityMap.Core.Tests.Optics;

public sealed class BreakoutTests
{
    public static TheoryData<string, string> All
    {
        get
        {
            var all = new TheoryData<string, string>();
            foreach (Breakout breakout in Breakouts.All)
                all.Add(breakout.From, breakout.Name);
            return all;
        }
    }

    [Fact]
    public void Every_breakout_is_found_by_its_port_and_its_name()
    {
        Assert.Equal(Breakouts.All.Count, Breakouts.All.Select(b => (b.From, b.Name)).Distinct().Count());
        Assert.All(Breakouts.All, b => Assert.Same(b, Breakouts.Find(b.From, b.Name)));
        Assert.Equal(Breakouts.All.ToHashSet(), Application.Names.SelectMany(Breakouts.Of).ToHashSet());
        Assert.Null(Breakouts.Find("40GBASE-SR4", "8x"));
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Its_groups_use_up_the_lanes_of_the_port_and_are_the_lanes_of_their_application(string from, string name)
    {
        Breakout breakout = Breakouts.Find(from, name)!;
        Application port = Application.Find(breakout.From)!;
        Application group = Application.Find(breakout.To)!;
        Assert.Equal($"{breakout.Groups}x", breakout.Name);
        Assert.All(port.Layouts, layout => Assert.Equal(breakout.Groups * breakout.LanesPerGroup, Transmitting(layout)));
        Assert.All(group.Layouts, layout => Assert.Equal(breakout.LanesPerGroup, Transmitting(layout)));
        Assert.NotEqual("", breakout.Source);
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Both_sides_send_one_wavelength_one_way_and_the_same(string from, string name)
    {
        Breakout breakout = Breakouts.Find(from, name)!;
        Application port = Application.Find(breakout.From)!;
        Application group = Application.Find(breakout.To)!;
        Assert.Equal(Assert.Single(port.Wavelengths), Assert.Single(group.Wavelengths));
        Assert.False(port.LanesAreTwoWay || group.LanesAreTwoWay);
    }

    // A leg reaches no fibre that the port does not: whatever carries the port carries its groups.
    [Theory]
    [MemberData(nameof(All))]
    public void Its_groups_run_on_every_fibre_of_the_port(string from, string name)
    {
        Breakout breakout = Breakouts.Find(from, name)!;
        Assert.All(Application.Find(breakout.From)!.Limits(LimitProfile.Default), limit =>
            Assert.NotNull(Application.Find(breakout.To)!.Limit(LimitProfile.Default, limit.Fibre)));
    }

    // Source: interface facts 3: wavelengths that share a fibre are not taken apart by a leg (1 source); no source settles the ten-lane port.
    [Fact]
    public void No_breakout_is_offered_where_wavelengths_share_a_fibre_or_lanes_are_not_paired()
    {
        Assert.All(Application.All.Where(a => a.Wavelengths.Count > 1 || a.LanesAreTwoWay), a => Assert.Empty(Breakouts.Of(a.Name)));
        Assert.Empty(Breakouts.Of("100GBASE-SR10"));
    }

    private static int Transmitting(PortLayout layout) => layout.Lanes.Count(l => l.Use == LaneUse.Transmit);
}
