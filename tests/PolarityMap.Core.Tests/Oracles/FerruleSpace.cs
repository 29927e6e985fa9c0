namespace PolarityMap.Core.Tests.Oracles;

/// <summary>
/// A place in space, in millimetres, or a direction. A plug is described by what is seen when one looks at its end face with
/// key up: x to the right, y up, z out of the face towards the eye; the end face lies at z = 0.
/// </summary>
public readonly record struct Spot(double X, double Y, double Z)
{
    /// <summary>Half a turn about the vertical axis: what makes a plug look the other plug in the face.</summary>
    public Spot TurnedToFace() => new(-X, Y, -Z);

    /// <summary>Half a turn about the optical axis: what brings the key from the top to the bottom.</summary>
    public Spot TurnedOver() => new(-X, -Y, Z);

    public double DistanceTo(Spot other) =>
        Math.Sqrt(((X - other.X) * (X - other.X)) + ((Y - other.Y) * (Y - other.Y)) + ((Z - other.Z) * (Z - other.Z)));
}

/// <summary>
/// An array plug in space: its fibre holes, its key and the slope of its end face. Nothing here knows a rule for what meets
/// what; the plug is turned, and what touches is read off.
/// </summary>
/// <param name="Rows">Rows of holes.</param>
/// <param name="Columns">Holes in a row.</param>
/// <param name="RowPitch">Distance of the rows. Nothing depends on it, as the tests show.</param>
/// <param name="KeyOffset">How far the middle of the key lies beside the middle of the ferrule.</param>
public sealed record FerruleSpace(int Rows, int Columns, double RowPitch = FerruleSpace.Pitch, double KeyOffset = 0)
{
    // Source: trade facts 7.3: fibre pitch 0.25 mm. 1 source for sixteen.
    public const double Pitch = 0.25;

    // Source: trade facts 7.2: angled means 8 degrees. 5 sources.
    public const double AngleDegrees = 8;

    // A key stands on top of the plug; how far above the middle has no part in the proof.
    private const double KeyHeight = 2;

    /// <summary>The hole of a position: 1 at the top left, counting right, then on with the row below (trade facts 1, rule 1).</summary>
    public Spot Hole(int position)
    {
        var row = (position - 1) / Columns;
        var column = (position - 1) % Columns;
        return new Spot((column - ((Columns - 1) / 2.0)) * Pitch, (((Rows - 1) / 2.0) - row) * RowPitch, 0);
    }

    /// <summary>The middle of the key, seen at the plug's own end face.</summary>
    public Spot Key => new(KeyOffset, KeyHeight, 0);

    /// <summary>A place of a plug that has been put against this one, key up to key up or key up to key down.</summary>
    public static Spot PutAgainst(Spot place, bool opposed) => opposed ? place.TurnedToFace().TurnedOver() : place.TurnedToFace();

    /// <summary>
    /// What touches what when another plug is put against this one: for each hole the nearest of the other plug's. Holes that
    /// have none within half a core's diameter of multimode fibre, 0.025 mm, are left out.
    /// </summary>
    public Dictionary<int, int> Touching(FerruleSpace other, bool opposed)
    {
        var touching = new Dictionary<int, int>();
        for (var here = 1; here <= Rows * Columns; here++)
        {
            var nearest = 0;
            var least = double.MaxValue;
            for (var there = 1; there <= other.Rows * other.Columns; there++)
            {
                var distance = Hole(here).DistanceTo(PutAgainst(other.Hole(there), opposed));
                if (distance < least)
                    (nearest, least) = (there, distance);
            }

            if (least < 0.025)
                touching.Add(here, nearest);
        }

        return touching;
    }

    /// <summary>
    /// True where a plug's key goes into an adapter made for plugs like this one: on either side of it the slot is where this
    /// plug's key comes to lie, up on the near side and up or down on the far side.
    /// </summary>
    public bool AdapterTakes(FerruleSpace plug, bool opposed) =>
        Key.DistanceTo(plug.Key) < 0.1 && PutAgainst(Key, opposed).DistanceTo(PutAgainst(plug.Key, opposed)) < 0.1;

    /// <summary>
    /// The direction that an end face looks in, seen at the face with key up. Angled slopes one way, up-angled the other way,
    /// each by 8 degrees about the horizontal axis (trade facts 7.2).
    /// </summary>
    public static Spot Normal(string endFace)
    {
        var slope = AngleDegrees * Math.PI / 180;
        return endFace switch
        {
            "flat" => new Spot(0, 0, 1),
            "angled" => new Spot(0, -Math.Sin(slope), Math.Cos(slope)),
            "up-angled" => new Spot(0, Math.Sin(slope), Math.Cos(slope)),
            _ => throw new ArgumentOutOfRangeException(nameof(endFace), endFace, "no such end face"),
        };
    }

    /// <summary>
    /// The wedge between two end faces put against each other, in degrees: the angle between the direction one looks in and
    /// the direction that the other looks away from.
    /// </summary>
    public static double WedgeDegrees(string one, string other, bool opposed)
    {
        var here = Normal(one);
        var there = PutAgainst(Normal(other), opposed);
        var cosine = -((here.X * there.X) + (here.Y * there.Y) + (here.Z * there.Z));
        return Math.Acos(Math.Clamp(cosine, -1, 1)) * 180 / Math.PI;
    }
}
