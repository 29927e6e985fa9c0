namespace PolarityMap.Documents.Tables;

/// <summary>A row of a text with the index of its first character and of that of each cell.</summary>
internal sealed record PlacedRow(TableRow Row, int Start, IReadOnlyList<int> CellStarts);
