using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Svg;
using PolarityMap.Drawing.Views;
using PolarityMap.Drawing.Views.Strands;
using PolarityMap.Reports.Model;

namespace PolarityMap.Reports.Drawings;

/// <summary>A drawing of some strands without frame, title block and notes, which the page says in words.</summary>
internal static class StrandFigure
{
    private static readonly string[] s_layersOfThePaper = ["frame", "notes", "legend"];

    /// <summary>The drawing, or null where its strands do not fit on paper.</summary>
    /// <param name="input">The strands, with what was found of them.</param>
    /// <param name="title">What the drawing is called for those who cannot see it.</param>
    /// <param name="idPrefix">Put before every id of the drawing; no other drawing on the page has it.</param>
    /// <param name="paper">The paper that it is laid out for.</param>
    public static Markup? Of(ViewInput input, string title, string idPrefix, PaperChoice paper)
    {
        try
        {
            DrawingSheet sheet = new StrandsView().Plan(input with { Division = SheetDivision.None, Paper = paper })[0].Draw(new SheetPlace(1, 1));
            return Cropped(sheet, title, new SvgOptions { IdPrefix = idPrefix });
        }
        catch (DrawingTooLargeException)
        {
            return null;
        }
    }

    /// <summary>The sheet without what belongs to the paper, as large as what is left.</summary>
    private static Markup Cropped(DrawingSheet sheet, string title, SvgOptions options)
    {
        const double margin = 3;
        SceneGroup[] layers = [.. sheet.Layers.Where(l => !s_layersOfThePaper.Contains(l.Id))];
        var bounds = new SceneBounds();
        foreach (SceneGroup layer in layers)
            bounds.Add(layer);
        Area area = bounds.Area;
        string svg = SvgWriter.Write(
            new DrawingSheet { WidthMm = sheet.WidthMm, HeightMm = sheet.HeightMm, Title = title, Description = sheet.Description, Layers = layers },
            options);

        // Everything in front of the role is the size of the paper; the shift to the corner of the drawing is the view box.
        const string rest = " role=\"";
        string size = string.Create(
            System.Globalization.CultureInfo.InvariantCulture,
            $"<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{area.Width + (2 * margin):0.##}mm\" height=\"{area.Height + (2 * margin):0.##}mm\" viewBox=\"{area.X - margin:0.##} {area.Y - margin:0.##} {area.Width + (2 * margin):0.##} {area.Height + (2 * margin):0.##}\"");
        return new Markup(size + svg[svg.IndexOf(rest, StringComparison.Ordinal)..]);
    }
}
