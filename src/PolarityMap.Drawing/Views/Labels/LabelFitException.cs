namespace PolarityMap.Drawing.Views.Labels;

/// <summary>Words do not go onto a label, or labels not onto a sheet; the message says which and why.</summary>
public sealed class LabelFitException : Exception
{
    public LabelFitException(string message)
        : base(message)
    {
    }
}
