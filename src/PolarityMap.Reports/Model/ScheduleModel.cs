using System.Globalization;
using System.Text;
using PolarityMap.Core.Schedules;

namespace PolarityMap.Reports.Model;

/// <summary>A schedule as a template sees it: cell by cell, and its body as rows that are ready, which is what large plants need.</summary>
internal static class ScheduleModel
{
    public static ModelObject Of(Schedule schedule)
    {
        int[] shown = [.. Enumerable.Range(0, schedule.Columns.Count).Where(c => !schedule.Columns[c].ForPrograms)];
        return new ModelObject()
            .Text("name", schedule.Name).Text("title", schedule.Title).Text("purpose", schedule.Purpose)
            .Number("count", schedule.Rows.Count)
            .List("columns", shown.Select(c => new ModelObject()
                .Text("key", schedule.Columns[c].Key).Text("heading", schedule.Columns[c].Heading).Text("kind", Word(schedule.Columns[c].Kind))))
            .ListLater("rows", () => schedule.Rows.Select(row => new ModelObject()
                .List("cells", shown.Select(c => new ModelObject()
                    .Text("key", schedule.Columns[c].Key).Text("kind", Word(schedule.Columns[c].Kind)).Text("text", Words(schedule.Columns[c].Kind, row[c]))))))
            .HtmlLater("body", () => Body(schedule, shown));
    }

    /// <summary>What a cell says.</summary>
    public static string Words(CellKind kind, Cell cell) => cell.Text ?? (cell.Number is not { } number ? "" : kind switch
    {
        CellKind.Decibels => number.ToString("0.00", CultureInfo.InvariantCulture),
        CellKind.Metres => number.ToString("0.###", CultureInfo.InvariantCulture),
        _ => number.ToString(CultureInfo.InvariantCulture),
    });

    private static string Word(CellKind kind) => kind switch
    {
        CellKind.Whole => "whole",
        CellKind.Metres => "metres",
        CellKind.Decibels => "decibels",
        CellKind.Blank => "blank",
        _ => "text",
    };

    /// <summary>Long addresses may be broken behind their strokes, so that they do not make a column wide.</summary>
    private static string Breakable(string html)
    {
        const int longest = 12;
        if (html.Length <= longest || html.AsSpan().IndexOfAny('/', '~') < 0)
            return html;
        return string.Join(' ', html.Split(' ').Select(word => word.Length <= longest ? word
            : word.Replace("/", "/<wbr>", StringComparison.Ordinal).Replace("~", "~<wbr>", StringComparison.Ordinal)));
    }

    /// <summary>The rows of the table's body. The first cell of each names the row; where rows share it, the first of them is marked.</summary>
    private static Markup Body(Schedule schedule, int[] shown)
    {
        var html = new StringBuilder(schedule.Rows.Count * shown.Length * 16);
        Cell last = default;
        bool groups = schedule.Rows.Count > 1 && Enumerable.Range(1, schedule.Rows.Count - 1).Any(r => schedule.Rows[r][0] == schedule.Rows[r - 1][0]);
        foreach (IReadOnlyList<Cell> row in schedule.Rows)
        {
            html.Append(groups && row[0] != last ? "<tr class=\"first\">" : "<tr>");
            last = row[0];
            for (int i = 0; i < shown.Length; i++)
            {
                CellKind kind = schedule.Columns[shown[i]].Kind;

                // A strand without a number has nothing to head its row with.
                bool heads = i == 0 && !row[shown[i]].IsEmpty;
                html.Append(heads ? "<th scope=\"row\"" : "<td").Append(kind switch
                {
                    CellKind.Text => ">",
                    CellKind.Blank => " class=\"blank\">",
                    _ => " class=\"figure\">",
                });
                html.Append(Breakable(HtmlText.Of(Words(kind, row[shown[i]])))).Append(heads ? "</th>" : "</td>");
            }

            html.Append("</tr>\n");
        }

        return new Markup(html.ToString());
    }
}
