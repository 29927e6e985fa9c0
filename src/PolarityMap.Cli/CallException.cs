namespace PolarityMap.Cli;

/// <summary>The call cannot be carried out; the message says why, what was expected, and the nearest valid word.</summary>
public sealed class CallException : Exception
{
    public CallException(string message)
        : base(message)
    {
    }
}
