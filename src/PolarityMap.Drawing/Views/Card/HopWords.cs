using System.Text;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Drawing.Views.Card;

/// <summary>A row of a card in words, for those who cannot see it.</summary>
internal static class HopWords
{
    /// <summary>
    /// For example <c>Hop 3 of 7: K-L, cassette straight; strand 1 enters 1:B, leaves rear:2, light there at place 2 of 12</c>.
    /// </summary>
    public static string Of(TracedPlant traced, CardStrip strip, CardRow row, int index)
    {
        Part part = traced.Plant.Parts[row.Part];
        var words = new StringBuilder($"Hop {index + 1} of {strip.Rows.Count}: {strip.Text.Name(row.Part)}");
        if (!part.IsInline)
            words.Append(", ").Append(strip.Text.Caption(row.Part));
        if (part.Room is { } room)
            words.Append(", in ").Append(room);
        foreach (Visit visit in row.Visits)
        {
            words.Append("; strand ").Append(visit.Trail.Number);
            if (visit.Hop.In >= 0)
                words.Append(" enters ").Append(strip.Text.Cell(visit.Hop.In));
            if (visit.Hop is { In: >= 0, Out: >= 0 })
                words.Append(',');
            if (visit.Hop.Out >= 0)
                words.Append(" leaves ").Append(strip.Text.Cell(visit.Hop.Out));
            if (visit.Hop is { In: >= 0, Out: >= 0 } && !visit.Trail.IsLoop && strip.Text.FaceOf(visit.Hop.Out) is not null)
                words.Append(", light there at ").Append(strip.Text.PlaceWords(visit.Hop.Out));
            if (visit.Hop.In >= 0 && visit.Hop.Out < 0)
                words.Append(", ").Append(HopLine.EndWord(traced, visit.Hop.In));
            else if (visit.Hop.In < 0)
                words.Append(", ").Append(HopLine.EndWord(traced, visit.Hop.Out));
        }

        return words.ToString().Replace('\u00A0', ' ');
    }
}
