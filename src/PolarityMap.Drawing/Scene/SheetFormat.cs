namespace PolarityMap.Drawing.Scene;

/// <summary>A trimmed sheet size in mm (ISO 216 and ASME Y14.1).</summary>
public sealed record SheetFormat
{
    private SheetFormat(string name, double widthMm, double heightMm)
    {
        Name = name;
        WidthMm = widthMm;
        HeightMm = heightMm;
    }

    /// <summary>The longest side of a sheet: 100 m, a bound against slips only.</summary>
    public const double MaxMm = 100_000;

    /// <summary>The name of every sheet that has no standard size.</summary>
    public const string OwnSize = "Custom";

    /// <summary>ISO 216 A5, for the smallest figures; its width just takes the title block.</summary>
    public static SheetFormat A5Landscape => new("A5", 210, 148);

    /// <summary>ISO 216 A5 upright, for a card of a link.</summary>
    public static SheetFormat A5Portrait => new("A5", 148, 210);

    /// <summary>ISO 216 A6 upright, for a card of a strand.</summary>
    public static SheetFormat A6Portrait => new("A6", 105, 148);

    public static SheetFormat A4Portrait => new("A4", 210, 297);

    public static SheetFormat A4Landscape => new("A4", 297, 210);

    public static SheetFormat A3Portrait => new("A3", 297, 420);

    public static SheetFormat A3Landscape => new("A3", 420, 297);

    public static SheetFormat LetterPortrait => new("Letter", 215.9, 279.4);

    public static SheetFormat LetterLandscape => new("Letter", 279.4, 215.9);

    public static SheetFormat TabloidPortrait => new("Tabloid", 279.4, 431.8);

    public static SheetFormat TabloidLandscape => new("Tabloid", 431.8, 279.4);

    public string Name { get; }

    public double WidthMm { get; }

    public double HeightMm { get; }

    public bool IsLandscape => WidthMm > HeightMm;

    /// <summary>
    /// Sheets of desk size carry zone marks along the top and the right only (ISO 5457 for A4, from memory).
    /// </summary>
    public bool HasZonesOnAllSides => Math.Max(WidthMm, HeightMm) > 300;

    /// <summary>A sheet of another size.</summary>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The sheet is too small for frame and title block (210 by 100 mm), or longer than <see cref="MaxMm"/>.
    /// </exception>
    public static SheetFormat Custom(double widthMm, double heightMm)
    {
        if (!(widthMm >= 210 && widthMm <= MaxMm))
            throw new ArgumentOutOfRangeException(nameof(widthMm), widthMm, $"A sheet is 210 to {MaxMm} mm wide.");
        if (!(heightMm >= 100 && heightMm <= MaxMm))
            throw new ArgumentOutOfRangeException(nameof(heightMm), heightMm, $"A sheet is 100 to {MaxMm} mm high.");
        return new SheetFormat(OwnSize, widthMm, heightMm);
    }
}
