using PolarityMap.Core.Optics;

namespace PolarityMap.Core.Budget;

/// <summary>
/// The most that a light-source test may read from one place of a plant to another, by what is stated of the parts between: a
/// test cord is plugged in at each end, and both end matings are in the result, as in <see cref="AcceptanceLimit"/>.
/// </summary>
/// <param name="Inner">What the parts and the matings between them may lose.</param>
/// <param name="ReferencePlug">What the mating with a test cord may add at each end.</param>
/// <param name="Plugs">How many ends have one: 2, or fewer where the way ends in bare fibre.</param>
/// <param name="Wavelength">The test wavelength that loses most, or null where the fibre is not known.</param>
/// <param name="LengthsMissing">How many cables state no length: the limit should be greater by what they lose.</param>
/// <param name="FibreLossIsUnknown">True when a length has no attenuation because its fibre is not known; as before.</param>
public sealed record WayLimit(LossSum Inner, Decibel ReferencePlug, int Plugs, Wavelength? Wavelength, int LengthsMissing, bool FibreLossIsUnknown)
{
    public Decibel Limit => Inner.Total + (Plugs * ReferencePlug);
}
