using System.Text;
using PolarityMap.Documents.Text;
using PolarityMap.Reports.Templates;

namespace PolarityMap.Cli.Input;

/// <summary>The folder of a call that has templates in place of those inside the program.</summary>
internal static class TemplateDirectory
{
    private static readonly UTF8Encoding s_strict = new(false, throwOnInvalidBytes: true);

    /// <summary>The templates inside the program, with those of the folder in front of them where the call names one.</summary>
    /// <exception cref="CallException">There is no such folder.</exception>
    public static TemplateFolder Of(CommandContext context, string? named)
    {
        if (named is null)
            return new TemplateFolder();
        string folder = Path.GetFullPath(context.FullPath(named));
        return Directory.Exists(folder) ? new TemplateFolder(name => Read(named, folder, name), named)
            : throw new CallException($"there is no folder '{named}'; expected one with templates, such as {TemplateFolder.BuiltIn[0]}");
    }

    /// <summary>What to say of files in the folder that no page asked for: most likely a slip in a name.</summary>
    public static IEnumerable<string> Unused(CommandContext context, string? named, TemplateFolder folder)
    {
        if (named is null)
            yield break;
        foreach (string file in Directory.EnumerateFiles(context.FullPath(named)).Select(f => Path.GetFileName(f)!).Order(StringComparer.Ordinal))
        {
            if (folder.OwnUsed.Contains(file) || Path.GetExtension(file) is not (".html" or ".css" or ".js"))
                continue;
            string? near = NearestWord.Find(file, TemplateFolder.BuiltIn.Where(b => b != file));
            yield return $"{named.TrimEnd('/')}/{file} is used by no page{(near is null ? "" : $"; did you mean '{near}'?")}";
        }
    }

    private static string? Read(string shown, string folder, string name)
    {
        string path = Path.Combine(folder, name);
        try
        {
            if (!File.Exists(path))
                return null;

            // A link may not lead out of the folder either.
            string? real = RealPath.Of(path), root = RealPath.Of(folder);
            if (real is null || root is null || !real.StartsWith(root + Path.DirectorySeparatorChar, StringComparison.Ordinal))
                throw new TemplateException($"{shown.TrimEnd('/')}/{name} is a link that leaves the folder of templates");
            if (new FileInfo(real).Length > TemplateFolder.MostBytes)
                throw new TemplateException($"{shown.TrimEnd('/')}/{name} is larger than {TemplateFolder.MostBytes / 1024 / 1024} MiB, which no template needs");
            return s_strict.GetString(File.ReadAllBytes(real)).TrimStart('\uFEFF');
        }
        catch (DecoderFallbackException)
        {
            throw new TemplateException($"{shown.TrimEnd('/')}/{name} is not written in UTF-8");
        }
        catch (Exception broken) when (broken is IOException or UnauthorizedAccessException)
        {
            throw new TemplateException($"{shown.TrimEnd('/')}/{name} cannot be read");
        }
    }
}
