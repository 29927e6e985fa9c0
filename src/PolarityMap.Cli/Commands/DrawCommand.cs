using System.CommandLine;
using PolarityMap.Cli.Input;
using PolarityMap.Cli.Output;
using PolarityMap.Core.Checks;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using PolarityMap.Documents.Text;
using PolarityMap.Drawing.Svg;
using PolarityMap.Drawing.Views;

namespace PolarityMap.Cli.Commands;

/// <summary><c>draw PLANT -o OUT</c>: checks a plant and draws its strands, with what was found marked.</summary>
internal sealed class DrawCommand : ICommandFile
{
    public Command Build(CommandContext context)
    {
        Argument<string> plant = CommonOptions.Plant();
        Option<string?> output = CommonOptions.Output("An SVG file, or a folder for one sheet per network; without it the plant's name with .svg.");
        var network = new Option<string?>("--network") { Description = "Only strands of this network.", HelpName = "NAME" };
        var part = new Option<string?>("--part") { Description = "Only strands that pass this part.", HelpName = "NAME" };
        var view = new Option<string>("--view") { Description = "What to draw: " + string.Join(", ", ViewCatalogue.All.Select(v => v.Name)) + ".", HelpName = "VIEW", DefaultValueFactory = static _ => ViewCatalogue.All[0].Name };
        view.AcceptOnlyFromAmong([.. ViewCatalogue.All.Select(v => v.Name)]);
        var dark = new Option<bool>("--dark") { Description = "Also strands that no interface is on, such as spare fibres." };
        var bare = new Option<bool>("--without-font") { Description = "Leave the font out of the file: smaller, for word processors; right only where PolarityMap Sans is installed." };
        var command = new Command("draw",
            """
            Draw every strand from end to end as SVG, with the findings marked.

            Exit status: 0 drawn, also when something was found; 2 the document or the call is wrong, nothing is written.

            Examples:
              polaritymap draw plant.yaml
              polaritymap draw plant.yaml -o sheets/          one sheet per network
              polaritymap draw plant.yaml --network lighting -o lighting.svg
              polaritymap draw plant.yaml --part TRUNK --without-font -o trunk.svg
            """) { plant, output, view, network, part, dark, bare };
        command.SetAction(parsed =>
        {
            string path = parsed.GetValue(plant)!;
            if (PlantFile.Trace(path, "text", context) is not { } traced)
                return ExitStatus.Wrong;
            CheckReport report = CheckReport.Of(traced);
            var choice = new Choice
            {
                Network = IndexOf(parsed.GetValue(network), "network", traced.Plant.Networks.Select(n => n.Name)),
                Part = IndexOf(parsed.GetValue(part), "part", traced.Plant.Parts.Select(p => p.Name)),
                WithDark = parsed.GetValue(dark),
            };
            var input = new ViewInput(traced, Selection.Of(traced, report.Findings, choice));
            string target = parsed.GetValue(output) ?? Path.ChangeExtension(Path.GetFileName(path), ".svg");
            bool folder = target.EndsWith('/') || target.EndsWith(Path.DirectorySeparatorChar) || Directory.Exists(context.FullPath(target));
            IDrawingView chosen = ViewCatalogue.Find(parsed.GetValue(view)!)!;
            List<(string Path, string Svg)> sheets = chosen != ViewCatalogue.All[0] ? All(chosen, input, target, folder, !parsed.GetValue(bare)) : folder
                ? PerNetwork(traced, report.Findings, input, target, !parsed.GetValue(bare))
                : [(target, Sheet(input, !parsed.GetValue(bare), new SheetPlace(1, 1)) ?? throw Nothing())];
            if (sheets.Count == 0)
                throw Nothing();
            foreach ((string file, string svg) in sheets)
                WholeFile.Write(context.FullPath(file), svg);
            context.Out.WriteLine(report.Verdict());
            foreach ((string file, _) in sheets)
                context.Out.WriteLine($"Look at {file}");
            return ExitStatus.Clean;
        });
        return command;
    }

    private static CallException Nothing() =>
        new("there is no strand to draw: nothing that was chosen is plugged into an interface; add --dark to draw strands without one");

    private static List<(string Path, string Svg)> All(IDrawingView view, ViewInput input, string target, bool folder, bool embed)
    {
        IReadOnlyList<PlannedSheet> planned = view.Plan(input);
        if (!folder && planned.Count > 1)
            throw new CallException($"the {view.Name} view has {planned.Count} sheets; name a folder with -o, such as sheets/");
        return [.. planned.Select((s, i) => (folder ? Path.Combine(target, FileName(s.Name)) : target, SvgWriter.Write(s.Draw(new SheetPlace(i + 1, planned.Count)), new SvgOptions { EmbedFont = embed })))];
    }

    private static string? Sheet(ViewInput input, bool embed, SheetPlace place)
    {
        try
        {
            IReadOnlyList<PlannedSheet> sheets = ViewCatalogue.All[0].Plan(input);
            return sheets.Count == 0 ? null : SvgWriter.Write(sheets[0].Draw(place), new SvgOptions { EmbedFont = embed });
        }
        catch (DrawingTooLargeException tooLarge)
        {
            throw new CallException($"{tooLarge.Message}; choose some with --network or --part");
        }
    }

    /// <summary>One sheet for each network, or one for all where the plant has none or the call names one.</summary>
    private static List<(string Path, string Svg)> PerNetwork(TracedPlant traced, IReadOnlyList<Finding> findings, ViewInput input, string folder, bool embed)
    {
        var sheets = new List<(string, string)>();
        IReadOnlyList<Network> networks = traced.Plant.Networks;
        Choice choice = input.Selection.Choice;
        if (networks.Count == 0 || choice.Network >= 0)
        {
            string name = choice.Network >= 0 ? networks[choice.Network].Name : "strands";
            if (Sheet(input, embed, new SheetPlace(1, 1)) is { } svg)
                sheets.Add((Path.Combine(folder, FileName(name)), svg));
            return sheets;
        }

        for (int n = 0; n < networks.Count; n++)
        {
            ViewInput narrowed = input with { Selection = Selection.Of(traced, findings, choice with { Network = n }) };
            if (Sheet(narrowed, embed, new SheetPlace(n + 1, networks.Count)) is { } svg)
                sheets.Add((Path.Combine(folder, FileName(networks[n].Name)), svg));
        }

        return sheets;
    }

    /// <summary>A file name from a name of the document: it cannot leave the folder.</summary>
    private static string FileName(string name) =>
        string.Concat(name.Select(c => char.IsLetterOrDigit(c) || c is '-' or '_' ? c : '-')) + ".svg";

    private static int IndexOf(string? wanted, string what, IEnumerable<string> names)
    {
        if (wanted is null)
            return -1;
        string[] all = [.. names];
        int index = Array.IndexOf(all, wanted);
        if (index >= 0)
            return index;
        string? near = NearestWord.Find(wanted, all);
        throw new CallException($"there is no {what} '{wanted}'"
            + (near is not null ? $"; did you mean '{near}'?" : all.Length is > 0 and <= 12 ? $"; expected one of {string.Join(", ", all)}" : ""));
    }
}
