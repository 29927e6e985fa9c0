using System.Text.Json;
using PolarityMap.Core.Optics;

namespace PolarityMap.Cli.Output;

/// <summary>How figures stand in JSON: bare numbers in the units of docs/json.md, and null where they are not known.</summary>
internal static class OpticsJson
{
    public static void Number(Utf8JsonWriter json, string name, decimal? value)
    {
        // A decimal keeps the zeros of its sums; dividing by a long one drops them.
        if (value is { } number)
            json.WriteNumber(name, number / 1.0000000000000000000000000000m);
        else
            json.WriteNull(name);
    }

    public static decimal Metres(Length length) => length.Millimetres / 1000m;
}
