using System.Runtime.InteropServices;
using System.Text;

namespace PolarityMap.Cli.Output;

/// <summary>
/// Puts a folder that is written in the place of the one before, so that at any moment the name leads to one of the two, whole.
/// </summary>
internal static class FolderSwap
{
    private const int AtWorkingFolder = -100;
    private const uint Exchange = 2;

    /// <summary>What is put before and behind the name of a folder that waits to take its place.</summary>
    private const string NewEnding = ".part";

    /// <summary>The same of a folder that made room, where the two cannot change places in one step.</summary>
    private const string OldEnding = ".before";

    /// <summary>Where a new folder is written: beside the one that it replaces, so that it can take its place in one step.</summary>
    public static string TemporaryFor(string folder) => Beside(folder, $".{Environment.ProcessId}{NewEnding}");

    /// <summary>The new folder takes its place, and the one before is deleted.</summary>
    /// <param name="written">The folder that is written.</param>
    /// <param name="folder">Its place, where there may be a folder already.</param>
    /// <exception cref="IOException">The file system refuses; what was there before is there still.</exception>
    /// <exception cref="UnauthorizedAccessException">The same.</exception>
    public static void Place(string written, string folder) => Place(written, folder, ExchangeInOneStep);

    /// <summary>The same with another way to let two folders change places in one step, or to say that it cannot be done.</summary>
    internal static void Place(string written, string folder, Func<string, string, bool> exchange)
    {
        if (!Directory.Exists(folder))
        {
            Directory.Move(written, folder);
            return;
        }

        if (exchange(written, folder))
        {
            Directory.Delete(written, recursive: true);
            return;
        }

        // Between the two moves the name leads nowhere; Recover puts the old folder back if it ends there.
        string before = Beside(folder, OldEnding);
        Directory.Move(folder, before);
        try
        {
            Directory.Move(written, folder);
        }
        catch
        {
            Directory.Move(before, folder);
            throw;
        }

        Directory.Delete(before, recursive: true);
    }

    /// <summary>
    /// Clears up after a run that was ended: a folder that made room goes back where its place is empty, and what was being
    /// written by a process that is gone is deleted.
    /// </summary>
    public static void Recover(string folder)
    {
        string before = Beside(folder, OldEnding);
        if (Directory.Exists(before))
        {
            if (Directory.Exists(folder))
                Directory.Delete(before, recursive: true);
            else
                Directory.Move(before, folder);
        }

        string parent = Path.GetDirectoryName(folder)!;
        if (!Directory.Exists(parent))
            return;
        string start = $".{Path.GetFileName(folder)}.";
        foreach (string left in Directory.EnumerateDirectories(parent, $"{start}*{NewEnding}").ToArray())
        {
            string number = Path.GetFileName(left)[start.Length..^NewEnding.Length];
            if (int.TryParse(number, out int process) && process != Environment.ProcessId && !IsRunning(process))
                Directory.Delete(left, recursive: true);
        }
    }

    private static string Beside(string folder, string ending) => Path.Combine(Path.GetDirectoryName(folder)!, $".{Path.GetFileName(folder)}{ending}");

    private static bool IsRunning(int process)
    {
        try
        {
            using var running = System.Diagnostics.Process.GetProcessById(process);
            return !running.HasExited;
        }
        catch (ArgumentException)
        {
            return false;
        }
    }

    /// <summary>Linux can exchange two names in one step, on most of its file systems.</summary>
    private static bool ExchangeInOneStep(string one, string other)
    {
        if (!OperatingSystem.IsLinux())
            return false;
        try
        {
            return Renameat2(AtWorkingFolder, Encoding.UTF8.GetBytes(one + '\0'), AtWorkingFolder, Encoding.UTF8.GetBytes(other + '\0'), Exchange) == 0;
        }
        catch (Exception missing) when (missing is DllNotFoundException or EntryPointNotFoundException)
        {
            return false;
        }
    }

    [DllImport("libc.so.6", EntryPoint = "renameat2")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int Renameat2(int oldFolder, byte[] oldPath, int newFolder, byte[] newPath, uint flags);
}
