namespace PolarityMap.Core.Optics;

/// <summary>
/// What an application allows on one class of fibre. The loss is that of the channel: its cables, its inner matings and
/// its splices, without the matings at the transceivers. It is a tabled figure: a shorter channel is not allowed more loss,
/// and a smaller loss no greater length.
/// </summary>
/// <param name="Fibre">Name of the <see cref="FibreClass"/>.</param>
/// <param name="Distance">The greatest operating distance; null where it is not on record.</param>
/// <param name="Loss">The greatest channel insertion loss; null where it is not on record.</param>
/// <param name="ConnectionShare">The part of <paramref name="Loss"/> meant for connections and splices; null where it is not on record.</param>
/// <param name="DistanceConfidence">How well the distance is attested.</param>
/// <param name="LossConfidence">How well the loss is attested.</param>
public sealed record FibreLimit(
    string Fibre,
    Length? Distance,
    Decibel? Loss,
    Decibel? ConnectionShare,
    Confidence DistanceConfidence,
    Confidence LossConfidence)
{
    /// <summary>How well the share is attested.</summary>
    public Confidence ConnectionShareConfidence { get; init; }

    /// <summary>
    /// The greatest cable attenuation that the figures are given for; with a worse cable the distance is not specified.
    /// Null where nothing is said. One public source.
    /// </summary>
    public Attenuation? AssumedCable { get; init; }

    /// <summary>The least channel loss, below which the receiver is overloaded; null where none is on record.</summary>
    public Decibel? LeastLoss { get; init; }

    /// <summary>How well the least loss is attested.</summary>
    public Confidence LeastLossConfidence { get; init; }

    /// <summary>What else goes with this row, in words; null for nothing.</summary>
    public string? Note { get; init; }
}
