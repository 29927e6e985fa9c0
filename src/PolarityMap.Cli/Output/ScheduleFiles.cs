using PolarityMap.Core.Schedules;
using PolarityMap.Documents.Tables;
using PolarityMap.Documents.Text;

namespace PolarityMap.Cli.Output;

/// <summary>Writes schedules where and as the call wants them.</summary>
internal static class ScheduleFiles
{
    private static readonly string[] s_endings = [".xlsx", ".csv"];

    /// <summary>Refuses a target before any work is done for it.</summary>
    /// <exception cref="CallException">It has no known ending, or takes one schedule and several are wanted.</exception>
    public static void Check(CommandContext context, string target, string? wanted)
    {
        if (SheetFiles.IsFolder(context, target))
            return;
        string ending = Path.GetExtension(target).ToLowerInvariant();
        if (!s_endings.Contains(ending))
        {
            string? near = ending is ".xls" or ".ods" or ".xlsm" ? ".xlsx" : NearestWord.Find(ending, s_endings);
            throw new CallException((ending.Length <= 1 ? $"'{target}' has no ending" : $"'{target}' ends in {ending}")
                + $"; expected .xlsx or .csv, or a folder, such as {Path.ChangeExtension(target, null)}/" + (near is null ? "" : $"; did you mean {near}?"));
        }

        if (ending == ".csv" && wanted is null)
            throw new CallException($"'{target}' takes one schedule; name it with --schedule ({string.Join(", ", ScheduleCatalogue.All.Select(s => s.Name))}), or name a .xlsx or a folder for all of them");
    }

    /// <summary>Writes whole files or none.</summary>
    /// <returns>What was written, a line for each file.</returns>
    /// <exception cref="CallException">It cannot be written; what was there is untouched.</exception>
    public static IReadOnlyList<string> Write(CommandContext context, string target, IReadOnlyList<ScheduleKind> kinds, ScheduleInput input)
    {
        var lines = new List<string>();
        using var files = new WholeFiles();
        try
        {
            if (SheetFiles.IsFolder(context, target))
            {
                foreach (ScheduleKind kind in kinds)
                {
                    Schedule schedule = kind.Of(input);
                    string path = Path.Combine(target, schedule.Name + ".csv");
                    files.Add(context.FullPath(path), CsvWriter.Write(schedule));
                    lines.Add($"Wrote {path}: {Rows(schedule)}");
                }
            }
            else if (target.EndsWith(".csv", StringComparison.OrdinalIgnoreCase))
            {
                Schedule schedule = kinds[0].Of(input);
                files.Add(context.FullPath(target), CsvWriter.Write(schedule));
                lines.Add($"Wrote {target}: {schedule.Title}, {Rows(schedule)}");
            }
            else
            {
                Schedule[] schedules = [.. kinds.Select(k => k.Of(input))];
                files.Add(context.FullPath(target), XlsxWriter.Write(schedules));
                lines.Add($"Wrote {target}: {string.Join(", ", schedules.Select(s => $"{s.Name} ({Rows(s)})"))}");
            }
        }
        catch (TableException tooLarge)
        {
            throw new CallException(tooLarge.Message);
        }

        files.Commit();
        return lines;
    }

    private static string Rows(Schedule schedule) => schedule.Rows.Count == 1 ? "1 row" : $"{schedule.Rows.Count} rows";
}
