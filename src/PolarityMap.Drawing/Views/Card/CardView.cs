using PolarityMap.Core.Strands;

namespace PolarityMap.Drawing.Views.Card;

/// <summary>
/// The installer's card, to be printed in black and white and read at the rack: one strand or one link from top to bottom, hop
/// by hop, with the places where light is to be expected.
/// </summary>
public sealed class CardView : IDrawingView
{
    public string Name => "card";

    public string Summary => "A card for the rack for each link or strand: its hops from top to bottom, and where its light shows.";

    public IReadOnlyList<PlannedSheet> Plan(ViewInput input)
    {
        TracedPlant traced = input.Traced;
        var notes = new CardNotes(input.Findings);
        var pages = new List<CardPage>();
        var layout = new CardLayout(input, notes);
        foreach (CardSubject subject in CardSubject.Of(traced, input.Selection))
            layout.Append(subject, pages);
        return CardSheet.Of(input, notes, pages);
    }
}
