namespace PolarityMap.Export;

/// <summary>A sheet has more pixels at the wanted resolution than a picture takes; the message says how many.</summary>
public sealed class PictureTooLargeException : Exception
{
    public PictureTooLargeException(string message)
        : base(message)
    {
    }
}
