namespace PolarityMap.Drawing.Fonts;

/// <summary>
/// Advance widths of PolarityMapSans.ttf in thousandths of an em; 0 stands for a character the font lacks.
/// </summary>
/// <remarks>
/// Generated from the font: for every code point of the blocks below the glyph from table <c>cmap</c>, then its
/// advance from table <c>hmtx</c> (1000 units per em). The font itself was made from the regular weight of the
/// family named in OFL.txt by <c>pyftsubset FONT.ttf
/// --unicodes=U+0020-007E,U+00A0-017F,U+0370-03FF,U+2010-2026,U+2126,U+2190-2199,U+2212,U+2264,U+2265,U+25A0-25CF,U+2713
/// --layout-features=kern,mark,ccmp --no-hinting --name-IDs=0,1,2,3,4,5,6,13,14</c>, and renamed on name records
/// 1 to 6, 16 and 17, because the licence reserves the old name. A test reads the embedded font and compares
/// every entry.
/// </remarks>
internal static class FontAdvances
{
    /// <summary>Height of a capital, from table OS/2.</summary>
    internal const int CapHeight = 660;

    /// <summary>Advance of a figure; all ten are equal.</summary>
    internal const int Figure = 497;

    /// <summary>Advance of one UTF-16 unit, or 0 when the font has no glyph for it.</summary>
    internal static int Of(char c) => c switch
    {
        >= '\u0020' and <= '\u007E' => BasicLatin[c - '\u0020'],
        >= '\u00A0' and <= '\u017F' => LatinSupplement[c - '\u00A0'],
        >= '\u0374' and <= '\u03F8' => Greek[c - '\u0374'],
        >= '\u2010' and <= '\u2026' => Punctuation[c - '\u2010'],
        >= '\u2190' and <= '\u2199' => Arrows[c - '\u2190'],
        >= '\u25A0' and <= '\u25CF' => Shapes[c - '\u25A0'],
        '\u2126' => 678,
        '\u2212' => 497,
        '\u2264' => 497,
        '\u2265' => 497,
        '\u2713' => 612,
        _ => 0,
    };

    private static ReadOnlySpan<ushort> BasicLatin =>
    [
        200, 289, 426, 497, 497, 824, 609, 249, 303, 303, 418, 497, 249, 311, 249, 350,
        497, 497, 497, 497, 497, 497, 497, 497, 497, 497, 249, 249, 497, 497, 497, 425,
        847, 544, 588, 571, 615, 527, 494, 617, 652, 263, 480, 579, 486, 727, 647, 664,
        566, 664, 569, 534, 536, 645, 515, 786, 513, 476, 539, 303, 350, 303, 497, 500,
        542, 504, 553, 456, 555, 496, 292, 504, 544, 246, 247, 495, 255, 829, 547, 542,
        555, 555, 347, 419, 338, 544, 467, 719, 446, 467, 425, 303, 241, 303, 497,
    ];

    private static ReadOnlySpan<ushort> LatinSupplement =>
    [
        200, 289, 497, 497, 497, 497, 241, 497, 542, 744, 345, 429, 497, 311, 423, 542,
        331, 497, 367, 367, 542, 562, 560, 249, 542, 367, 365, 429, 781, 808, 796, 425,
        544, 544, 544, 544, 544, 544, 822, 571, 527, 527, 527, 527, 263, 263, 263, 263,
        639, 647, 664, 664, 664, 664, 664, 497, 664, 645, 645, 645, 645, 476, 583, 576,
        504, 504, 504, 504, 504, 504, 778, 456, 496, 496, 496, 496, 246, 246, 246, 246,
        544, 547, 542, 542, 542, 542, 542, 497, 542, 544, 544, 544, 544, 467, 555, 467,
        544, 504, 544, 504, 544, 504, 571, 456, 571, 456, 571, 456, 571, 456, 615, 573,
        635, 562, 527, 496, 527, 496, 527, 496, 527, 496, 527, 496, 617, 504, 617, 504,
        617, 504, 617, 504, 652, 544, 692, 557, 263, 246, 263, 246, 263, 246, 263, 246,
        263, 246, 526, 493, 480, 247, 579, 495, 495, 486, 255, 486, 255, 486, 265, 486,
        362, 500, 298, 647, 547, 647, 547, 647, 547, 769, 635, 547, 664, 542, 664, 542,
        664, 542, 847, 839, 569, 347, 569, 347, 569, 347, 534, 419, 534, 419, 534, 419,
        534, 419, 536, 338, 536, 338, 536, 338, 645, 544, 645, 544, 645, 544, 645, 544,
        645, 544, 645, 544, 786, 718, 476, 467, 476, 539, 425, 539, 425, 539, 425, 271,
    ];

    private static ReadOnlySpan<ushort> Greek =>
    [
        249, 249, 0, 0, 0, 0, 542, 0, 0, 0, 249, 0, 0, 0, 0, 0,
        542, 542, 573, 249, 611, 736, 347, 0, 741, 0, 604, 745, 262, 544, 588, 498,
        588, 527, 539, 652, 664, 263, 579, 515, 727, 647, 533, 664, 645, 566, 0, 538,
        536, 476, 719, 513, 699, 678, 263, 476, 560, 448, 541, 262, 510, 560, 565, 484,
        531, 448, 424, 541, 522, 262, 494, 494, 562, 474, 431, 535, 586, 549, 432, 546,
        458, 510, 680, 481, 689, 701, 262, 510, 535, 510, 701, 585, 556, 522, 0, 0,
        0, 680, 0, 522, 0, 535, 0, 466, 0, 413, 0, 0, 0, 498, 0, 0,
        0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0,
        664, 0, 0, 555, 528,
    ];

    private static ReadOnlySpan<ushort> Punctuation =>
    [
        311, 311, 497, 480, 800, 800, 391, 500, 249, 249, 249, 249, 426, 426, 426, 0,
        454, 454, 304, 304, 0, 0, 948,
    ];

    private static ReadOnlySpan<ushort> Arrows =>
    [
        619, 619, 619, 619, 619, 619, 619, 619, 619, 619,
    ];

    private static ReadOnlySpan<ushort> Shapes =>
    [
        600, 600, 0, 0, 0, 0, 0, 0, 0, 0, 304, 304, 304, 0, 0, 0,
        0, 0, 600, 600, 304, 304, 600, 600, 304, 304, 600, 0, 600, 600, 304, 304,
        600, 600, 304, 304, 600, 0, 600, 0, 0, 600, 517, 600, 585, 0, 0, 600,
    ];
}
