using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Views.Strands;

namespace PolarityMap.Drawing.Views.Steps;

/// <summary>
/// A series for teaching: each sheet reveals one part more of a channel, with a table of the position of every strand so far. All
/// sheets have the drawing at the same place, so that leafing through them is the reveal.
/// </summary>
public sealed class StepsView : IDrawingView
{
    public string Name => "steps";

    public string Summary => "A channel revealed part by part, with the running table of positions.";

    public IReadOnlyList<PlannedSheet> Plan(ViewInput input)
    {
        if (input.Selection.Strands.Count == 0)
            return [];
        var hops = new StrandHops(input.Traced);
        Piece[] pieces = [.. input.Selection.Strands.Select(hops.Whole)];
        double table = StepTable.HeightOf(pieces.Length);
        Sheetful sheetful = Sheetful.OnOneSheet(hops, input, pieces, SheetNames.Plain, input.Paper.Formats, table)
            ?? (input.Paper.MayGrow ? Sheetful.OnItsOwnSheet(hops, input, pieces, SheetNames.Plain, table)
                : throw new DrawingTooLargeException($"{pieces.Length} strands with their table do not fit on one sheet of {input.Paper.Formats[^1].Name}"));
        int steps = sheetful.Layout.Columns.Count;
        return [.. Enumerable.Range(0, steps).Select(step => new StepSheet(sheetful, step, steps))];
    }
}

/// <summary>One step: the columns up to one, the table up to it.</summary>
internal sealed class StepSheet(Sheetful sheetful, int step, int steps) : PlannedSheet
{
    public override string Name => $"step-{(step + 1).ToString().PadLeft(steps.ToString().Length, '0')}";

    public override string Subject => $"Step {step + 1} of {steps}: {Revealed()}";

    public override string DocumentType => "Strand diagram in steps";

    public override SheetFormat Format => sheetful.Format;

    public override DrawingSheet Draw(SheetPlace place)
    {
        ViewInput input = sheetful.Input;
        SheetFrame frame = SheetFrame.For(Format, input.TitleBlock(DocumentType, Subject, place));
        Area free = frame.Free;

        // What is found is told with the last part, not before.
        bool last = step == steps - 1;
        SheetNotes notes = last ? sheetful.Notes : sheetful.Notes with { Findings = [], Signs = sheetful.Notes.Signs & ~(SheetSigns.Errors | SheetSigns.Warnings | SheetSigns.Wide | SheetSigns.Expected | SheetSigns.Change) };
        double foot = Legend.FootHeight(Format, notes);
        var painter = new StrandsPainter(sheetful, 0, place, new PaintScope(last ? int.MaxValue : step, ""));
        IReadOnlyList<SceneGroup> painted = painter.Paint();
        double top = sheetful.OriginY + sheetful.Placement.Height + 3;
        return new DrawingSheet
        {
            WidthMm = Format.WidthMm,
            HeightMm = Format.HeightMm,
            Title = $"{(input.Title.Title.Length > 0 ? input.Title.Title : "Strand diagram")}: step {step + 1} of {steps}",
            Description = $"Step {step + 1} of {steps} adds {Revealed()}. {StepTable.InWords(sheetful, step)}",
            Layers =
            [
                frame.Drawing,
                .. painted,
                StepTable.Draw(sheetful, step, new Area(free.X + 2, top, free.Width - 4, free.Bottom - foot - top)),
                Legend.Foot(free with { Y = free.Bottom - foot, Height = foot }, notes),
                Legend.Keys(Legend.KeysArea(Format), Colours(), notes.Signs | painter.KeySigns),
            ],
        };
    }

    private HashSet<Core.Optics.FibreColour> Colours() => [.. sheetful.Input.Selection.Strands.Select(sheetful.Text.Colour)];

    private string Revealed() => StepTable.HeadOf(sheetful, step);
}
