namespace PolarityMap.Reports.Templates;

/// <summary>A template cannot be used; the message names its file, line and column and says what was expected.</summary>
public sealed class TemplateException : Exception
{
    public TemplateException(string message)
        : base(message)
    {
    }

    /// <param name="file">The template as <see cref="TemplateFolder.Shown"/> names it.</param>
    /// <param name="line">Its line, from 1.</param>
    /// <param name="column">Its column, from 1.</param>
    /// <param name="why">What is wrong, without a full stop.</param>
    public TemplateException(string file, int line, int column, string why)
        : base($"{file}:{line}:{column}: {why}")
    {
    }
}
