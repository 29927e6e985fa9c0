using System.Text;
using Scriban.Runtime;

namespace PolarityMap.Reports.Templates;

/// <summary>Takes what a template writes, up to a bound that no sound page comes near.</summary>
internal sealed class BoundedOutput : IScriptOutput
{
    /// <summary>The most characters of a page.</summary>
    private const int MostCharacters = 600_000_000;

    private readonly StringBuilder _text = new(1 << 16);

    /// <exception cref="TemplateException">The page grew beyond all use.</exception>
    public void Write(string text, int offset, int count)
    {
        if (_text.Length + (long)count > MostCharacters)
            throw new TemplateException($"a template writes more than {MostCharacters / 1_000_000} million characters");
        _text.Append(text, offset, count);
    }

    public ValueTask WriteAsync(string text, int offset, int count, CancellationToken cancellationToken)
    {
        Write(text, offset, count);
        return ValueTask.CompletedTask;
    }

    public override string ToString() => _text.ToString();
}
