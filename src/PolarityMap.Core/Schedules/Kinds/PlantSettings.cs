using System.Globalization;
using PolarityMap.Core.Optics;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Schedules.Kinds;

/// <summary>What is said once for the whole plant, in the words of a document.</summary>
public sealed class PlantSettings : ScheduleKind
{
    public override string Name => "plant";

    public override string Title => "Plant";

    public override string Purpose => "For whoever files or reads the tables back: the title block and what the whole plant goes by.";

    public override IReadOnlyList<ScheduleColumn> Columns { get; } = [new("setting", "Setting"), new("value", "Value")];

    protected override IEnumerable<IReadOnlyList<Cell>> Rows(ScheduleInput input)
    {
        PlantTitle title = input.Plant.Title;
        PlantPractice practice = input.Plant.Practice;
        (string Setting, string? Value)[] settings =
        [
            ("plant", title.Title),
            ("site", title.Site),
            ("number", title.Number),
            ("revision", title.Revision),
            ("date", title.Date),
            ("author", title.Author),
            ("limits", practice.Limits.Name),
            ("colours", Colours(practice.Colours)),
            ("margin", practice.Margin is { } margin ? margin.Value.ToString(CultureInfo.InvariantCulture) + " dB" : null),
            ("group-index", practice.GroupIndex?.ToString(CultureInfo.InvariantCulture)),
        ];
        foreach ((string setting, string? value) in settings)
        {
            if (!string.IsNullOrEmpty(value))
                yield return [Cell.Of(setting), Cell.Of(value)];
        }
    }

    /// <summary>A sequence on record by its name, the plant's own as a list.</summary>
    private static string Colours(ColourSequence colours) => ColourSequence.Find(colours.Name) is not null
        ? colours.Name
        : $"[{string.Join(", ", Enumerable.Range(1, colours.Length).Select(n => colours[n].Name))}]";
}
