using System.Globalization;
using PolarityMap.Core.Budget;
using PolarityMap.Core.Optics;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Tests.Oracles;
using Xunit;

namespace PolarityMap.Core.Tests.Optics;

/// <summary>
/// The product's tables against the tables that were typed from the fact sheets without sight of it. The typed tables hold only
/// what public sources confirm: every such figure must be the product's, and a figure that the product calls confirmed must be
/// among them. Figures from memory have no oracle.
/// </summary>
public sealed class TablesAgreeTests
{
    private static readonly string[] SingleMode = ["OS1", "OS1a", "OS2"];

    /// <summary>Typed rows of cable that is no class of ISO/IEC 11801-1, which the product does not have.</summary>
    private static readonly string[] NoClass = ["indoor/outdoor single-mode", "G.652.D cable"];

    private static IEnumerable<InterfaceRow> Rows => InterfaceTables.DuplexAndSingleFibre.Concat(InterfaceTables.Arrays);

    // Source: interface facts 2.1 and 2.2.
    [Fact]
    public void Clauses_and_wavelengths_of_interfaces_agree()
    {
        foreach (InterfaceRow row in Rows)
        {
            Application application = Find(row.Interface);
            if (row.Clause is { } clause)
                Assert.Equal($"IEEE 802.3 clause {clause}", application.Clause);
            if (row.WavelengthsNm.Count > 0)
                Assert.Equal(row.WavelengthsNm, application.Wavelengths.Select(w => w.Nanometres));
        }
    }

    // Source: interface facts 2.1 and 2.2, distances, losses and shares of IEEE 802.3.
    [Fact]
    public void Distances_losses_and_shares_of_interfaces_agree()
    {
        int compared = 0;
        foreach (InterfaceRow row in Rows)
        {
            foreach (string fibre in ClassesOf(row.Fibre))
            {
                FibreLimit limit = Limit(row.Interface, fibre);
                if (row.Metres is { } metres)
                    Same(metres, (decimal?)limit.Distance?.Metres, limit.DistanceConfidence, $"distance of {row.Interface} on {fibre}");
                if (row.LossDb is { } loss)
                    Same(loss, limit.Loss?.Value, limit.LossConfidence, $"loss of {row.Interface} on {fibre}");
                if (row.AllocDb is { } share)
                    Same(share, limit.ConnectionShare?.Value, limit.ConnectionShareConfidence, $"share of {row.Interface} on {fibre}");
                compared++;
            }
        }

        Assert.True(compared > 60, $"{compared} rows");
    }

    [Fact]
    public void What_the_product_calls_confirmed_of_an_interface_is_in_the_typed_tables()
    {
        var unbacked = new List<string>();
        foreach (Application application in Application.All)
        {
            foreach (FibreLimit limit in application.Limits(LimitProfile.Default))
            {
                InterfaceRow[] rows = [.. Rows.Where(r => r.Interface == application.Name && ClassesOf(r.Fibre).Contains(limit.Fibre))];
                string what = $"{application.Name} on {limit.Fibre}";
                if (limit.DistanceConfidence.Kind == ConfidenceKind.Confirmed && !rows.Any(r => r.Metres is not null))
                    unbacked.Add($"distance of {what}");
                if (limit.LossConfidence.Kind == ConfidenceKind.Confirmed && !rows.Any(r => r.LossDb is not null))
                    unbacked.Add($"loss of {what}");
                if (limit.ConnectionShareConfidence.Kind == ConfidenceKind.Confirmed && !rows.Any(r => r.AllocDb is not null))
                    unbacked.Add($"share of {what}");
            }
        }

        // The sheet gives 800GBASE-SR8 and -VR8 one row and one code, "1 source, weak"; typed were the figures of -SR8 alone.
        Assert.Equal(["distance of 800GBASE-VR8 on OM3", "distance of 800GBASE-VR8 on OM4", "distance of 800GBASE-VR8 on OM5"], unbacked);
        Assert.All(Find("800GBASE-VR8").Limits(LimitProfile.Default), l => Assert.Equal("weak", l.DistanceConfidence.Remark));
    }

    // Source: interface facts 2.1 and 8, no. 3.
    [Fact]
    public void Losses_of_TIA_agree_and_differ_from_IEEE_nowhere_else()
    {
        foreach (LimitProfile profile in LimitProfile.All.Where(p => p != LimitProfile.Default))
        {
            foreach (TiaLossRow row in InterfaceTables.TiaLosses)
            {
                foreach (string fibre in ClassesOf(row.Fibre))
                    Assert.Equal(row.LossDb, Limit(row.Interface, fibre, profile).Loss!.Value.Value);
            }

            foreach (Application application in Application.All.Where(a => InterfaceTables.TiaLosses.All(r => r.Interface != a.Name)))
                Assert.Equal(application.Limits(LimitProfile.Default), application.Limits(profile));
        }
    }

    // Source: interface facts 2.1, ranges of the rows whose wavelengths are confirmed.
    [Fact]
    public void Windows_of_transmitters_agree()
    {
        foreach (TransmitWindow window in InterfaceTables.TransmitWindows)
            Assert.Equal(string.Create(CultureInfo.InvariantCulture, $"{window.LowNm}-{window.HighNm} nm"), Find(window.Interface).WavelengthRange);
    }

    // Source: interface facts 2.2, single-mode notes: the first row of an interface is the one that is specified.
    [Fact]
    public void The_cable_that_a_distance_is_given_for_agrees()
    {
        foreach (IGrouping<string, DistanceByCable> rows in InterfaceTables.DistancesByCable.GroupBy(r => r.Interface))
        {
            FibreLimit limit = Limit(rows.Key, "OS2");
            Assert.Equal(rows.First().DbPerKm, limit.AssumedCable!.Value.DecibelPerKm);
            Assert.Equal(rows.First().Metres, limit.Distance!.Value.Metres);
        }
    }

    // Source: interface facts 2.2, ports with two sources or more.
    [Fact]
    public void Positions_and_end_faces_of_array_ports_agree()
    {
        foreach (ArrayPortRow row in InterfaceTables.ArrayPorts)
        {
            PortLayout layout = Find(row.Interface).Layouts[0];
            Assert.Equal(row.Positions, layout.Form.Positions());
            Assert.Equal(row.Transmit, Positions(layout, LaneUse.Transmit));
            Assert.Equal(row.Receive, Positions(layout, LaneUse.Receive));
            Assert.Equal(row.Unused, Enumerable.Range(1, row.Positions).Except(layout.Lanes.Select(l => l.Position)));
        }

        foreach (ArrayPortShape row in InterfaceTables.ArrayPortShapes)
        {
            PortLayout layout = Find(row.Interface).Layouts[0];
            Face face = Bench.ShapeOf("parallel interface", v => v.Set("application", row.Interface)).Ports[0].Face;
            Assert.Equal((row.Rows, row.Columns, row.FibresUsed), (face.Rows, face.Columns, layout.Lanes.Count));
        }

        Assert.Equal(InterfaceTables.DarkOfTenLanePort, Enumerable.Range(1, 24).Except(Find("100GBASE-SR10").Layouts[0].Lanes.Select(l => l.Position)));
        foreach (FerruleRow row in InterfaceTables.Ferrules)
        {
            PortLayout layout = Find(row.Interface).Layouts[0];
            Assert.Equal(row.EndFace == "angled", layout.Angled);
            Assert.Equal(ConfidenceKind.Confirmed, layout.AngledConfidence.Kind);
        }
    }

    // Source: interface facts 2.1, single-fibre pairs.
    [Fact]
    public void Single_fibre_pairs_agree()
    {
        foreach (SingleFibreRow row in InterfaceTables.SingleFibrePairs)
        {
            Application application = Find(row.Interface);
            LaneSpec lane = Assert.Single(application.Layouts[0].Lanes);
            Assert.Equal((row.TransmitNm, row.ReceiveNm), (lane.Transmit!.Value.Nanometres, lane.Receive!.Value.Nanometres));
            Assert.Equal(row.Counterpart, application.Counterpart);
        }
    }

    // Source: interface facts 4.1.
    [Fact]
    public void Attenuation_limits_agree()
    {
        int compared = 0;
        foreach (AttenuationRow row in LossTables.Attenuation)
        {
            foreach (string fibre in CablesOf(row.Class))
            {
                foreach (LimitProfile profile in ProfilesOf(row.Standard, ""))
                {
                    (Attenuation value, Confidence confidence, _) = profile.AttenuationRow(FibreClass.Find(fibre)!, new(row.WavelengthNm));
                    Same(row.DbPerKm, value.DecibelPerKm, confidence, $"{fibre} at {row.WavelengthNm} nm by {profile.Name}");
                    compared++;
                }
            }
        }

        Assert.True(compared > 30, $"{compared} cells");
    }

    [Fact]
    public void An_attenuation_that_the_product_calls_confirmed_is_in_the_typed_table()
    {
        foreach (LimitProfile profile in LimitProfile.All)
        {
            foreach (FibreClass fibre in FibreClass.All)
            {
                foreach (int nm in fibre.IsMultimode ? (int[])[850, 953, 1300] : [1310, 1550])
                {
                    (_, Confidence confidence, string from) = profile.AttenuationRow(fibre, new(nm));
                    if (confidence.Kind != ConfidenceKind.Confirmed || !from.EndsWith($"{nm} nm column", StringComparison.Ordinal))
                        continue;
                    Assert.True(
                        LossTables.Attenuation.Any(r => r.WavelengthNm == nm && CablesOf(r.Class).Contains(fibre.Name) && ProfilesOf(r.Standard, "").Contains(profile)),
                        $"{fibre} at {nm} nm by {profile.Name}");
                }
            }
        }
    }

    // Source: interface facts 4.1, the typical figures: of a range the product takes the larger end.
    [Fact]
    public void Typical_attenuation_agrees()
    {
        foreach (TypicalAttenuationRow row in LossTables.TypicalAttenuation)
        {
            FibreClass fibre = FibreClass.Find(row.FibreKind == "multimode" ? "OM3" : "OS2")!;
            Assert.Equal(row.HighDbPerKm, LossEstimates.AttenuationOf(fibre, new(row.WavelengthNm)).DecibelPerKm);
        }
    }

    // Source: interface facts 4.2.
    [Fact]
    public void Limits_of_matings_splices_and_reference_plugs_agree()
    {
        foreach (ConnectionLossRow row in LossTables.ConnectionLimits)
        {
            foreach (LimitProfile profile in ProfilesOf(row.Standard, row.Edition))
            {
                decimal? value = row.Item switch
                {
                    "mated pair, any grade" or "ordinary to ordinary, random" => profile.MatingMax.Value,
                    "splice, fusion or mechanical" => profile.SpliceMax.Value,
                    "reference to ordinary" => profile.ReferencePlug(row.FibreKind == "multimode").Value,

                    // Of verifying test cords against each other, which the product does not reckon.
                    "reference to reference" => row.Db,
                    _ => null,
                };
                Assert.Equal(row.Db, value);
            }
        }
    }

    // Source: interface facts 4.2, estimates. The product takes that of good work for a single fibre, and no trade figure for low loss.
    [Theory]
    [InlineData("mated pair, single fibre, good work", "any")]
    [InlineData("mated pair, array", "any")]
    [InlineData("splice", "single-mode")]
    [InlineData("splice", "multimode")]
    public void Estimates_of_matings_and_splices_agree(string item, string kind)
    {
        ConnectionLossRow row = Assert.Single(LossTables.ConnectionEstimates, r => r.Item == item && r.FibreKind == kind);
        Decibel estimate = item == "splice" ? LossEstimates.Splice(kind == "multimode") : LossEstimates.Mating(item.EndsWith("array", StringComparison.Ordinal));
        Assert.Equal(row.Db, estimate.Value);
    }

    // Source: interface facts 4.5.
    [Fact]
    public void Group_indices_and_delays_agree()
    {
        foreach (DelayRow row in LossTables.Delay.Where(r => r.WavelengthNm is not null))
        {
            FibreClass fibre = FibreClass.Find(row.Fibre switch { "50 um" => "OM3", "62.5 um" => "OM1", _ => "OS2" })!;
            decimal index = fibre.GroupIndex(new(row.WavelengthNm!.Value));
            Assert.Equal(row.GroupIndex, index);
            Assert.Equal(row.NsPerMetre, Math.Round(Delay.Over(Length.FromMillimetres(1000), index).Nanoseconds, row.PrintedDecimals));
        }
    }

    private static void Same(decimal typed, decimal? product, Confidence confidence, string what)
    {
        Assert.True(typed == product, $"{what}: {product} where public sources have {typed}");
        Assert.True(confidence.Kind == ConfidenceKind.Confirmed, $"{what} is confirmed by public sources and called {confidence}");
    }

    private static Application Find(string name)
    {
        Application? application = Application.Find(name);
        Assert.NotNull(application);
        return application;
    }

    private static FibreLimit Limit(string name, string fibre, LimitProfile? profile = null)
    {
        FibreLimit? limit = Find(name).Limit(profile ?? LimitProfile.Default, fibre);
        Assert.True(limit is not null, $"{name} on {fibre}");
        return limit;
    }

    /// <summary>The classes of a typed row of an interface: all single-mode ones, one multimode one, or none for older fibre.</summary>
    private static string[] ClassesOf(string typed) => typed == "OS" ? SingleMode : FibreClass.Find(typed) is not null ? [typed] : [];

    /// <summary>The classes of a typed row of cable.</summary>
    private static string[] CablesOf(string typed) => typed switch
    {
        "indoor single-mode" => ["OS1", "OS1a"],
        "outside plant single-mode" => ["OS2"],
        _ when NoClass.Contains(typed) => [],
        _ => [typed],
    };

    private static LimitProfile[] ProfilesOf(string standard, string edition) => [.. (standard, edition) switch
    {
        ("11801" or "14763", _) => (LimitProfile[])[LimitProfile.Default],
        ("568.3-D", _) or ("568.3", "D") => [LimitProfile.Find("TIA-568.3-D")!],
        ("568.3-E", _) or ("568.3", "E") => [LimitProfile.Find("TIA-568.3-E")!],
        ("568.3", "") => [LimitProfile.Find("TIA-568.3-D")!, LimitProfile.Find("TIA-568.3-E")!],
        _ => [],
    }];

    private static IEnumerable<int> Positions(PortLayout layout, LaneUse use) => layout.Lanes.Where(l => l.Use == use).Select(l => l.Position).Order();
}
