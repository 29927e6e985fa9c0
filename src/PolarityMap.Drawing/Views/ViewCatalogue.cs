using PolarityMap.Drawing.Views.Card;
using PolarityMap.Drawing.Views.EndFace;
using PolarityMap.Drawing.Views.Labels;
using PolarityMap.Drawing.Views.Overview;
using PolarityMap.Drawing.Views.Steps;
using PolarityMap.Drawing.Views.Strands;

namespace PolarityMap.Drawing.Views;

/// <summary>The one list of views. A new view is one file and one line here.</summary>
public static class ViewCatalogue
{
    public static readonly IReadOnlyList<IDrawingView> All = [new StrandsView(), new OverviewView(), new EndFaceView(), new CardView(), new LabelsView(), new StepsView()];

    /// <summary>The view with this name, or null.</summary>
    public static IDrawingView? Find(string name)
    {
        foreach (IDrawingView view in All)
        {
            if (view.Name == name)
                return view;
        }

        return null;
    }
}
