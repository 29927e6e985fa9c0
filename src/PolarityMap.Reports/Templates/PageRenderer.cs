using PolarityMap.Reports.Model;
using Scriban;
using Scriban.Functions;
using Scriban.Parsing;
using Scriban.Runtime;
using Scriban.Syntax;

namespace PolarityMap.Reports.Templates;

/// <summary>
/// Renders templates over a model made by hand, so that nothing is looked up by reflection. Of the template language's own
/// functions only <c>include</c> is there: what a page shows is worked out before.
/// </summary>
public sealed class PageRenderer(TemplateFolder folder) : ITemplateLoader
{
    /// <summary>The most rounds of a loop: more than the rows of the largest plant, and the end of a loop that has none.</summary>
    public const int MostRounds = 4_000_000;

    /// <summary>How deep templates may include each other.</summary>
    public const int MostDepth = 20;

    private readonly Dictionary<string, Template> _parsed = new(StringComparer.Ordinal);

    /// <summary>The page.</summary>
    /// <param name="name">The template.</param>
    /// <param name="model">What it sees.</param>
    /// <exception cref="TemplateException">The template, or one that it includes, is wrong.</exception>
    public string Render(string name, ModelObject model)
    {
        var context = new TemplateContext(new ScriptObject { ["include"] = new IncludeFunction() })
        {
            TemplateLoader = this,
            StrictVariables = true,
            LoopLimit = MostRounds,
            RecursiveLimit = MostDepth,
            LimitToString = 0,
            NewLine = "\n",
        };

        // Templates may set names of their own, the model's stay as they are.
        var names = new ScriptObject();
        foreach (string key in model.Keys)
            names[key] = model[key];
        context.PushGlobal(names);
        var output = new BoundedOutput();
        context.PushOutput(output);
        try
        {
            Template template = Parsed(name);
            foreach ((string path, Template parsed) in _parsed)
                context.CachedTemplates[path] = parsed;
            template.Render(context);
            foreach ((string path, Template parsed) in context.CachedTemplates)
                _parsed[path] = parsed;
            return output.ToString();
        }
        catch (ScriptParserRuntimeException broken) when (broken.ParserMessages.Count > 0)
        {
            throw Error(broken.ParserMessages[0].Span, broken.ParserMessages[0].Message);
        }
        catch (ScriptRuntimeException broken)
        {
            throw broken.InnerException as TemplateException ?? Error(broken.Span, broken.OriginalMessage);
        }
    }

    public string GetPath(TemplateContext context, SourceSpan callerSpan, string templateName) => templateName;

    public string Load(TemplateContext context, SourceSpan callerSpan, string templatePath)
    {
        try
        {
            return folder.Text(templatePath);
        }
        catch (TemplateException missing)
        {
            throw new ScriptRuntimeException(callerSpan, missing.Message);
        }
    }

    public ValueTask<string?> LoadAsync(TemplateContext context, SourceSpan callerSpan, string templatePath) =>
        new(Load(context, callerSpan, templatePath));

    private Template Parsed(string name)
    {
        if (_parsed.TryGetValue(name, out Template? known))
            return known;
        Template template = Template.Parse(folder.Text(name), name);
        if (template.Messages.FirstOrDefault(m => m.Type == ParserMessageType.Error) is { } wrong)
            throw Error(wrong.Span, wrong.Message);
        return _parsed[name] = template;
    }

    /// <summary>The library counts lines and columns from 0 and ends its sentences.</summary>
    private TemplateException Error(SourceSpan span, string why) =>
        new(folder.Shown(span.FileName ?? ""), span.Start.Line + 1, span.Start.Column + 1, why.ReplaceLineEndings(" ").TrimEnd('.'));
}
