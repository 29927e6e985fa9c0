using System.Globalization;
using PolarityMap.Core.Schedules;

namespace PolarityMap.Documents.Tables;

/// <summary>Numbers of cells as text.</summary>
internal static class CellText
{
    /// <summary>The number of a cell as its column's kind has it, or null for a cell that holds none.</summary>
    public static string? Of(Cell cell, CellKind kind) => cell.Number switch
    {
        null => null,
        { } loss when kind == CellKind.Decibels => Math.Round(loss, 2, MidpointRounding.AwayFromZero).ToString("0.00", CultureInfo.InvariantCulture),
        { } number => number.ToString("0.###", CultureInfo.InvariantCulture),
    };
}
