using PolarityMap.Core.Checks;
using PolarityMap.Core.Parts;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>What is on a sheet that its legend has to explain.</summary>
[Flags]
internal enum SheetSigns
{
    None = 0,

    /// <summary>A and B of duplex ports.</summary>
    Duplex = 1,

    /// <summary>Connectors with the key up.</summary>
    Arrays = 2,

    /// <summary>Connectors with the key down.</summary>
    Turned = 4,

    /// <summary>Strands that go on in the next band.</summary>
    Rings = 8,

    /// <summary>Strands that go on on another sheet.</summary>
    Cuts = 16,

    OpenEnds = 32,

    /// <summary>Strands drawn wide because of a finding.</summary>
    Wide = 64,

    Errors = 128,

    Warnings = 256,

    /// <summary>Arrowheads at transmitters and receivers.</summary>
    Light = 512,

    /// <summary>Dashed lines where faulty strands should go.</summary>
    Expected = 1024,

    /// <summary>A part that a proved remedy changes.</summary>
    Change = 2048,

    /// <summary>Dots where positions of an array are left out.</summary>
    LeftOut = 4096,

    /// <summary>Lines that cross.</summary>
    Crossings = 8192,

    /// <summary>Suspect parts, and the ends of a test.</summary>
    Notes = 16384,

    /// <summary>Array connectors with guide pins.</summary>
    Pins = 32768,

    /// <summary>Array connectors with holes for them.</summary>
    Holes = 65536,
}

/// <summary>Finds what is on a sheet.</summary>
internal static class SheetSignsOf
{
    /// <summary>The signs of a layout, rings and bands aside, which depend on the paper.</summary>
    public static SheetSigns Layout(StrandHops hops, ViewInput input, Layout layout)
    {
        SheetSigns signs = SheetSigns.None;
        foreach (Finding finding in input.Findings)
        {
            signs |= finding.Rule.Severity switch
            {
                Severity.Error => SheetSigns.Errors,
                Severity.Warning => SheetSigns.Warnings,
                _ => SheetSigns.Notes,
            };
            if (finding.Strands.Count > 0)
                signs |= SheetSigns.Wide;
        }

        if (layout.Expected.Count > 0)
            signs |= SheetSigns.Expected | SheetSigns.Crossings;
        if (layout.Between.Any(Crosses) || layout.Columns.Any(c => c.Any(n => n.Inside is { } inside && Crosses(inside))))
            signs |= SheetSigns.Crossings;
        HashSet<int> changed = ChangedParts.Of(input);
        if (changed.Count > 0 && layout.Columns.Any(c => c.Any(n => changed.Contains(n.Part))))
            signs |= SheetSigns.Change;
        int visit = hops.NextVisit();
        foreach (Way way in layout.Ways)
        {
            if (way.ComesIn || way.GoesOn)
                signs |= SheetSigns.Cuts;
            if ((way.Passages[0].In is not null && !way.ComesIn) || (way.Passages[^1].Out is not null && !way.GoesOn))
                signs |= hops.Traced.Strands.IsLoop(way.Strand) ? SheetSigns.Rings : SheetSigns.OpenEnds;
            foreach (Passage passage in way.Passages)
            {
                if (passage.Node is null)
                    continue;
                signs |= passage.In is { } into ? Of(into) : SheetSigns.None;
                signs |= passage.Out is { } from ? Of(from) : SheetSigns.None;
            }

            // A strand that ends inside a part has the bar of an open end too.
            if (way.Passages[^1] is { Out: null, In: { } last } && last.Lane is null)
                signs |= SheetSigns.OpenEnds;
        }

        return signs;

        static bool Crosses(Crossing crossing)
        {
            for (int i = 1; i < crossing.Rows.Count; i++)
            {
                if (crossing.Rows[i].Right.Slot < crossing.Rows[i - 1].Right.Slot)
                    return true;
            }

            return false;
        }

        SheetSigns Of(Row row)
        {
            DrawnPort port = row.Port;
            if (port.Visit == visit)
                return SheetSigns.None;
            port.Visit = visit;
            return port.Shape.Face.Family switch
            {
                ConnectorFamily.Duplex => SheetSigns.Duplex,
                _ => SheetSigns.None,
            };
        }
    }
}
