namespace PolarityMap.Core.Tests.Oracles;

/// <summary>Two end faces in a mating and the wedge of air that stays between them, in degrees.</summary>
public sealed record WedgeRow(string One, string Other, string Keys, double Degrees);

/// <summary>End faces of arrays against each other, typed. Nothing here is computed.</summary>
public static class WedgeTable
{
    // Source: trade facts 7.2 and 10, computed there for 8 degrees: two down-angled plugs 0 opposed and 16 aligned, down- with
    // up-angled 16 opposed and 0 aligned, flat with angled 8; two up-angled plugs need opposed keys again; flat fits in both.
    public static readonly IReadOnlyList<WedgeRow> Rows =
    [
        new("flat", "flat", "opposed", 0),
        new("flat", "flat", "aligned", 0),
        new("angled", "angled", "opposed", 0),
        new("angled", "angled", "aligned", 16),
        new("up-angled", "up-angled", "opposed", 0),
        new("up-angled", "up-angled", "aligned", 16),
        new("angled", "up-angled", "opposed", 16),
        new("angled", "up-angled", "aligned", 0),
        new("flat", "angled", "opposed", 8),
        new("flat", "angled", "aligned", 8),
        new("flat", "up-angled", "opposed", 8),
        new("flat", "up-angled", "aligned", 8),
    ];
}
