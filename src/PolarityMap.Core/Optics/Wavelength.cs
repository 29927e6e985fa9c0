using System.Globalization;

namespace PolarityMap.Core.Optics;

/// <summary>A nominal wavelength in vacuum, in nanometres.</summary>
/// <param name="Nanometres">The number of nanometres.</param>
public readonly record struct Wavelength(decimal Nanometres)
{
    /// <summary>At most two decimals, such as <c>850 nm</c> or <c>1295.56 nm</c>.</summary>
    public override string ToString() => Nanometres.ToString("0.##", CultureInfo.InvariantCulture) + " nm";
}
