namespace PolarityMap.Drawing.Views;

/// <summary>More was chosen than one sheet takes; the message says how much of what.</summary>
public sealed class DrawingTooLargeException : Exception
{
    public DrawingTooLargeException(string message)
        : base(message)
    {
    }
}
