using PolarityMap.Core.Optics;

namespace PolarityMap.Core.Budget;

/// <summary>
/// What one strand loses in the direction of its light, and what it may lose. A strand that carries light both ways has two
/// of these. Matings at the two interfaces are outside a channel and not counted (802.3, two public sources).
/// </summary>
public sealed record StrandBudget
{
    /// <summary>Index of the strand.</summary>
    public required int Strand { get; init; }

    /// <summary>The position that sends.</summary>
    public required int Sender { get; init; }

    /// <summary>The position that hears.</summary>
    public required int Receiver { get; init; }

    /// <summary>What the light is for and is judged by: of a parallel port that is split, what it is split into. Null where neither end says.</summary>
    public Application? Application { get; init; }

    /// <summary>The wavelength reckoned with; null where neither the light's nor the fibre's kind is known.</summary>
    public Wavelength? Wavelength { get; init; }

    /// <summary>True when no end says its wavelength, so that 850 nm for multimode or 1310 nm for single-mode is taken.</summary>
    public bool WavelengthIsAssumed { get; init; }

    /// <summary>The lowest class of fibre along the strand, or null where no part states one.</summary>
    public FibreClass? Fibre { get; init; }

    /// <summary>How many cables state no class of fibre; they are taken to be of <see cref="Fibre"/>.</summary>
    public int FibresMissing { get; init; }

    /// <summary>Length of the cables that state one. Kept at 1,000 km where they come to more.</summary>
    public Length Length { get; init; }

    /// <summary>How many cables state no length: the length and the loss are then at least so much.</summary>
    public int LengthsMissing { get; init; }

    /// <summary>The largest loss that the standard's limits allow these parts.</summary>
    public LossSum Standard { get; init; }

    /// <summary>
    /// The largest loss by what the parts state, and by the standard where they do not: the figure that is judged. A mating
    /// counts as stated only when both of its connectors state a loss, since a low-loss plug proves nothing in an unknown one.
    /// </summary>
    public LossSum Stated { get; init; }

    /// <summary>What good work is expected to lose, never more than <see cref="Stated"/>.</summary>
    public LossSum Expected { get; init; }

    /// <summary>True when a length has no attenuation because its fibre is not known: the losses are then at least so much.</summary>
    public bool FibreLossIsUnknown { get; init; }

    /// <summary>The largest attenuation of any of its cables, by statement or class; null where none is known.</summary>
    public Attenuation? WorstCable { get; init; }

    /// <summary>What the application allows on the lowest class, by the plant's limits; null where that is not known.</summary>
    public FibreLimit? Limit { get; init; }

    /// <summary>The same by the default limits, those of IEEE 802.3.</summary>
    public FibreLimit? DefaultLimit { get; init; }

    /// <summary>Why there is no loss limit.</summary>
    public LimitGap Gap { get; init; }

    /// <summary>One way; null where a cable's fibre and so its group index is not known.</summary>
    public Delay? Delay { get; init; }

    /// <summary>The most it may lose.</summary>
    public Decibel? LossLimit => Limit?.Loss;

    /// <summary>What is left of the limit by the stated figure; below zero when it is over.</summary>
    public Decibel? Margin => LossLimit is { } limit ? Stated.MarginTo(limit) : null;

    /// <summary>How far the application reaches on this fibre.</summary>
    public Length? DistanceLimit => Limit?.Distance;

    /// <summary>By how much it is too long, or null.</summary>
    public Length? LengthOver => DistanceLimit is { } limit && Length > limit ? Length.FromMillimetres(Length.Millimetres - limit.Millimetres) : null;

    /// <summary>True when the stated figure is over the limit.</summary>
    public bool IsOverLoss => LossLimit is { } limit && Stated.Total > limit;

    /// <summary>True when matings and splices alone are over the limit, so that no length of cable would fit.</summary>
    public bool HasTooManyMatings => LossLimit is { } limit && Stated.Connections > limit;

    /// <summary>True when it is longer than the application reaches.</summary>
    public bool IsTooLong => LengthOver is not null;

    /// <summary>True when loss or length is over its limit.</summary>
    public bool Exceeds => IsOverLoss || IsTooLong;

    /// <summary>True when it fits by what the parts state and would not by the standard's largest losses.</summary>
    public bool FailsByStandard => LossLimit is { } limit && Stated.Total <= limit && Standard.Total > limit;

    /// <summary>True when it fits by the plant's limits and not by those of IEEE 802.3.</summary>
    public bool FitsByOtherLimitOnly => !IsOverLoss && DefaultLimit?.Loss is { } limit && Stated.Total > limit && LossLimit is not null;

    /// <summary>True when a cable is worse than the application's distance assumes, so that no distance is specified.</summary>
    public bool HasWorseCable => Limit?.AssumedCable is { } assumed && WorstCable is { } worst && worst > assumed;

    /// <summary>True when so little is expected to be lost that the receiver may be overloaded.</summary>
    public bool IsBelowLeastLoss => Limit?.LeastLoss is { } least && Expected.Total < least;
}
