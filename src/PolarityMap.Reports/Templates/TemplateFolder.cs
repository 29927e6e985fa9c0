using System.Text;

namespace PolarityMap.Reports.Templates;

/// <summary>
/// The templates by name: those inside the program, and in place of them whatever the folder of a call has. Names are file
/// names without any folder, so that nothing outside can be reached.
/// </summary>
public sealed class TemplateFolder
{
    /// <summary>The largest template, in bytes.</summary>
    public const int MostBytes = 1024 * 1024;

    private readonly Func<string, string?>? _own;
    private readonly string _shownFolder;
    private readonly HashSet<string> _used = new(StringComparer.Ordinal);

    /// <summary>The templates inside the program alone.</summary>
    public TemplateFolder()
        : this(null, "")
    {
    }

    /// <param name="own">The text of a template in a folder of the user's, or null where it has none of this name.</param>
    /// <param name="shownFolder">That folder as messages name it.</param>
    public TemplateFolder(Func<string, string?>? own, string shownFolder)
    {
        _own = own;
        _shownFolder = shownFolder;
    }

    /// <summary>The names of the templates inside the program, in order.</summary>
    public static IReadOnlyList<string> BuiltIn { get; } =
        [.. typeof(TemplateFolder).Assembly.GetManifestResourceNames().Order(StringComparer.Ordinal)];

    /// <summary>The templates of the user's folder that were asked for.</summary>
    public IReadOnlyCollection<string> OwnUsed => _used;

    /// <summary>True for a name that can be one of a template: letters, digits, hyphens and dots, none first.</summary>
    public static bool IsName(string name) =>
        name.Length is > 0 and <= 80 && char.IsAsciiLetterOrDigit(name[0])
        && name.All(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '_' or '.') && !name.Contains("..", StringComparison.Ordinal);

    /// <summary>The text of a template inside the program.</summary>
    /// <exception cref="ArgumentException">There is none of this name.</exception>
    public static string TextOfBuiltIn(string name)
    {
        using Stream stream = typeof(TemplateFolder).Assembly.GetManifestResourceStream(name)
            ?? throw new ArgumentException($"no template '{name}' is built in", nameof(name));
        using var reader = new StreamReader(stream, Encoding.UTF8);
        return reader.ReadToEnd();
    }

    /// <summary>The text of a template.</summary>
    /// <exception cref="TemplateException">There is none of this name.</exception>
    public string Text(string name)
    {
        if (!IsName(name))
            throw new TemplateException($"'{name}' is no name of a template: expected letters, digits and hyphens, such as cautions.html, without a folder");
        if (_own?.Invoke(name) is { } text)
        {
            _used.Add(name);
            return text;
        }

        return BuiltIn.Contains(name) ? TextOfBuiltIn(name)
            : throw new TemplateException($"there is no template '{name}'; expected one of {string.Join(", ", BuiltIn)}{(_own is null ? "" : $", or a file in {_shownFolder}")}");
    }

    /// <summary>The text of a template that goes into an element as it is.</summary>
    /// <param name="element">The element, <c>style</c> or <c>script</c>.</param>
    /// <param name="name">The template.</param>
    /// <exception cref="TemplateException">There is none of this name, or it would end the element.</exception>
    public string TextFor(string element, string name)
    {
        string text = Text(name);
        string end = element == "style" ? "</" : $"</{element}";
        return text.Contains(end, StringComparison.OrdinalIgnoreCase)
            ? throw new TemplateException($"{Shown(name)}: what goes into a {element} element cannot hold '{end}'")
            : text.ReplaceLineEndings("\n");
    }

    /// <summary>A template's name as messages show it.</summary>
    public string Shown(string name) => _used.Contains(name) ? $"{_shownFolder.TrimEnd('/')}/{name}" : name;
}
