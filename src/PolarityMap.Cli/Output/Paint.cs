namespace PolarityMap.Cli.Output;

/// <summary>Terminal colours, or nothing where colour is not wanted. Colour only repeats what a word says.</summary>
internal sealed class Paint(bool enabled)
{
    public string Error(string text) => Wrap(text, "1;31");

    public string Warning(string text) => Wrap(text, "1;33");

    public string Good(string text) => Wrap(text, "1;32");

    public string Strong(string text) => Wrap(text, "1");

    public string Faint(string text) => Wrap(text, "2");

    private string Wrap(string text, string code) => enabled ? $"\u001b[{code}m{text}\u001b[0m" : text;
}
