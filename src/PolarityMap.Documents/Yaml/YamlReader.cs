using PolarityMap.Documents.Text;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace PolarityMap.Documents.Yaml;

/// <summary>
/// Reads one YAML document into a tree of <see cref="YamlNode"/>. Anchors, aliases, merge keys, tags beyond the core ones,
/// further documents, duplicate keys and keys that are not text are problems.
/// </summary>
/// <remarks>
/// Built on the library's events, not on its node tree: the depth of the document is then ours to bound and aliases are
/// never expanded. The library's parser does not recurse, so that it cannot exhaust the stack; but its scanner looks at all
/// open flow brackets for each token, which grows with the square of their number. It looks ahead at most 1024 characters
/// beyond the event that it hands out, so that stopping at <see cref="MaxDepth"/> bounds this as well: no scan of the
/// brackets is needed before it. All else in it grows with the length of the text.
/// </remarks>
public static class YamlReader
{
    /// <summary>How deep sequences and mappings may be nested, the outermost counting as 1.</summary>
    public const int MaxDepth = 32;

    /// <summary>How many scalars (keys as well), sequences and mappings a document may have.</summary>
    public const int MaxNodes = 2_000_000;

    /// <summary>The longest scalar, in UTF-16 code units.</summary>
    public const int MaxScalarLength = 64 * 1024;

    /// <summary>Reads a document. Never throws on any text; reading stops at the first syntax error.</summary>
    /// <param name="text">The text, as <see cref="TextLoader"/> gives it.</param>
    /// <param name="fileName">The name for places.</param>
    /// <param name="problems">Receives the problems.</param>
    /// <param name="instead">What to do instead of sharing something by an anchor; null for what plant documents have.</param>
    /// <returns>
    /// The root, or null when there is no document or when something is wrong with it that leaves a hole in the tree.
    /// Duplicate keys and tabs leave none: the tree then has the first entry of each key, so that what else is wrong with
    /// the document can be found in the same run. A caller must therefore look at the problems as well.
    /// </returns>
    public static YamlNode? Read(string text, string fileName, ProblemList problems, string? instead = null)
    {
        if (!ForbiddenCharacters.Check(text, fileName, problems))
            return null;

        var scanner = new Scanner(new StringReader(text), skipComments: true);
        var parser = new Parser(scanner);
        var builder = new YamlTreeBuilder(text, fileName, problems, instead);
        try
        {
            while (parser.MoveNext())
            {
                if (!Handle(parser.Current!, builder))
                    return null;
            }
        }
        catch (Exception error) when (error is YamlException or InvalidOperationException or ArgumentException or IndexOutOfRangeException)
        {
            // On some texts the library's scanner fails with exceptions of the base library instead of its own.
            problems.Add(new YamlSyntaxError(text, fileName, builder).Explain(error, scanner.CurrentPosition));
            return null;
        }

        return builder.Finish();
    }

    private static bool Handle(ParsingEvent parsed, YamlTreeBuilder builder)
    {
        switch (parsed)
        {
            case DocumentStart start:
                return builder.StartDocument(start);
            case Scalar scalar:
                return builder.AddScalar(scalar);
            case AnchorAlias alias:
                return builder.AddAlias(alias);
            case SequenceStart start:
                return builder.Open(start, isMapping: false, isFlow: start.Style == SequenceStyle.Flow);
            case MappingStart start:
                return builder.Open(start, isMapping: true, isFlow: start.Style == MappingStyle.Flow);
            case SequenceEnd or MappingEnd:
                builder.Close(parsed.End);
                return true;
            default:
                return true;
        }
    }
}
