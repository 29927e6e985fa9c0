using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace PolarityMap.Cli;

/// <summary>
/// Room for all that a large command makes, taken from the system at once and in large pages. Such a command makes tens of
/// megabytes and ends before anything is collected, so that each of its pages is touched once, and first touches of pages of
/// 4 KB took a third of its time. A heap that grows piece by piece never gets large pages, because each piece is smaller than
/// one. Asking takes a millisecond: too much for a command that makes little.
/// </summary>
internal static class HeapRoom
{
    /// <summary>How much is made before anything is collected: as much as the project file says for a program that takes no room.</summary>
    private const int Bytes = 64 << 20;

    /// <summary>What the heap grows by, and what its pieces are aligned to.</summary>
    private const int RegionBytes = 4 << 20;

    /// <summary>MADV_HUGEPAGE of Linux.</summary>
    private const int LargePages = 14;

    /// <summary>
    /// Takes the room. Where it cannot be had, as in a small container or on another system, all goes on as without it. It is
    /// given up by the first collection, which comes when more is made than it holds.
    /// </summary>
    public static void Take()
    {
        // Where memory is short, room that stays empty could be missed elsewhere.
        if (!OperatingSystem.IsLinux() || GC.GetGCMemoryInfo().TotalAvailableMemoryBytes < 8L * Bytes)
            return;
        try
        {
            // The heap grows upwards from where its newest object is. The advice changes no content, whatever else is there.
            object newest = new();
            nint region = Unsafe.As<object, nint>(ref newest) & ~(RegionBytes - 1);
            _ = Advise(region, 2 * Bytes, LargePages);
            _ = GC.TryStartNoGCRegion(Bytes);
        }
        catch (Exception refused) when (refused is ArgumentOutOfRangeException or InvalidOperationException or DllNotFoundException or EntryPointNotFoundException)
        {
            return;
        }
    }

    [DllImport("libc", EntryPoint = "madvise")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int Advise(nint address, nint length, int advice);
}
