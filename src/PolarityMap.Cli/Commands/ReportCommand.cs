using System.CommandLine;
using PolarityMap.Cli.Input;
using PolarityMap.Cli.Output;
using PolarityMap.Core.Checks;
using PolarityMap.Core.Locate;
using PolarityMap.Core.Remedies;
using PolarityMap.Reports;
using PolarityMap.Reports.Pages;
using PolarityMap.Reports.Templates;

namespace PolarityMap.Cli.Commands;

/// <summary><c>report PLANT -o OUT</c>: everything that whoever builds the plant needs, in one folder or on one page.</summary>
internal sealed class ReportCommand : ICommandFile
{
    private readonly Argument<string> _plant = CommonOptions.Plant();
    private readonly Option<string?> _output = CommonOptions.Output("A folder for the whole report, or a file ending in .html for its one page; without it the plant's name with -report.");
    private readonly Option<string?> _seen = new("--seen") { Description = "What was seen on site: the report tells what explains it and what to test next.", HelpName = "FILE" };
    private readonly Option<string?> _templates = new("--templates") { Description = "A folder with templates in place of those inside the program, file by file.", HelpName = "DIR" };
    private readonly Option<string?> _paper = new("--paper") { Description = $"Size of the sheets: {string.Join(", ", DrawChoice.Papers)}; without it A4, and A3 where it has to be.", HelpName = "SIZE" };
    private readonly Option<bool> _svgOnly = new("--svg-only") { Description = "No PDF and no PNG, which take most of the time." };

    public Command Build(CommandContext context)
    {
        _paper.AcceptOnlyFromAmong([.. DrawChoice.Papers]);
        var command = new Command("report",
            """
            Write the report of a plant: the proof, the drawings, the schedules and the field papers.

            A folder gets index.html, which needs nothing beside it and no network, papers to print, tables for spreadsheets,
            drawings, and data for programs. It is replaced as a whole when all of it is written; a run that fails or is ended
            leaves what was there. A folder that holds anything else, or a file that was changed, is refused.

            With --seen it also tells what was seen on site, every explanation with its evidence, and the next test; docs/locate.md
            tells the file.

            Exit status: 0 written and clean, 1 written and findings of severity error, or something was seen that does not agree
            with the document; 2 the document or the call is wrong, nothing is written.

            Examples:
              polaritymap report plant.yaml -o report/
              polaritymap report plant.yaml -o report.html          only the page, for a phone
              polaritymap report plant.yaml -o report/ --svg-only --paper A3
              polaritymap report plant.yaml --seen seen.yaml -o fault.html
            """) { _plant, _output, _seen, _templates, _paper, _svgOnly };
        command.SetAction(parsed => Run(parsed, context));
        return command;
    }

    private int Run(ParseResult parsed, CommandContext context)
    {
        string path = parsed.GetValue(_plant)!;
        string target = parsed.GetValue(_output) ?? $"{Path.GetFileNameWithoutExtension(path)}-report";
        using var progress = new Progress(context);
        context.TakeRoom();
        progress.Say("reading and tracing the plant");
        SeenPlant? found = null;
        if (parsed.GetValue(_seen) is { } seen && (found = SeenPlant.Of(path, seen, context)) is null)
            return ExitStatus.Wrong;
        if ((found?.Traced ?? PlantFile.Trace(path, "text", context)) is not { } traced)
            return ExitStatus.Wrong;
        progress.Say("proving the links");
        CheckReport check = CheckReport.Of(traced);
        string? named = parsed.GetValue(_templates);
        TemplateFolder templates = TemplateDirectory.Of(context, named);
        if (check.Findings.Count > 0)
            progress.Say("proving remedies");
        ReportInput input = ReportFiles.InputOf(ProvedRemedies.In(check, ProvedRemedies.ForReport), path, parsed.GetValue(_paper)) with { Seen = found?.ForReport(Path.GetFileName(parsed.GetValue(_seen)!)) };
        bool isPage = IsPage(target);
        try
        {
            if (isPage)
            {
                progress.Say("writing the page");
                WholeFile.Write(context.FullPath(target), ReportPage.Write(input, templates));
            }
            else
            {
                new ReportFiles(context, templates, progress) { WithPictures = !parsed.GetValue(_svgOnly), Seen = found, Found = check }.Write(input, target);
            }
        }
        catch (TemplateException wrong)
        {
            throw new CallException(wrong.Message);
        }

        progress.Dispose();
        foreach (string unused in isPage ? [] : TemplateDirectory.Unused(context, named, templates))
            context.Error.WriteLine($"polaritymap: {unused}");
        context.Out.WriteLine(check.Verdict());
        if (found is not null)
            context.Out.WriteLine(LocateWords.Verdict(found.Result));
        context.Out.WriteLine($"Open {(isPage ? target : $"{target.TrimEnd('/')}/{ReportFiles.PageName}")}");
        return check.Errors > 0 || found is { Result.IsAsDescribed: false } ? ExitStatus.Findings : ExitStatus.Clean;
    }

    /// <summary>True for the name of one page. Another ending is a slip; a name without one is a folder.</summary>
    private static bool IsPage(string target)
    {
        if (target.EndsWith('/') || target.EndsWith(Path.DirectorySeparatorChar))
            return false;
        string ending = Path.GetExtension(target).ToLowerInvariant();
        if (ending is ".html" or ".htm")
            return true;
        return ending is not (".pdf" or ".svg" or ".png" or ".xlsx" or ".csv" or ".json" or ".sarif" or ".yaml" or ".yml") ? false
            : throw new CallException($"'{target}' ends in {ending}; a report is a folder, such as report/, or one page that ends in .html");
    }
}
