namespace PolarityMap.Documents.Tables;

/// <summary>A row of a table as it stands in a file: texts, from the first column on.</summary>
/// <param name="Number">Its number in the file, counted from 1 as spreadsheet programs do.</param>
/// <param name="Cells">Its cells; empty where there is nothing. A short row has fewer.</param>
public sealed record TableRow(int Number, IReadOnlyList<string> Cells)
{
    /// <summary>The text of a column counted from 0, without blanks around it; empty beyond the end.</summary>
    public string this[int column] => column >= 0 && column < Cells.Count ? Cells[column].Trim() : "";

    public bool IsBlank
    {
        get
        {
            foreach (string cell in Cells)
            {
                if (!string.IsNullOrWhiteSpace(cell))
                    return false;
            }

            return true;
        }
    }
}

/// <summary>A table as it stands in a file.</summary>
/// <param name="Name">The name of the sheet, or of the file without its ending.</param>
/// <param name="Rows">The rows that hold anything, in order.</param>
public sealed record TableSheet(string Name, IReadOnlyList<TableRow> Rows);

/// <summary>Why something of a table is not taken.</summary>
/// <param name="Sheet">The sheet, or null for the file as a whole.</param>
/// <param name="Row">Its row, counted from 1; 0 for the sheet as a whole.</param>
/// <param name="Column">Its column, counted from 1; 0 for the row as a whole.</param>
/// <param name="Reason">What is wrong and what was expected, one line without a full stop.</param>
public sealed record TableProblem(string? Sheet, int Row, int Column, string Reason)
{
    /// <summary>For example <c>sheet connections, row 12, column J: …</c>.</summary>
    public override string ToString()
    {
        string place = Sheet is null ? "" : $"sheet {Sheet}";
        if (Row > 0)
            place += $", row {Row}";
        if (Column > 0)
            place += $", column {Letters(Column)}";
        return place.Length == 0 ? Reason : $"{place}: {Reason}";
    }

    /// <summary>A column's letters as spreadsheet programs show them: 1 is A, 27 is AA.</summary>
    public static string Letters(int column)
    {
        string letters = "";
        for (; column > 0; column = (column - 1) / 26)
            letters = (char)('A' + ((column - 1) % 26)) + letters;
        return letters;
    }
}

/// <summary>What is read of a table at most: far beyond any plant, and small enough to be held in memory.</summary>
public static class TableLimits
{
    /// <summary>Bytes of a file.</summary>
    public const int FileBytes = 64 * 1024 * 1024;

    /// <summary>Bytes of a workbook's parts when they are unpacked, all together.</summary>
    public const long UnpackedBytes = 256L * 1024 * 1024;

    /// <summary>Bytes of the lists of a workbook's parts, all together.</summary>
    public const long RelationBytes = 4 * 1024 * 1024;

    /// <summary>Files in a workbook.</summary>
    public const int Entries = 500;

    /// <summary>Rows of all sheets together.</summary>
    public const int Rows = 500_000;

    /// <summary>Columns of a row.</summary>
    public const int Columns = 200;

    /// <summary>Characters of a cell, as in the spreadsheet format.</summary>
    public const int CellLength = 32_767;

    /// <summary>Problems that are kept; more are counted.</summary>
    public const int Problems = 200;
}

/// <summary>A table that cannot be read at all.</summary>
public sealed class TableException(string message) : Exception(message);
