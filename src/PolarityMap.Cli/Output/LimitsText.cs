using PolarityMap.Core.Budget;
using PolarityMap.Core.Optics;

namespace PolarityMap.Cli.Output;

/// <summary>The loss formula with every limit of every profile, for people.</summary>
internal static class LimitsText
{
    private const int SubjectWidth = 28;

    public static void Write(CommandContext context)
    {
        TextWriter output = context.Out;
        var paint = new Paint(context.Colour);
        output.WriteLine(paint.Strong("budget: loss and reach of a strand"));
        Wrapped.Write(output, $"loss = {LossSum.Formula} ({LossSum.Source}).");
        Wrapped.Write(output, "A mating is a pair of connectors that meet along the strand: a panel adapter is one, a cassette two, its rear and its front. The matings "
            + "at the interfaces are outside the channel and not counted (IEEE 802.3, 1 public source, common practice). A strand fits when its loss and its length are within what the "
            + "application allows on the lowest class of fibre along it. A shorter strand is allowed no greater loss, and a smaller loss no greater length.");
        Paragraph("standard", "Every part at the largest loss that the limits below allow it.");
        Paragraph("stated", "A part's own attenuation, loss and splice loss where it states them, the standard's largest where it does not. A mating counts as stated only "
            + "when both of its connectors state a loss, and then the larger counts. This is the figure that is judged.");
        Paragraph("expected", "The expected loss that both connectors of a mating state, else the estimates at the end; never above the stated figure.");
        Paragraph("acceptance", "Limit for a light-source test of the fixed part, without the outermost cords: 2 x reference plug + fibre + inner matings + splices "
            + "(ISO/IEC 14763-3, 1 public source). One-cord reference: the result holds both end matings "
            + $"({string.Join(", ", Methods())}; names from memory).");
        Paragraph("delay", "Length x group index / 0.299792458 nanoseconds, one way, length in metres; 'polaritymap explain OM4' has the index of a class.");
        foreach (LimitProfile profile in LimitProfile.All)
        {
            output.WriteLine();
            output.WriteLine(paint.Strong(profile == LimitProfile.Default ? $"{profile.Name} (the default)" : profile.Name));
            Wrapped.Write(output, $"{profile.Meaning}. Documents: {profile.Source}.");
            foreach (LimitRow row in LimitRows.Of(profile))
                WriteRow(output, row);
            WriteDifferences(output, profile);
        }

        output.WriteLine();
        output.WriteLine(paint.Strong("estimates"));
        foreach (LimitRow row in LimitRows.Estimates())
            WriteRow(output, row);
        output.WriteLine();
        Wrapped.Write(output, "'polaritymap explain 10GBASE-SR' tells what an application allows, 'polaritymap explain OM4' what a class of fibre may lose.", "");

        void Paragraph(string word, string text) => Wrapped.Write(output, text, $"  {word,-12}");
    }

    /// <summary>One row: the subject, the figure, and what it rests on.</summary>
    public static void WriteRow(TextWriter output, LimitRow row) =>
        Wrapped.Write(output, row.Origin, $"  {row.Subject.PadRight(SubjectWidth)}{row.Printed,10}  ");

    /// <summary>The channel limits of applications where they are not those of the default profile.</summary>
    private static void WriteDifferences(TextWriter output, LimitProfile profile)
    {
        foreach (Core.Optics.Application application in Core.Optics.Application.All)
        {
            foreach (FibreLimit limit in application.Limits(profile))
            {
                if (application.Limit(LimitProfile.Default, limit.Fibre) is { } other && other.Loss != limit.Loss)
                    Wrapped.Write(output, $"{limit.LossConfidence}; IEEE 802.3 has {other.Loss}, {other.LossConfidence}", $"  {$"{application.Name} on {limit.Fibre}".PadRight(SubjectWidth)}{limit.Loss,10}  ");
            }
        }
    }

    private static IEnumerable<string> Methods()
    {
        foreach (LimitProfile profile in (LimitProfile[])[LimitProfile.Default, LimitProfile.All[^1]])
        {
            yield return ReferenceMethod.Name(profile, multimode: true);
            yield return ReferenceMethod.Name(profile, multimode: false);
        }
    }
}
