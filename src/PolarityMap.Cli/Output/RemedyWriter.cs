using PolarityMap.Cli.Input;
using PolarityMap.Core.Checks;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Remedies;
using PolarityMap.Core.Strands;
using PolarityMap.Documents;
using PolarityMap.Documents.Editing;
using PolarityMap.Documents.Text;

namespace PolarityMap.Cli.Output;

/// <summary>
/// Writes a plan into a document. The edited text is read, traced and checked again, and only when that comes to what was proved
/// does it take the place of the old one.
/// </summary>
internal sealed class RemedyWriter(CommandContext context)
{
    /// <exception cref="CallException">It cannot be written so; the document is untouched, and the message holds the lines to put in by hand.</exception>
    public void Write(string from, string to, RemedyResult result)
    {
        var source = new FileSource(context);
        if (!source.TryRead(from, TextLoader.MaxBytes, out byte[] bytes, out string why))
            throw new CallException(why);
        RemedyPlan plan = result.Plan!;
        Plant before = result.Before.Traced.Plant;
        IReadOnlyList<OverlayEntry> told = OverlayEntries.Of(before, plan.Changes);
        string reason = "";

        // A section may move plugs after those that are exchanged here; then each plug is named by its port.
        foreach (IReadOnlyList<OverlayEntry> entries in (ReadOnlySpan<IReadOnlyList<OverlayEntry>>)[told, OverlayEntries.ByPlugs(before, plan.After.Traced.Plant, plan.Changes)])
        {
            var problems = new ProblemList();
            if (OverlayEditor.Apply(bytes, from, entries, problems) is { } edited && Comes(to, edited, plan, source, problems))
            {
                using var file = new WholeFiles();
                file.Add(context.FullPath(to), edited);
                file.Commit();
                return;
            }

            if (reason.Length == 0)
                reason = problems.IsEmpty ? $"{from}: with the changes in it the document does not come to what was proved" : problems.ToString().TrimEnd();
        }

        throw new CallException($"nothing was written\n{reason}\nTo put the changes in by hand:\n{OverlayText.Section(told).TrimEnd()}");
    }

    /// <summary>True when the edited document, read at its place, is as proved.</summary>
    private bool Comes(string path, byte[] edited, RemedyPlan plan, IDocumentSource source, ProblemList problems)
    {
        Plant? plant = PlantDocument.Read(path, new EditedSource(source, path, edited), problems, context.Reading.AllowOutside);
        return plant is not null && plan.IsReachedBy(CheckReport.Of(TracedPlant.Of(plant)));
    }

    /// <summary>Hands out one document as it is edited, and all others as they are.</summary>
    private sealed class EditedSource(IDocumentSource source, string edited, byte[] text) : IDocumentSource
    {
        public bool TryRead(string path, int maxBytes, out byte[] bytes, out string why)
        {
            if (path != edited)
                return source.TryRead(path, maxBytes, out bytes, out why);
            (bytes, why) = (text, text.Length > maxBytes ? $"'{path}' would become larger than {maxBytes / 1024 / 1024} MiB" : "");
            return why.Length == 0;
        }

        public bool TryReadInside(string folder, string path, int maxBytes, out byte[] bytes, out string why) =>
            source.TryReadInside(folder, path, maxBytes, out bytes, out why);
    }
}
