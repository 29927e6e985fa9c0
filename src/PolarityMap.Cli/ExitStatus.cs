namespace PolarityMap.Cli;

/// <summary>The exit statuses of every command.</summary>
public static class ExitStatus
{
    /// <summary>Done, and nothing of severity error was found.</summary>
    public const int Clean = 0;

    /// <summary>Done, and something of severity error was found.</summary>
    public const int Findings = 1;

    /// <summary>The input or the call is wrong; nothing was written.</summary>
    public const int Wrong = 2;
}
