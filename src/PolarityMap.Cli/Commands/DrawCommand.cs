using System.CommandLine;
using PolarityMap.Cli.Input;
using PolarityMap.Cli.Output;
using PolarityMap.Core.Checks;
using PolarityMap.Core.Locate;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Remedies;
using PolarityMap.Core.Strands;
using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Views;
using PolarityMap.Drawing.Views.Compare;
using PolarityMap.Drawing.Views.Labels;
using PolarityMap.Export;

namespace PolarityMap.Cli.Commands;

/// <summary><c>draw PLANT -o OUT</c>: checks a plant and draws it, with what was found marked.</summary>
internal sealed class DrawCommand : ICommandFile
{
    private readonly Argument<string> _plant = CommonOptions.Plant();
    private readonly Option<string?> _output = CommonOptions.Output("A file ending in .svg, .pdf or .png, or a folder for one file a sheet; without it the plant's name with .svg.");
    private readonly Option<string> _view = Words("--view", "VIEW", "What to draw", [.. ViewCatalogue.All.Select(v => v.Name)], ViewCatalogue.All[0].Name);
    private readonly Option<bool> _steps = new("--steps") { Description = "A series that reveals the drawing part by part, with a table of positions; short for --view steps." };
    private readonly Option<string[]> _beside = new("--beside") { Description = "Further plants for one figure of strand diagrams side by side, without frame.", HelpName = "PLANT", AllowMultipleArgumentsPerToken = true };
    private readonly Option<string?> _network = Named("--network", "Only strands of this network.");
    private readonly Option<string?> _part = Named("--part", "Only strands that pass this part.");
    private readonly Option<string?> _link = new("--link") { Description = "Only the strands of this link, named by an end of it.", HelpName = "END" };
    private readonly Option<int?> _strand = new("--strand") { Description = "Only this strand, by its number.", HelpName = "N" };
    private readonly Option<string?> _finding = new("--finding") { Description = "Only strands that a finding with this code is about.", HelpName = "CODE" };
    private readonly Option<string?> _seen = new("--seen") { Description = "What was seen on site: draws the plant as the likeliest cause has it, with the suspects and the next test.", HelpName = "FILE" };
    private readonly Option<bool> _dark = new("--dark") { Description = "Also strands that no interface is on, such as spare fibres." };
    private readonly Option<string?> _paper = Words("--paper", "SIZE", "Size of the sheets", DrawChoice.Papers);
    private readonly Option<string?> _orientation = Words("--orientation", "WAY", "Way round of the sheets", DrawChoice.Orientations);
    private readonly Option<string?> _split = Words("--split", "BY", "By what a set is divided into sheets", DrawChoice.Divisions);
    private readonly Option<bool> _fold = new("--fold-alike") { Description = "Draw channels that are alike once, with the range they stand for; what differs is drawn apart." };
    private readonly Option<string?> _labelSheet = new("--label-sheet") { Description = $"How labels lie on the sheet, across x down: {LabelChoice.Form}; without it what is usual on the paper.", HelpName = "MEASURES" };
    private readonly Option<bool> _labelFrames = new("--label-frames") { Description = "Print the outlines of the labels, for plain paper that is cut." };
    private readonly Option<bool> _labelTest = new("--label-test-page") { Description = "Begin the labels with a page to hold against a label sheet." };
    private readonly Option<string?> _date = new("--date") { Description = "Date of issue for the title block, in place of the document's.", HelpName = "YYYY-MM-DD" };
    private readonly Option<string?> _revision = new("--revision") { Description = "Revision for the title block, in place of the document's.", HelpName = "TEXT" };
    private readonly Option<string?> _as = Words("--as", "FORM", "What a folder gets", SheetFileOptions.Formats);
    private readonly Option<int?> _dpi = new("--dpi") { Description = $"Resolution of a PNG; without it {SheetFileOptions.UsualDotsPerInch}.", HelpName = "N" };
    private readonly Option<bool> _bare = new("--without-font") { Description = "Leave the font out of an SVG: smaller, for word processors; right only where PolarityMap Sans is installed." };

    public Command Build(CommandContext context)
    {
        var command = new Command("draw",
            """
            Draw a plant, strand by strand or as another view, with the findings marked.

            One SVG or PNG file holds one sheet as large as it has to be. A folder or a PDF holds a set of standard sheets; several
            strand sheets have an index and an overview before them, and a strand that goes on elsewhere names sheet and zone.

            Exit status: 0 drawn, also when something was found; 2 the document or the call is wrong, nothing is written.

            Examples:
              polaritymap draw plant.yaml
              polaritymap draw plant.yaml -o plant.pdf --paper A4        all sheets, divided by network
              polaritymap draw plant.yaml -o sheets/ --split room
              polaritymap draw plant.yaml --network lighting -o lighting.svg
              polaritymap draw plant.yaml --steps --link SW-L/1 -o steps.pdf
              polaritymap draw plant.yaml --view card --link SW-L/1 -o card.pdf
              polaritymap draw plant.yaml --view labels --paper Letter --label-test-page -o labels.pdf
              polaritymap draw plant.yaml --view end-face --part TRUNK --dpi 200 -o faces.png
            """)
        {
            _plant, _output, _view, _steps, _beside, _network, _part, _link, _strand, _finding, _seen, _dark, _paper, _orientation, _split, _fold, _labelSheet, _labelFrames, _labelTest, _date, _revision, _as, _dpi, _bare,
        };
        command.SetAction(parsed => Run(parsed, context));
        return command;
    }

    private int Run(ParseResult parsed, CommandContext context)
    {
        string path = parsed.GetValue(_plant)!;
        string target = parsed.GetValue(_output) ?? Path.ChangeExtension(Path.GetFileName(path), ".svg");
        string? date = DateOf(parsed.GetValue(_date));
        context.TakeRoom();
        if (parsed.GetValue(_seen) is { } seen)
            return Suspects(parsed, context, path, target, seen, date);
        if (PlantFile.Trace(path, "text", context) is not { } traced)
            return ExitStatus.Wrong;
        CheckReport report = ProvedRemedies.In(CheckReport.Of(traced), ProvedRemedies.ForDrawing);
        if (parsed.GetValue(_beside) is { Length: > 0 } others)
            return Compare(parsed, context, target, [traced], others);
        Draw(parsed, context, path, target, traced, report, date, null, report.Verdict());
        return ExitStatus.Clean;
    }

    /// <summary>The plant as the likeliest cause of what was seen has it, with the suspects and the ends of the next test.</summary>
    private int Suspects(ParseResult parsed, CommandContext context, string path, string target, string seen, string? date)
    {
        if (SeenPlant.Of(path, seen, context) is not { } found)
            return ExitStatus.Wrong;
        string verdict = LocateWords.Verdict(found.Result);
        SuspectPlant suspects = SuspectPlant.Of(found.Context, found.Result)
            ?? throw new CallException($"{verdict} There is no suspect to draw; see 'polaritymap locate {path} --seen {seen}'");
        Draw(parsed, context, path, target, suspects.Report.Traced, suspects.Report, date, suspects, verdict);
        return ExitStatus.Clean;
    }

    private void Draw(ParseResult parsed, CommandContext context, string path, string target, TracedPlant traced, CheckReport report, string? date, SuspectPlant? suspects, string verdict)
    {
        PlantTitle title = traced.Plant.Title;
        title = title with { Date = date ?? title.Date, Revision = parsed.GetValue(_revision) ?? title.Revision };
        SheetFileOptions options = FileOptions(parsed, title, path);
        bool isSet = SheetFiles.IsFolder(context, target) || target.EndsWith(".pdf", StringComparison.OrdinalIgnoreCase);
        IReadOnlyList<PlannedSheet> planned = Plan(parsed, traced, report, title, isSet, suspects);
        // Each sheet is drawn when it is written, so that no more than one is kept.
        Write(context, target, [.. planned.Select((p, i) => (p.Name, (Func<DrawingSheet>)(() => p.Draw(new SheetPlace(i + 1, planned.Count)))))], options, verdict);
    }

    /// <summary>One figure of several plants.</summary>
    private int Compare(ParseResult parsed, CommandContext context, string target, List<TracedPlant> plants, string[] others)
    {
        foreach (string path in others)
        {
            if (PlantFile.Trace(path, "text", context) is not { } traced)
                return ExitStatus.Wrong;
            plants.Add(traced);
        }

        var inputs = new List<ViewInput>();
        var verdicts = new List<string>();
        foreach (TracedPlant traced in plants)
        {
            CheckReport report = CheckReport.Of(traced);
            inputs.Add(new ViewInput(traced, Selection.Of(traced, report.Findings, ChoiceOf(parsed, traced, report))) { ExpectedEnds = ExpectedEnds.Of(report.Context) });
            verdicts.Add($"{traced.Plant.Title.Title}: {report.Verdict()}");
            if (inputs[^1].Selection.Strands.Count == 0)
                throw NothingToDraw();
        }

        SheetFileOptions options = FileOptions(parsed, plants[0].Plant.Title, target);
        Write(context, target, [("figure", () => CompareFigure.Draw(inputs, ""))], options, string.Join('\n', verdicts));
        return ExitStatus.Clean;
    }

    private SheetFileOptions FileOptions(ParseResult parsed, PlantTitle title, string path) =>
        new(new PdfDetails(title.Title.Length > 0 ? title.Title : Path.GetFileNameWithoutExtension(path)) { Author = title.Author, Subject = title.Site, Date = title.Date })
        {
            As = parsed.GetValue(_as),
            DotsPerInch = parsed.GetValue(_dpi),
            EmbedFont = !parsed.GetValue(_bare),
        };

    private static void Write(CommandContext context, string target, IReadOnlyList<(string Name, Func<DrawingSheet> Draw)> sheets, SheetFileOptions options, string verdict)
    {
        IReadOnlyList<string> files = SheetFiles.Write(context, target, sheets, options);
        context.Out.WriteLine(verdict);
        const int mostNamed = 12;
        foreach (string file in files.Take(mostNamed))
            context.Out.WriteLine($"Look at {file}");
        if (files.Count > mostNamed)
            context.Out.WriteLine($"and {files.Count - mostNamed} more; {files[0]} is the first");
    }

    private IReadOnlyList<PlannedSheet> Plan(ParseResult parsed, TracedPlant traced, CheckReport report, PlantTitle title, bool isSet, SuspectPlant? suspects)
    {
        string? split = parsed.GetValue(_split);
        string? paper = parsed.GetValue(_paper), orientation = parsed.GetValue(_orientation);
        // A single file holds one sheet, as large as it has to be unless the call says on what paper.
        bool one = !isSet && split is null;
        Choice choice = ChoiceOf(parsed, traced, report);
        var selection = Selection.Of(traced, suspects?.Findings ?? report.Findings, choice);
        var input = new ViewInput(traced, selection)
        {
            Title = title,
            Premise = suspects?.Premise ?? "",
            ExpectedEnds = ExpectedEnds.Of(report.Context),
            FoldAlike = parsed.GetValue(_fold),
            Labels = new LabelOptions
            {
                Sheet = parsed.GetValue(_labelSheet) is { } measures ? LabelChoice.Of(measures) : null,
                Frames = parsed.GetValue(_labelFrames),
                TestPage = parsed.GetValue(_labelTest),
            },
            Paper = DrawChoice.PaperOf(paper, orientation, mayGrow: one && orientation is null),
            Division = one ? SheetDivision.None : split is null ? SheetDivision.Network : (SheetDivision)DrawChoice.IndexOf(split, "division", DrawChoice.Divisions),
        };
        IDrawingView view = ViewCatalogue.Find(parsed.GetValue(_steps) ? "steps" : parsed.GetValue(_view)!)!;
        if (suspects is null || !choice.IsWhole)
            return Planned(view, input, isSet);

        // A single sheet shows as many of the strands as a desk sheet takes.
        if (one)
        {
            foreach (int most in SuspectPlant.Fewer.Prepend(int.MaxValue))
            {
                IReadOnlyList<int> strands = suspects.FirstStrands(most);
                try
                {
                    return SheetSet.Of(Narrowed(strands) with { Paper = input.Paper with { MayGrow = false } }, view);
                }
                catch (DrawingTooLargeException)
                {
                    // Fewer may fit.
                }
            }
        }

        return Planned(view, Narrowed(suspects.Strands), isSet);

        ViewInput Narrowed(IReadOnlyList<int> strands) => input with { Selection = selection.Narrowed(strands, "Suspects"), Premise = suspects.PremiseFor(strands) };
    }

    private static IReadOnlyList<PlannedSheet> Planned(IDrawingView view, ViewInput input, bool isSet)
    {
        try
        {
            IReadOnlyList<PlannedSheet> planned = SheetSet.Of(input, view);
            return planned.Count > 0 ? planned : throw NothingToDraw();
        }
        catch (LabelFitException small)
        {
            throw new CallException($"{small.Message}; say with --label-sheet how labels lie on the sheet");
        }
        catch (DrawingTooLargeException tooLarge)
        {
            throw new CallException($"{tooLarge.Message}; {(isSet ? "choose a larger --paper" : "name a folder or a .pdf for a set of sheets, or choose some with --network or --part")}");
        }
    }

    private Choice ChoiceOf(ParseResult parsed, TracedPlant traced, CheckReport report) => new()
    {
        Network = DrawChoice.IndexOf(parsed.GetValue(_network), "network", traced.Plant.Networks.Select(n => n.Name)),
        Part = DrawChoice.IndexOf(parsed.GetValue(_part), "part", traced.Plant.Parts.Select(p => p.Name)),
        Link = DrawChoice.LinkOf(parsed.GetValue(_link), traced.Plant),
        Strand = DrawChoice.StrandOf(parsed.GetValue(_strand), traced),
        Finding = parsed.GetValue(_finding) is { } code ? CodeOf(code, report) : null,
        WithDark = parsed.GetValue(_dark),
    };

    private static CallException NothingToDraw() =>
        new("there is no strand to draw: nothing that was chosen is plugged into an interface; add --dark to draw strands without one");

    private static string CodeOf(string code, CheckReport report)
    {
        string[] codes = [.. report.Findings.Select(f => f.Rule.Code).Distinct().Order(StringComparer.Ordinal)];
        _ = DrawChoice.IndexOf(code, "finding", codes);
        return code;
    }

    private static string? DateOf(string? date) =>
        date is null || DateOnly.TryParseExact(date, "yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture, System.Globalization.DateTimeStyles.None, out _)
            ? date : throw new CallException($"'{date}' is no date; write it as 2026-03-01");

    private static Option<string?> Named(string name, string description) => new(name) { Description = description, HelpName = "NAME" };

    private static Option<string?> Words(string name, string help, string description, IReadOnlyList<string> words)
    {
        var option = new Option<string?>(name) { Description = $"{description}: {string.Join(", ", words)}.", HelpName = help };
        option.AcceptOnlyFromAmong([.. words]);
        return option;
    }

    private static Option<string> Words(string name, string help, string description, IReadOnlyList<string> words, string usual)
    {
        var option = new Option<string>(name) { Description = $"{description}: {string.Join(", ", words)}.", HelpName = help, DefaultValueFactory = _ => usual };
        option.AcceptOnlyFromAmong([.. words]);
        return option;
    }
}
