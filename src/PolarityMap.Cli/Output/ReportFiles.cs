using PolarityMap.Cli.Input;
using PolarityMap.Core.Checks;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Schedules;
using PolarityMap.Documents.Tables;
using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Views;
using PolarityMap.Drawing.Views.Labels;
using PolarityMap.Drawing.Views.Plan;
using PolarityMap.Export;
using PolarityMap.Reports;
using PolarityMap.Reports.Pages;
using PolarityMap.Reports.Templates;

namespace PolarityMap.Cli.Output;

/// <summary>The files of a report: what there is, where it lies, and the order in which it is written.</summary>
internal sealed class ReportFiles(CommandContext context, TemplateFolder templates, Progress progress)
{
    /// <summary>The page that a reader opens first.</summary>
    public const string PageName = "index.html";

    /// <summary>What programs need to read the tables back; the page tells it in its own words, so it is no paper.</summary>
    private static readonly string[] s_tablesOnly = ["networks", "plant"];

    /// <summary>Dots per inch of the overview as a picture: fine enough to read, small enough to send.</summary>
    private const int OverviewDotsPerInch = 150;

    public bool WithPictures { get; init; } = true;

    /// <summary>What the checker found, as the command <c>data</c> writes it.</summary>
    public required CheckReport Found { get; init; }

    /// <summary>What was seen of the plant and what was found of that, or null.</summary>
    public SeenPlant? Seen { get; init; }

    /// <summary>What the report is made of.</summary>
    /// <param name="check">The plant, proved or refuted.</param>
    /// <param name="path">The document as the call names it.</param>
    /// <param name="paper">The size of the sheets, or null for A4 and A3 where it has to be.</param>
    public static ReportInput InputOf(CheckReport check, string path, string? paper)
    {
        string file = Path.GetFileName(path);
        var input = new ReportInput(check)
        {
            Document = file,
            DocumentFolder = path[..^file.Length],
            Schedules = Schedules(check),
        };
        if (input.View.Selection.Strands.Count == 0)
            return input with { SheetsMissing = "No strand has light or a finding on it, so there is nothing to draw." };
        try
        {
            ViewInput view = input.View with { Paper = DrawChoice.PaperOf(paper ?? "A4", null, mayGrow: false) };
            return input with { Sheets = Sheets(view, paper is null) };
        }
        catch (DrawingTooLargeException tooLarge)
        {
            return input with { SheetsMissing = $"The sheets cannot be drawn: {tooLarge.Message}." };
        }
    }

    /// <summary>Writes the whole report.</summary>
    /// <exception cref="CallException">It cannot be written; what was there before is untouched.</exception>
    /// <exception cref="TemplateException">A template is wrong; the same.</exception>
    public void Write(ReportInput input, string target)
    {
        using ReportFolder folder = ReportFolder.Begin(context, target);

        // The tables of a large plant take long and need nothing of the rest, so they are made meanwhile.
        Task<(ReportFile File, byte[] Bytes)[]> tables = Task.Run(() => Tables(input.Schedules));
        var groups = new List<FileGroup> { Papers(input, folder), Drawings(input, folder), Tables(tables, folder), Data(input, folder) };
        progress.Say("writing the page");
        folder.Add(PageName, ReportPage.Write(input with { Files = [.. groups.Where(g => g.Files.Count > 0)] }, templates));
        progress.Say("putting the report in its place");
        folder.Commit();
    }

    private static IReadOnlyList<Schedule> Schedules(CheckReport check)
    {
        var input = new ScheduleInput(check.Traced, check.Context);
        return [.. ScheduleCatalogue.All.Select(k => k.Of(input))];
    }

    /// <summary>The sheets on A4, or on A3 where a part of the plant does not go on A4 and the call does not say what paper.</summary>
    private static IReadOnlyList<PlannedSheet> Sheets(ViewInput view, bool mayBeLarger)
    {
        IDrawingView strands = ViewCatalogue.Find("strands")!;
        try
        {
            return SheetSet.Of(view, strands);
        }
        catch (DrawingTooLargeException) when (mayBeLarger)
        {
            return SheetSet.Of(view with { Paper = DrawChoice.PaperOf("A3", null, mayGrow: false) }, strands);
        }
    }

    private FileGroup Papers(ReportInput input, ReportFolder folder)
    {
        var files = new List<ReportFile>();
        foreach (Schedule schedule in input.Schedules.Where(s => !s_tablesOnly.Contains(s.Name)))
        {
            progress.Say($"writing papers: {schedule.Title}");
            string path = $"papers/{schedule.Name}.html";
            folder.Add(path, PaperPage.Write(input, schedule, templates));
            files.Add(new ReportFile(path, schedule.Title, schedule.Purpose));
        }

        return new FileGroup("Papers to print", files);
    }

    private FileGroup Tables(Task<(ReportFile File, byte[] Bytes)[]> tables, ReportFolder folder)
    {
        progress.Say("writing tables");
        (ReportFile File, byte[] Bytes)[] made = tables.GetAwaiter().GetResult();
        foreach ((ReportFile file, byte[] bytes) in made)
            folder.Add(file.Path, bytes);
        return new FileGroup("Tables for spreadsheets", [.. made.Select(t => t.File)]);
    }

    /// <summary>The schedules as spreadsheet programs read them: one workbook, and a file for each.</summary>
    /// <exception cref="CallException">A schedule is longer than a sheet of a workbook.</exception>
    private static (ReportFile File, byte[] Bytes)[] Tables(IReadOnlyList<Schedule> schedules)
    {
        const string workbook = "tables/schedules.xlsx";
        try
        {
            return
            [
                (new ReportFile(workbook, "All schedules", "a workbook with a sheet for each"), XlsxWriter.Write(schedules)),
                .. schedules.Select(s => (new ReportFile($"tables/{s.Name}.csv", s.Title, "CSV"), CsvWriter.Write(s))),
            ];
        }
        catch (TableException tooLarge)
        {
            throw new CallException($"'{workbook}' cannot be written: {tooLarge.Message}");
        }
    }

    private FileGroup Data(ReportInput input, ReportFolder folder)
    {
        var files = new List<ReportFile>();
        foreach ((string name, Func<CheckReport, byte[]> write) in DataFiles.All)
        {
            folder.Add($"data/{name}", write(Found));
            files.Add(new ReportFile($"data/{name}", name, name.EndsWith(".sarif", StringComparison.Ordinal) ? "the findings as SARIF 2.1.0" : "JSON"));
        }

        if (Seen is { } seen)
        {
            const string name = "locate.json";
            using var text = new StringWriter();
            LocateJson.Write(seen.Traced, seen.Result, seen.Notes.Remarks, input.Seen?.Plan, text);
            folder.Add($"data/{name}", text.ToString());
            files.Add(new ReportFile($"data/{name}", name, "what was seen, what explains it and the next test, JSON"));
        }

        return new FileGroup("Data for programs", files);
    }

    private FileGroup Drawings(ReportInput input, ReportFolder folder)
    {
        const string subfolder = "drawings/";
        if (input.Sheets.Count == 0)
            return new FileGroup("", []);
        PlantTitle title = input.Title;
        var options = new SheetFileOptions(new PdfDetails(title.Title) { Author = title.Author, Subject = title.Site, Date = title.Date });
        (string Name, Func<DrawingSheet> Draw)[] sheets =
            [.. input.Sheets.Select((s, i) => (s.Name, (Func<DrawingSheet>)(() => s.Draw(new SheetPlace(i + 1, input.Sheets.Count)))))];
        var files = new List<ReportFile>();
        string Beside(string name) => Path.Combine(folder.Temporary, "drawings", name);
        progress.Say($"drawing {sheets.Length} sheets");
        Directory.CreateDirectory(Beside(""));
        string[] written = [.. SheetFiles.Write(context, Beside(""), sheets, options).Select(p => Path.GetFileName(p)!)];
        if (WithPictures)
        {
            AddPdf("drawings.pdf", "All sheets", "to print", sheets);
            AddPdf("cards.pdf", "Cards for the rack", "a card for each link: hops, labels, what light to expect where", PlannedBy("cards", "card", input));
            AddPdf("labels.pdf", "Labels", "for both ends of every cable and every port, to print on label sheets", PlannedBy("labels", "labels", input));
            if (input.Seen?.Plan is { } plan)
                AddPdf("tests-step-by-step.pdf", "Tests step by step", "from what was seen to the part, with boxes to tick", [.. PlanCard.Draw(input.Traced, input.Seen.Result.Observations, plan).Select((s, i) => ($"plan-{i + 1}", (Func<DrawingSheet>)(() => s)))]);
            if (Overview(input) is { } overview)
            {
                progress.Say("writing the overview as a picture");
                SheetFiles.Write(context, Beside("overview.png"), [("overview", () => overview.Draw(new SheetPlace(1, 1)))], options with { DotsPerInch = OverviewDotsPerInch });
                folder.Take(subfolder + "overview.png");
                files.Add(new ReportFile(subfolder + "overview.png", "Overview", "parts and cables as a picture"));
            }
        }

        for (int i = 0; i < written.Length; i++)
        {
            folder.Take(subfolder + written[i]);
            files.Add(new ReportFile(subfolder + written[i], input.Sheets[i].Subject.Length > 0 ? input.Sheets[i].Subject : input.Sheets[i].DocumentType, ""));
        }

        return new FileGroup("Drawings", files);

        void AddPdf(string name, string subject, string purpose, (string Name, Func<DrawingSheet> Draw)[] drawn)
        {
            if (drawn.Length == 0)
                return;
            progress.Say($"writing {name}");
            SheetFiles.Write(context, Beside(name), drawn, options);
            folder.Take(subfolder + name);
            files.Add(new ReportFile(subfolder + name, subject, purpose));
        }
    }

    /// <summary>The sheets of another view; none where it cannot draw the plant.</summary>
    private (string Name, Func<DrawingSheet> Draw)[] PlannedBy(string what, string view, ReportInput input)
    {
        progress.Say($"drawing {what}");
        try
        {
            IReadOnlyList<PlannedSheet> planned = ViewCatalogue.Find(view)!.Plan(input.View);
            return [.. planned.Select((s, i) => (s.Name, (Func<DrawingSheet>)(() => s.Draw(new SheetPlace(i + 1, planned.Count)))))];
        }
        catch (Exception refused) when (refused is DrawingTooLargeException or LabelFitException)
        {
            context.Error.WriteLine($"polaritymap: {what} are left out: {refused.Message}");
            return [];
        }
    }

    /// <summary>The whole plant in one overview; null where it is more than a sheet takes.</summary>
    private static PlannedSheet? Overview(ReportInput input)
    {
        try
        {
            return ViewCatalogue.Find("overview")!.Plan(input.View with { Division = SheetDivision.None }) is [var first, ..] ? first : null;
        }
        catch (DrawingTooLargeException)
        {
            return null;
        }
    }
}
