namespace PolarityMap.Core.Deviations.Kinds;

/// <summary>An array cord of another type: as the wrong cord of a duplex link, but for all lanes of one port (trade facts, causes 2, 4 and 5).</summary>
internal sealed class OtherArrayCord() : CableOfOtherType("array cord")
{
    public override string Name => "other-array-cord";

    public override string Title => "array cord of another type";

    public override string Symptom => "All lanes of one parallel port are dark at both ends, and all transmitters send.";

    public override double Weight => 10;

    public override int MendMinutes => 3;
}
