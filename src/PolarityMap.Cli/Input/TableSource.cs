using PolarityMap.Documents.Tables;

namespace PolarityMap.Cli.Input;

/// <summary>Reads the tables of a call.</summary>
internal static class TableSource
{
    /// <summary>The sheets of a workbook, of a CSV, or of every CSV in a folder, or those of them that are named.</summary>
    /// <exception cref="CallException">There is no such file, it is no table, or a named sheet is missing.</exception>
    public static (IReadOnlyList<TableSheet> Sheets, IReadOnlyList<TableProblem> Problems) Read(CommandContext context, string path, string[] wanted)
    {
        var sheets = new List<TableSheet>();
        var problems = new List<TableProblem>();
        foreach (string file in Files(context, path))
        {
            if (!new FileSource(context).TryRead(file, TableLimits.FileBytes, out byte[] bytes, out string why))
                throw new CallException(why);
            try
            {
                sheets.AddRange(TableFile.Read(Path.GetFileNameWithoutExtension(file), bytes, out IReadOnlyList<TableProblem> cells));
                problems.AddRange(cells);
            }
            catch (TableException wrong)
            {
                throw new CallException($"{file}: {wrong.Message}");
            }
        }

        if (wanted.Length == 0)
            return (sheets, problems);
        foreach (string name in wanted)
            _ = DrawChoice.IndexOf(name, "sheet", sheets.Select(s => s.Name));
        return (sheets.FindAll(s => wanted.Contains(s.Name)), problems);
    }

    private static string[] Files(CommandContext context, string path)
    {
        string full = context.FullPath(path);
        if (!Directory.Exists(full))
            return [path];
        string[] files = [.. Directory.EnumerateFiles(full, "*.csv").Select(f => Path.Combine(path, Path.GetFileName(f))).Order(StringComparer.Ordinal)];
        return files.Length > 0 ? files : throw new CallException($"there is no .csv in the folder '{path}'");
    }
}
