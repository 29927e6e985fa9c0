using PolarityMap.Cli.Output;
using PolarityMap.Core.Strands;
using PolarityMap.Documents.Observations;
using PolarityMap.Documents.Text;

namespace PolarityMap.Cli.Input;

/// <summary>Reads an observation file and the plant that it is of.</summary>
internal static class SeenSource
{
    /// <summary>The bytes of a file; none where it is absent and may be.</summary>
    /// <exception cref="CallException">It cannot be read.</exception>
    public static byte[] Bytes(string path, bool mayBeAbsent, CommandContext context)
    {
        if (mayBeAbsent && !File.Exists(context.FullPath(path)) && !Directory.Exists(context.FullPath(path)))
            return [];
        return new FileSource(context).TryRead(path, TextLoader.MaxBytes, out byte[] bytes, out string why) ? bytes : throw new CallException(why);
    }

    /// <summary>What a file says of a plant, or null after its problems were written.</summary>
    public static (TracedPlant Traced, SeenNotes Notes)? Read(string? plant, string path, byte[] bytes, string format, CommandContext context)
    {
        var problems = new ProblemList();
        SeenFile? file = SeenFile.Read(path, bytes, problems, context.Reading.AllowOutside);
        if (file is null)
            return Wrong(problems, format, context);
        if ((plant ?? file.Plant) is not { } document)
            throw new CallException($"name the plant document, or name it in {path} under 'plant:'");
        if (PlantFile.Trace(document, format, context) is not { } traced)
            return null;
        if (file.Bind(traced, problems) is not { } notes)
            return Wrong(problems, format, context);
        if (plant is not null && file.Plant is { } named && !SameFile(plant, named, context))
            notes = notes with { Remarks = [new SeenRemark(new(path, 0, 0), $"this file names the plant {named}; it is read as of {plant}, which the call names"), .. notes.Remarks] };
        return (traced, notes);
    }

    private static bool SameFile(string one, string other, CommandContext context) => Path.GetFullPath(context.FullPath(one)) == Path.GetFullPath(context.FullPath(other));

    private static (TracedPlant, SeenNotes)? Wrong(ProblemList problems, string format, CommandContext context)
    {
        if (format == "json")
            ProblemJson.Write(problems, context.Out);
        else
            context.Error.Write(problems.ToString());
        return null;
    }
}
