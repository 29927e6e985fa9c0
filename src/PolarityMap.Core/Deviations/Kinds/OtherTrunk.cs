namespace PolarityMap.Core.Deviations.Kinds;

/// <summary>A trunk of another type, with all its legs (trade facts, causes 4 and 5).</summary>
internal sealed class OtherTrunk() : CableOfOtherType("trunk")
{
    public override string Name => "other-trunk";

    public override string Title => "trunk of another type";

    public override string Symptom => "Every pair or lane of the trunk is wrong in the same way: all of it is dark, or mirrored, so that port 1 shows at port 6 with 12 fibres.";

    public override double Weight => 4;

    public override int MendMinutes => 45;
}
