namespace PolarityMap.Drawing.Fonts;

/// <summary>The TrueType file of PolarityMap Sans that travels inside the assembly.</summary>
public static class EmbeddedFont
{
    /// <summary>The file in base 64, made once: every sheet of a set carries it.</summary>
    public static string Base64 => Made.Value;

    private static readonly Lazy<string> Made = new(() => Convert.ToBase64String(Bytes()));

    /// <summary>The bytes of the font file, read anew on each call.</summary>
    /// <exception cref="InvalidOperationException">The assembly was built without the font.</exception>
    public static byte[] Bytes()
    {
        using Stream stream = typeof(EmbeddedFont).Assembly.GetManifestResourceStream("PolarityMapSans.ttf")
            ?? throw new InvalidOperationException("The font PolarityMapSans.ttf is not embedded in this build.");
        byte[] bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }
}
