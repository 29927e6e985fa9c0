using PolarityMap.Core.Plants;
using PolarityMap.Documents.Binding;
using PolarityMap.Documents.Text;

namespace PolarityMap.Documents;

/// <summary>Reads plant documents.</summary>
public static class PlantDocument
{
    /// <summary>The flag that lets documents refer to files outside their folder; messages name it.</summary>
    public const string AllowOutsideFlag = "--allow-outside";

    /// <summary>
    /// Reads a document and everything it refers to. Problems carry their places; the plant is null when there is one.
    /// Never throws for the content of a document.
    /// </summary>
    /// <param name="path">The document.</param>
    /// <param name="source">Where documents come from.</param>
    /// <param name="problems">Takes what is wrong.</param>
    /// <param name="allowOutside">Whether a document may refer to files outside its folder.</param>
    public static Plant? Read(string path, IDocumentSource source, ProblemList problems, bool allowOutside = false)
    {
        var references = new References(source, problems, allowOutside);
        if (references.First(path) is not { } root)
            return null;
        if (root.Find(DocumentKeys.Catalogue) is { } title && root.Find(DocumentKeys.Plant) is null && root.Find(DocumentKeys.Design) is null)
        {
            problems.Add(title.Place, "this is a catalogue file, not a plant", $"a plant document that names it under '{DocumentKeys.Include}:'");
            return null;
        }

        var binder = new PlantBinder(problems);
        if (root.Find(DocumentKeys.Design) is not { } design)
        {
            binder.Bind(root, references.Catalogues(path, root));
            return binder.Finish();
        }

        if (references.Design(path, design) is not var (designPath, designRoot))
            return null;
        if (designRoot.Find(DocumentKeys.Design) is { } again)
        {
            problems.Add(again.Place, "the design of an as-built document is a plant of its own, not another as-built document");
            return null;
        }

        binder.Bind(designRoot, references.Catalogues(designPath, designRoot));
        binder.BindOverlay(root);
        return binder.Finish();
    }
}
