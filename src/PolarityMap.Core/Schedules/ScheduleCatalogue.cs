using PolarityMap.Core.Schedules.Kinds;

namespace PolarityMap.Core.Schedules;

/// <summary>The one list of schedules. A new one is one file in <c>Kinds</c> and one line here.</summary>
public static class ScheduleCatalogue
{
    public static readonly IReadOnlyList<ScheduleKind> All =
    [
        new ConnectionSchedule(),
        new PatchSchedule(),
        new CableSchedule(),
        new PartsList(),
        new LabelSchedule(),
        new TestSheet(),
        new TerminationSheet(),
        new NetworkList(),
        new PlantSettings(),
    ];

    /// <summary>The schedule with this name, or null.</summary>
    public static ScheduleKind? Find(string name)
    {
        foreach (ScheduleKind kind in All)
        {
            if (kind.Name == name)
                return kind;
        }

        return null;
    }
}
