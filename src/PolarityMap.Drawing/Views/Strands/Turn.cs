using PolarityMap.Core.Parts;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>How a connector is drawn turned, so that its mating runs straight: columns from the last to the first, rows likewise.</summary>
internal readonly record struct Turn(bool Columns, bool Rows)
{
    /// <summary>
    /// The turn that draws a connector in the order of its partner, which is drawn in this one. An aligned mating mirrors
    /// columns, an opposed one rows.
    /// </summary>
    public Turn Over(Face face, Keying keys)
    {
        if (face.Family == ConnectorFamily.Bare)
            return this;
        return keys == Keying.Aligned ? this with { Columns = !Columns } : this with { Rows = !Rows };
    }

    /// <summary>The place of a position in the order drawn.</summary>
    public int Place(Face face, int position)
    {
        int row = (position - 1) / face.Columns;
        int column = (position - 1) % face.Columns;
        return ((Rows ? face.Rows - 1 - row : row) * face.Columns) + (Columns ? face.Columns - 1 - column : column);
    }
}
