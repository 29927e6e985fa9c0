namespace PolarityMap.Core.Optics;

/// <summary>
/// Builds port layouts. Lane order of one row, and of two rows counted through: lane k sends at the k-th transmitting
/// position, and receives at N+1 minus that position, as the form-factor agreements count (from memory; every breakout
/// needs it). Which position is which is seen at the port's own face, key up.
/// </summary>
internal static class PortLayouts
{
    /// <summary>A sends, B receives.</summary>
    /// <param name="wavelength">What is sent and received; null for several wavelengths at once.</param>
    public static PortLayout[] Duplex(Wavelength? wavelength) =>
    [
        new("duplex", PortForm.Duplex, 1, false,
            [new(0, 1, LaneUse.Transmit, 1, wavelength, null), new(0, 2, LaneUse.Receive, 1, null, wavelength)],
            "A sends, B receives: 3 public sources")
        {
            AngledConfidence = Confidence.Parse("P"),
        },
    ];

    /// <summary>One fibre, both ways.</summary>
    public static PortLayout[] SingleFibre(Wavelength transmit, Wavelength receive, string code) =>
    [
        new("single fibre", PortForm.Simplex, 1, false, [new(0, 1, LaneUse.Both, 1, transmit, receive)],
            "one position: " + Confidence.Parse(code))
        {
            AngledConfidence = Confidence.Parse("P"),
        },
    ];

    /// <summary>Two fibres, both ways on each: A sends what B receives and the other way about.</summary>
    public static PortLayout[] TwoWayDuplex(Wavelength sentAtA, Wavelength sentAtB) =>
    [
        new("duplex", PortForm.Duplex, 1, false,
            [new(0, 1, LaneUse.Both, 1, sentAtA, sentAtB), new(0, 2, LaneUse.Both, 1, sentAtB, sentAtA)],
            "common practice")
        {
            AngledConfidence = Confidence.Parse("P"),
        },
    ];

    /// <summary>
    /// One receptacle. Lane k sends at <paramref name="firstTransmit"/> + k - 1 and receives at the position that
    /// mirrors it, N+1 minus its number.
    /// </summary>
    public static PortLayout Mirrored(
        string name, PortForm form, int firstTransmit, int lanes, Wavelength wavelength, bool angled, string angledCode, string source)
    {
        var specs = new LaneSpec[2 * lanes];
        int mirror = form.Positions() + 1;
        for (int k = 0; k < lanes; k++)
        {
            specs[k] = new(0, firstTransmit + k, LaneUse.Transmit, k + 1, wavelength, null);
            specs[lanes + k] = new(0, mirror - firstTransmit - k, LaneUse.Receive, k + 1, null, wavelength);
        }

        return new(name, form, 1, angled, specs, source) { AngledConfidence = Confidence.Parse(angledCode) };
    }

    /// <summary>Two receptacles of twelve, four lanes each: each is the port of a four-lane interface.</summary>
    public static PortLayout TwoOfFourLanes(Wavelength wavelength, bool angled, string angledCode, string source)
    {
        const int each = 4;
        var specs = new LaneSpec[4 * each];
        for (int k = 0; k < 2 * each; k++)
        {
            int position = (k % each) + 1;
            specs[k] = new(k / each, position, LaneUse.Transmit, k + 1, wavelength, null);
            specs[(2 * each) + k] = new(k / each, 13 - position, LaneUse.Receive, k + 1, null, wavelength);
        }

        return new("two ports", PortForm.Array12, 2, angled, specs, source) { AngledConfidence = Confidence.Parse(angledCode) };
    }

    /// <summary>
    /// Lanes numbered in the order of the columns on both sides. The pairing of a transmitting with a receiving position
    /// is not settled for these ports: the numbers are places to name, and no breakout is built on them.
    /// </summary>
    public static PortLayout InColumnOrder(
        string name,
        PortForm form,
        (int Receptacle, int First) transmit,
        (int Receptacle, int First) receive,
        int lanes,
        Wavelength wavelength,
        string angledCode,
        string source)
    {
        var specs = new LaneSpec[2 * lanes];
        for (int k = 0; k < lanes; k++)
        {
            specs[k] = new(transmit.Receptacle, transmit.First + k, LaneUse.Transmit, k + 1, wavelength, null);
            specs[lanes + k] = new(receive.Receptacle, receive.First + k, LaneUse.Receive, k + 1, null, wavelength);
        }

        int receptacles = Math.Max(transmit.Receptacle, receive.Receptacle) + 1;
        return new(name, form, receptacles, false, specs, source) { AngledConfidence = Confidence.Parse(angledCode) };
    }

    /// <summary>
    /// Four fibre pairs of a row of twelve, both ways on every fibre: pair k is the positions k and 13-k, and what k sends
    /// 13-k receives.
    /// </summary>
    public static PortLayout TwoWayPairs(Wavelength sentLow, Wavelength sentHigh, string source)
    {
        const int pairs = 4;
        var specs = new LaneSpec[2 * pairs];
        for (int k = 1; k <= pairs; k++)
        {
            specs[k - 1] = new(0, k, LaneUse.Both, k, sentLow, sentHigh);
            specs[pairs + k - 1] = new(0, 13 - k, LaneUse.Both, k, sentHigh, sentLow);
        }

        return new("one row", PortForm.Array12, 1, null, specs, source);
    }
}
