using System.Text;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Planning;
using PolarityMap.Core.Plants;
using PolarityMap.Documents.Binding;

namespace PolarityMap.Documents.Planning;

/// <summary>Writes a planned plant as a plant document: short, as a person would, with what was decided and why as comments.</summary>
public static class PlanDocument
{
    private const int Width = 118;

    /// <summary>The document. The ordinary reader reads it as the plant that was proven.</summary>
    /// <param name="planned">The plant.</param>
    /// <param name="partsList">Lines for the end of the document, such as <c>16 A-to-B cord 2 m</c>.</param>
    public static string Write(PlannedPlant planned, IReadOnlyList<string> partsList)
    {
        var text = new StringBuilder();
        Head(text, planned);
        Networks(text, planned);
        Defaults(text, planned);
        Types(text, planned);
        Parts(text, planned);
        Runs(text, planned);
        Links(text, planned);
        text.Append("\n# Parts:\n");
        foreach (string line in partsList)
            Comment(text, line, "#   ", "#       ");
        return text.ToString();
    }

    private static void Head(StringBuilder text, PlannedPlant planned)
    {
        text.Append("# Planned from a brief, traced and checked. What was decided, and why:\n");
        foreach (PlanDecision decision in planned.Decisions)
            Comment(text, $"{decision.What} ({decision.Why}).", "# - ", "#   ");
        PlantTitle title = planned.Brief.Title;
        text.Append('\n');
        Line(text, DocumentKeys.Plant, title.Title);
        Line(text, DocumentKeys.Site, title.Site);
        Line(text, DocumentKeys.Number, title.Number);
        Line(text, DocumentKeys.Revision, title.Revision);
        Line(text, DocumentKeys.Date, title.Date);
        Line(text, DocumentKeys.Author, title.Author);
    }

    private static void Networks(StringBuilder text, PlannedPlant planned)
    {
        if (planned.Networks.Count == 0)
            return;
        text.Append('\n').Append(DocumentKeys.Networks).Append(":\n");
        foreach (Network network in planned.Networks)
        {
            var words = new List<string>();
            if (network.Colour is { } colour)
                words.Add($"{DocumentKeys.Colour}: {AttributeWords.Quoted(colour)}");
            if (network.Key is { } key)
                words.Add($"{DocumentKeys.Key}: {AttributeWords.Quoted(key)}");
            if (network.PlainFits)
                words.Add($"{DocumentKeys.PlainFits}: yes");
            if (network.MayShare is { } shared)
                words.Add($"{DocumentKeys.MayShare}: {(shared.Count == 0 ? NetworkReader.Nothing : $"[{string.Join(", ", shared.Select(s => s.Word()))}]")}");
            text.Append("  ").Append(network.Name).Append(words.Count == 0 ? ":" : $": {{ {string.Join(", ", words)} }}").Append('\n');
        }
    }

    private static void Defaults(StringBuilder text, PlannedPlant planned)
    {
        var words = new List<string> { $"{DocumentKeys.Fibre}: {planned.Brief.Fibre.Name}" };
        if (planned.Defaults.TrunksArePinned)
            words.Add($"{DocumentKeys.Pins}: {DefaultsReader.PinWords[1]}");
        if (planned.Practice.Limits != Core.Optics.LimitProfile.Default)
            words.Add($"{DocumentKeys.Limits}: {planned.Practice.Limits.Name}");
        if (planned.Practice.Margin is { } margin)
            words.Add($"{DocumentKeys.Margin}: {margin.Value.ToString(System.Globalization.CultureInfo.InvariantCulture)} dB");
        text.Append('\n').Append(DocumentKeys.Defaults).Append($": {{ {string.Join(", ", words)} }}\n");
    }

    private static void Types(StringBuilder text, PlannedPlant planned)
    {
        if (!planned.Types.Any(t => t.IsWritten))
            return;
        text.Append('\n').Append(DocumentKeys.Types).Append(":\n");
        foreach (PlannedType type in planned.Types.Where(t => t.IsWritten))
        {
            string own = AttributeWords.Line(type.Kind, type.Own, type.Shape, a => !type.Own.Has(a));
            text.Append("  ").Append(type.Name).Append($": {{ {DocumentKeys.Kind}: {type.Of}, {own} }}\n");
        }
    }

    private static void Parts(StringBuilder text, PlannedPlant planned)
    {
        text.Append('\n').Append(DocumentKeys.Parts).Append(":\n");
        foreach (PlannedSection section in planned.Sections)
        {
            text.Append("  # ").Append(section.Heading).Append('\n');
            foreach (PlannedPart part in section.Families.SelectMany(f => f.Lines))
                Part(text, planned, part);
        }
    }

    private static void Part(StringBuilder text, PlannedPlant planned, PlannedPart part)
    {
        var words = new List<string> { $"{DocumentKeys.Kind}: {part.Type.Name}" };
        if (part.Spare.Count > 0)
            words.Add($"spare: {(part.Spare.Count == 1 ? $"{part.Spare[0]}" : part.Spare[^1] - part.Spare[0] == part.Spare.Count - 1 ? $"{part.Spare[0]}..{part.Spare[^1]}" : $"[{string.Join(", ", part.Spare)}]")}");
        if (part.Network >= 0)
            words.Add($"network: {AttributeWords.Quoted(planned.Networks[part.Network].Name)}");
        if (part.PortNetworks.Count > 0)
            words.Add($"networks: [{string.Join(", ", part.PortNetworks.Select(n => AttributeWords.Quoted(planned.Networks[n].Name)))}]");
        if (part.Room is { } room)
            words.Add($"room: {AttributeWords.Quoted(room)}");
        if (part.Note is { } note)
            words.Add($"note: {AttributeWords.Quoted(note)}");
        text.Append("  ").Append(part.Name).Append(words.Count == 1 ? $": {part.Type.Name}" : $": {{ {string.Join(", ", words)} }}").Append('\n');
    }

    private static void Runs(StringBuilder text, PlannedPlant planned)
    {
        text.Append('\n').Append(DocumentKeys.Runs).Append(":\n");
        foreach (PlannedSection section in planned.Sections.Where(s => s.Runs.Count > 0))
        {
            text.Append("  # ").Append(section.Heading).Append('\n');
            foreach (PlannedRun run in section.Runs)
            {
                foreach ((int start, int length) in InStep.Stretches([.. run.Stops.Where(s => s.Cord is null)]))
                    text.Append("  - ").AppendJoin(", ", run.Stops.Select(s => s.Cord is { } cord ? $"{cord.Name} {s.Length}" : InStep.Address(s, start, length))).Append('\n');
            }
        }
    }

    private static void Links(StringBuilder text, PlannedPlant planned)
    {
        text.Append('\n').Append(DocumentKeys.Links).Append(":\n");
        foreach (PlannedLinks links in planned.Sections.SelectMany(s => s.Links))
        {
            foreach ((int start, int length) in InStep.Stretches([links.From, links.To]))
                text.Append("  - ").Append(InStep.Address(links.From, start, length)).Append(" to ").Append(InStep.Address(links.To, start, length)).Append('\n');
        }
    }

    private static void Line(StringBuilder text, string key, string? value)
    {
        if (value is not null)
            text.Append(key).Append(": ").Append(AttributeWords.Quoted(value)).Append('\n');
    }

    /// <summary>A comment in lines of a bounded width.</summary>
    private static void Comment(StringBuilder text, string words, string first, string others)
    {
        int column = 0;
        foreach (string word in words.Split(' '))
        {
            bool begins = column == 0;
            if (!begins && column + 1 + word.Length > Width)
            {
                text.Append('\n').Append(others);
                column = others.Length;
            }
            else
            {
                text.Append(begins ? first : " ");
                column += begins ? first.Length : 1;
            }

            text.Append(word);
            column += word.Length;
        }

        text.Append('\n');
    }
}
