using PolarityMap.Core.Optics;
using PolarityMap.Core.Plants;
using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.Overview;

/// <summary>The colours of networks, as far as their words are known.</summary>
internal static class NetworkColours
{
    /// <summary>The colour of a network's word, or null when it has none or it is not known.</summary>
    public static Colour? Of(Network network)
    {
        if (network.Colour is not { Length: > 0 } word || ColourSequence.Own("network", [word], out _) is not { } found)
            return null;
        int rgb = found[1].Rgb;
        return new Colour((byte)(rgb >> 16), (byte)(rgb >> 8), (byte)rgb);
    }
}
