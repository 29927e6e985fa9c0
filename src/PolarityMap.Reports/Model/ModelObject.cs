using Scriban;
using Scriban.Parsing;
using Scriban.Runtime;
using Scriban.Syntax;

namespace PolarityMap.Reports.Model;

/// <summary>
/// What a template sees under one name. Every text is escaped on its way in, so that no template can forget it, and a name
/// that is not there is an error at its place in the template, not an empty text.
/// </summary>
public sealed class ModelObject : ScriptObject
{
    private readonly Dictionary<string, Func<object>> _later = [];

    /// <summary>A text from a document or a word of the program's; null where there is none.</summary>
    public ModelObject Text(string name, string? text) => Put(name, text is null ? null : HtmlText.Of(text));

    /// <summary>HTML that the program made.</summary>
    public ModelObject Html(string name, Markup html) => Put(name, html.Html);

    public ModelObject Number(string name, int number) => Put(name, number);

    public ModelObject Flag(string name, bool flag) => Put(name, flag);

    /// <summary>Another object, or null where there is none.</summary>
    public ModelObject Inner(string name, ModelObject? part) => Put(name, part);

    public ModelObject List(string name, IEnumerable<ModelObject> items) => Put(name, new ScriptArray(items));

    public ModelObject Texts(string name, IEnumerable<string> texts) => Put(name, new ScriptArray(texts.Select(HtmlText.Of)));

    /// <summary>Objects that are made when a template first asks for them, since most do not.</summary>
    public ModelObject ListLater(string name, Func<IEnumerable<ModelObject>> items)
    {
        _later[name] = () => new ScriptArray(items());
        return Put(name, null);
    }

    /// <summary>HTML that is made when a template first asks for it.</summary>
    public ModelObject HtmlLater(string name, Func<Markup> html)
    {
        _later[name] = () => html().Html;
        return Put(name, null);
    }

    public override bool TryGetValue(TemplateContext? context, SourceSpan span, string member, out object? value)
    {
        if (_later.Remove(member, out Func<object>? make))
            this[member] = make();
        if (base.TryGetValue(context, span, member, out value))
            return true;
        throw new ScriptRuntimeException(span, $"there is no '{member}' here; expected one of {string.Join(", ", Keys.Order(StringComparer.Ordinal))}");
    }

    private ModelObject Put(string name, object? value)
    {
        this[name] = value!;
        return this;
    }
}
