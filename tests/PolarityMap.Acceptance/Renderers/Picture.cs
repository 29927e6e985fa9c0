namespace PolarityMap.Acceptance.Renderers;

/// <summary>An opaque picture, three bytes a pixel: red, green, blue.</summary>
internal sealed record Picture(int Width, int Height, byte[] Pixels)
{
    public (byte R, byte G, byte B) At(int x, int y)
    {
        int i = ((y * Width) + x) * 3;
        return (Pixels[i], Pixels[i + 1], Pixels[i + 2]);
    }
}
