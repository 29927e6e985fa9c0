using PolarityMap.Cli.Output;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using PolarityMap.Documents;
using PolarityMap.Documents.Text;

namespace PolarityMap.Cli.Input;

/// <summary>Reads and traces a plant for a command, or says what is wrong with it.</summary>
internal static class PlantFile
{
    /// <summary>The traced plant, or null after its problems were written.</summary>
    public static TracedPlant? Trace(string path, string format, CommandContext context)
    {
        var problems = new ProblemList();
        Plant? plant = PlantDocument.Read(path, new FileSource(context), problems, context.Reading.AllowOutside);
        if (plant is not null)
            return TracedPlant.Of(plant);
        if (format == "json")
            ProblemJson.Write(problems, context.Out);
        else if (format == "sarif")
            context.Out.Write(System.Text.Encoding.UTF8.GetString(SarifLog.Bytes(problems)));
        else
            context.Error.Write(problems.ToString());
        return null;
    }
}
