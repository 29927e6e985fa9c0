using PolarityMap.Core.Plants;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>Parts as the document describes them, numbers in names counted as numbers.</summary>
internal static class DocumentOrder
{
    public static int Compare(Plant plant, int a, int b)
    {
        Part pa = plant.Parts[a];
        Part pb = plant.Parts[b];
        int order = ReferenceEquals(pa.Place.File, pb.Place.File) ? 0 : string.CompareOrdinal(pa.Place.File, pb.Place.File);
        if (order == 0)
            order = (pa.Place.Line, pa.Place.Column).CompareTo((pb.Place.Line, pb.Place.Column));
        if (order == 0)
            order = NaturalOrder.Compare(pa.Name, pb.Name);
        return order != 0 ? order : a.CompareTo(b);
    }
}
