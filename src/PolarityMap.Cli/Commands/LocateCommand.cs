using System.CommandLine;
using PolarityMap.Cli.Ask;
using PolarityMap.Cli.Input;
using PolarityMap.Cli.Output;
using PolarityMap.Core.Deviations;
using PolarityMap.Core.Locate;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using PolarityMap.Documents.Observations;
using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Views.Plan;
using PolarityMap.Export;

namespace PolarityMap.Cli.Commands;

/// <summary><c>locate PLANT --seen FILE</c>: finds what explains what was seen, and what to test next.</summary>
internal sealed class LocateCommand : ICommandFile
{
    private readonly Argument<string> _plant = new PlantArgument(isOptional: true);
    private readonly Option<string> _seen = new("--seen") { Description = "What was seen: YAML, CSV or a workbook.", HelpName = "FILE", Required = true };
    private readonly Option<int> _most = new("--most") { Description = "The most deviations at once, 1 to 3.", HelpName = "N", DefaultValueFactory = static _ => 3 };
    private readonly Option<bool> _ask = new("--ask") { Description = "Ask for the outcome of test after test and note the answers in the file." };
    private readonly Option<bool> _plan = new("--plan") { Description = "Print the whole decision tree, step by step." };
    private readonly Option<string?> _output = CommonOptions.Output("With --plan: draw it as a card into this .svg, .pdf or .png.");
    private readonly Option<bool> _all = new("--all") { Description = "Every explanation with all of its evidence, not only the most likely." };
    private readonly Option<string> _format = CommonOptions.Format();

    public Command Build(CommandContext context)
    {
        var command = new Command("locate",
            """
            Find what explains what was seen on site, and the test to make next.

            The file says where light was put in and where it came out or did not, which link lamps are on, what loss was measured,
            which parts were compared with the description, and what cannot be reached; docs/locate.md tells its two forms. All of it
            is held against every small number of deviations from the plant as it is described.

            Exit status: 0 the plant as described agrees with everything seen, 1 it does not, 2 the input or the call is wrong.

            Assume every fibre is live: unplug or power down the transmitters before you put light in, and never look into a fibre end.

            Examples:
              polaritymap locate plant.yaml --seen seen.csv
              polaritymap locate plant.yaml --seen seen.yaml --ask         go on from what is known, answer by answer
              polaritymap locate plant.yaml --seen seen.yaml --plan -o card.pdf
              polaritymap locate plant.yaml --seen seen.yaml --most 1 --format json
            """) { _plant, _seen, _most, _ask, _plan, _output, _all, _format };
        command.SetAction(parsed => Run(parsed, context));
        return command;
    }

    private int Run(ParseResult parsed, CommandContext context)
    {
        Check(parsed);
        string path = parsed.GetValue(_seen)!, form = parsed.GetValue(_format)!;
        bool asks = parsed.GetValue(_ask);
        byte[] bytes = SeenSource.Bytes(path, mayBeAbsent: asks, context);
        if (SeenSource.Read(parsed.GetValue(_plant), path, bytes, form, context) is not var (traced, notes))
            return ExitStatus.Wrong;
        var options = new LocateOptions { MostDeviations = parsed.GetValue(_most) };
        var deviations = new DeviationContext(traced);
        if (asks)
            return new AskSession(context, traced, parsed.GetValue(_plant), path, seen => Locator.Locate(deviations, seen, options)).Run();
        LocateResult result = Locator.Locate(deviations, notes.Observations, options);
        bool canPlan = result is { IsAsDescribed: false, Explanations.Count: > 0 };
        TestPlan? plan = parsed.GetValue(_plan) && canPlan ? Locator.Plan(deviations, result) : null;
        Write(parsed, context, traced, notes, result, plan);
        return result.IsAsDescribed ? ExitStatus.Clean : ExitStatus.Findings;
    }

    private void Write(ParseResult parsed, CommandContext context, TracedPlant traced, SeenNotes notes, LocateResult result, TestPlan? plan)
    {
        bool all = parsed.GetValue(_all);
        if (parsed.GetValue(_format) == "json")
            LocateJson.Write(traced, result, notes.Remarks, plan, context.Out);
        else if (plan is null)
            new LocateText(context, traced, all).Write(result, notes.Remarks);
        else if (parsed.GetValue(_output) is null)
            new PlanText(context, traced).Write(plan);
        if (plan is not null && parsed.GetValue(_output) is { } target)
            Draw(context, target, traced, notes, plan, isQuiet: parsed.GetValue(_format) == "json");
    }

    /// <summary>The card of a plan; what is written is named unless programs read the output.</summary>
    private static void Draw(CommandContext context, string target, TracedPlant traced, SeenNotes notes, TestPlan plan, bool isQuiet)
    {
        PlantTitle title = traced.Plant.Title;
        var details = new PdfDetails($"Decision card: {title.Title}") { Author = title.Author, Subject = title.Site, Date = title.Date };
        IReadOnlyList<DrawingSheet> sheets = PlanCard.Draw(traced, notes.Observations, plan);
        IReadOnlyList<string> files = SheetFiles.Write(context, target, [.. sheets.Select((s, i) => ($"plan-{i + 1}", s))], new SheetFileOptions(details));
        if (isQuiet)
            return;
        foreach (string file in files)
            context.Out.WriteLine($"Look at {file}");
    }

    private void Check(ParseResult parsed)
    {
        int most = parsed.GetValue(_most);
        if (most is < 1 or > 3)
            throw new CallException($"--most {most} is not searched; expected 1, 2 or 3");
        bool asks = parsed.GetValue(_ask), plans = parsed.GetValue(_plan), toFile = parsed.GetValue(_output) is not null;
        if (asks && (plans || parsed.GetValue(_format) == "json"))
            throw new CallException($"--ask talks with you; leave out {(plans ? "--plan" : "--format json")}");
        if (asks && parsed.GetValue(_seen)!.EndsWith(".xlsx", StringComparison.OrdinalIgnoreCase))
            throw new CallException("--ask notes the answers, and nothing can be added to a workbook; name a .yaml or a .csv");
        if (toFile && !plans)
            throw new CallException("--output is for the card of --plan; add --plan");
    }
}
