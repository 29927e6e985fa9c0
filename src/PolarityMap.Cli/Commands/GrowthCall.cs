using PolarityMap.Cli.Input;
using PolarityMap.Cli.Output;
using PolarityMap.Core.Planning;
using PolarityMap.Core.Planning.Growth;

namespace PolarityMap.Cli.Commands;

/// <summary><c>plan --from PLANT --to BRIEF</c>: how a plant that is there grows to meet a new brief.</summary>
internal static class GrowthCall
{
    /// <summary>The brief of a call, given as the argument or after <c>--to</c>.</summary>
    /// <exception cref="CallException">There is none, or two, or no plant for it.</exception>
    public static string Brief(string? argument, string? from, string? to) => (argument, from, to) switch
    {
        (not null, _, not null) => throw new CallException("the brief is named twice; name it once, after --to"),
        (null, null, not null) => throw new CallException("--to needs the plant that is there: add --from PLANT, or leave --to out to plan anew"),
        (null, _, null) => throw new CallException(from is null ? "name a brief to plan from" : "name the brief that the plant is to meet: --to BRIEF"),
        _ => argument ?? to!,
    };

    public static int Run(CommandContext context, string plant, Brief brief, string format, (string? Document, string? Parts) targets)
    {
        if (PlantFile.Trace(plant, format, context) is not { } traced)
            return ExitStatus.Wrong;
        GrowthResult result = GrowthPlanner.Plan(traced, brief);
        if (result.Refused is { } refused)
        {
            if (format == "json")
                PlanJson.Write(refused, [], context.Out);
            else
                new PlanResultText(context).Write(refused, []);
            return ExitStatus.Findings;
        }

        if (result is { IsMet: true, IsWritable: false } && targets.Document is not null)
            throw new CallException($"the plant afterwards cannot be written as a document: '{plant}' has as-built differences, single positions, cables with unlike ends or the like; leave -o out to see what to do");
        IReadOnlyList<string> written = result is { IsMet: true, IsWritable: true } ? PlanFiles.Write(context, result.After!, targets.Document, targets.Parts, GrowthParts.List(result, result.Difference!.Added)) : [];
        if (format == "json")
            GrowthJson.Write(result, written, context.Out);
        else
            new GrowthText(context).Write(result, plant, written);
        return result.IsMet ? ExitStatus.Clean : ExitStatus.Findings;
    }
}
