namespace PolarityMap.Core.Schedules;

/// <summary>A step or a caution for work in the field.</summary>
/// <param name="Text">One or two sentences.</param>
/// <param name="Source">How well it is attested: <c>common practice</c> or a standard.</param>
public sealed record FieldNote(string Text, string Source);

/// <summary>
/// What stands beside the field-termination work sheet. It replaces no training, no maker's instructions and no local rules.
/// </summary>
public static class FieldTerminationNotes
{
    private const string Practice = "common practice";

    /// <summary>What can hurt someone, said before any step.</summary>
    public static IReadOnlyList<FieldNote> Cautions { get; } =
    [
        new("Never look into a fibre end or a connector, and never through a microscope without a filter: treat every fibre as lit until it is proven dark and locked off. The light is invisible.", Practice),
        new("Fibre ends are glass needles. Wear safety glasses, cut over a dark mat, put every shard into a closed container with a label, and neither eat nor drink where you cut.", Practice),
        new("Cleaning alcohol burns and its vapour harms: work in moving air, away from sparks, and let it dry before a fusion splicer strikes its arc. Follow the sheet that comes with it.", Practice),
        new("Metal in a cable has to be bonded to earth, and the cable's fire class has to suit its way. Leave both to those who are licensed for them.", Practice),
        new("Local codes, the site's own rules and the makers' instructions come before this sheet.", Practice),
    ];

    /// <summary>The steps, in order.</summary>
    public static IReadOnlyList<FieldNote> Preparation { get; } =
    [
        new("Compare this sheet with the label on the cable at both ends before anything is cut. If they differ, stop and ask.", Practice),
        new("Leave enough spare cable to reach the bench and to do the work again, and keep every bend wider than the maker's smallest radius.", Practice),
        new("Open the jacket to the length that the housing asks for, without touching the units inside, and clean away gel with what the maker names.", Practice),
        new("Tie the strength members down first: the fibres must carry no pull.", Practice),
        new("Lay the fibres out in the order of their colours and read the colours aloud against the sheet, unit by unit.", Practice),
        new("Put the splice protector or the connector's boot onto the fibre before it is stripped.", Practice),
        new("Strip the coating in short pulls, wipe the glass once with a fresh lint-free wipe and alcohol, and touch it no more.", Practice),
        new("Cleave square; throw a bad cleave away and begin again.", Practice),
        new("Splice, or mount the connector, as its maker says, and write the splicer's estimate down: it is a first check and no measurement.", Practice),
        new("Protect the joint, store the fibre in its tray in the order of the sheet, and close the housing.", Practice),
        new("Inspect every end face, clean it, and inspect it again before it meets another; cover it at once.", Practice),
        new("Test the strand from both ends, fill in the test sheet, and put the label on.", Practice),
    ];
}
