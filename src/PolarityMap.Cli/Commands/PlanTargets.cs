using PolarityMap.Cli.Input;

namespace PolarityMap.Cli.Commands;

/// <summary>What a call of <c>plan</c> writes, refused before any work is done where it cannot be meant.</summary>
/// <param name="Output">The plant document or the figure, or null.</param>
/// <param name="Parts">The parts list or the price list to fill in, or null.</param>
internal sealed record PlanTargets(string? Output, string? Parts)
{
    private static readonly string[] s_lists = [".csv", ".xlsx"];

    private static readonly string[] s_documents = [".yaml", ".yml"];

    /// <exception cref="CallException">A target has a wrong ending, is what the call reads, or is there already.</exception>
    public void Check(CommandContext context, string brief, string? plant, bool compare, bool force)
    {
        if (Parts is not null && !HasEnding(Parts, s_lists))
            throw new CallException($"{Ends(Parts)}; a list of parts ends in .csv or .xlsx");
        if (Output is not null && !compare && !HasEnding(Output, s_documents))
            throw new CallException($"{Ends(Output)}; a plant document ends in .yaml or .yml{(plant is null ? ", and figures are made with --compare" : "; draw it afterwards with 'polaritymap draw'")}");
        if (Output is not null && Parts is not null && IsSame(context, Output, Parts))
            throw new CallException($"'{Output}' is named for two things; name two files");
        foreach (string target in new[] { Output, Parts }.OfType<string>())
        {
            if (IsSame(context, target, brief))
                throw new CallException($"'{target}' is the brief that is read; name another file");
            if (plant is not null && target == Parts && IsSame(context, target, plant))
                throw new CallException($"'{target}' is the plant that is read; name another file");
            if (!force && File.Exists(context.FullPath(target)))
                throw new CallException($"'{target}' is there already; name another file, or add --force to write over it");
        }
    }

    /// <summary>True where a path is the list that is about to be written and is not there yet.</summary>
    public bool IsYetToCome(CommandContext context, string path) => Parts is not null && !File.Exists(context.FullPath(path)) && IsSame(context, path, Parts);

    private static bool HasEnding(string path, string[] endings) => endings.Contains(Path.GetExtension(path).ToLowerInvariant());

    private static string Ends(string path) => Path.GetExtension(path) is { Length: > 1 } ending ? $"'{path}' ends in {ending}" : $"'{path}' has no ending";

    /// <summary>Whether two paths lead to one file; what cannot be followed is taken as it is written.</summary>
    private static bool IsSame(CommandContext context, string one, string other) => Real(context, one) == Real(context, other);

    private static string Real(CommandContext context, string path)
    {
        string full = Path.GetFullPath(context.FullPath(path));
        try
        {
            return RealPath.Of(full) ?? full;
        }
        catch (IOException)
        {
            return full;
        }
        catch (UnauthorizedAccessException)
        {
            return full;
        }
    }
}
