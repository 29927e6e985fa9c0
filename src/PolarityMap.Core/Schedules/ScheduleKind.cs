namespace PolarityMap.Core.Schedules;

/// <summary>A kind of schedule: it turns a traced plant into rows. One file per kind in <c>Kinds</c>, listed in <see cref="ScheduleCatalogue"/>.</summary>
public abstract class ScheduleKind
{
    /// <summary>Its name in calls and file names: lower case, words joined by hyphens.</summary>
    public abstract string Name { get; }

    /// <summary>Its title for people.</summary>
    public abstract string Title { get; }

    /// <summary>One sentence: who uses it for what.</summary>
    public abstract string Purpose { get; }

    /// <summary>The columns, from left to right; the same for every plant.</summary>
    public abstract IReadOnlyList<ScheduleColumn> Columns { get; }

    /// <summary>The schedule of a plant. The work grows with the plant and no faster.</summary>
    public Schedule Of(ScheduleInput input) => new(Name, Title, Purpose, Columns, [.. Rows(input)]);

    /// <summary>The rows, each with a cell for every column.</summary>
    protected abstract IEnumerable<IReadOnlyList<Cell>> Rows(ScheduleInput input);
}
