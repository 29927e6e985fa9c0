namespace PolarityMap.Core.Tests;

/// <summary>Draws lots from a seed: the same seed gives the same draws on every machine (a linear congruential generator of 64 bits).</summary>
internal sealed class Lots(ulong seed)
{
    /// <summary>The seeds of the property tests.</summary>
    public static readonly IReadOnlyList<ulong> Seeds = [1, 2, 3, 5, 8, 13, 21, 34, 55, 89, 144, 233, 377, 610, 987, 1597];

    private ulong _state = seed;

    /// <summary>A number from 0 to <paramref name="below"/> - 1.</summary>
    public int Next(int below)
    {
        _state = unchecked((_state * 6364136223846793005) + 1442695040888963407);
        return (int)((_state >> 33) % (ulong)below);
    }

    public bool Coin() => Next(2) == 1;

    public T Of<T>(IReadOnlyList<T> items) => items[Next(items.Count)];

    /// <summary>The items in a drawn order.</summary>
    public T[] Shuffled<T>(IEnumerable<T> items)
    {
        T[] order = [.. items];
        for (int i = order.Length - 1; i > 0; i--)
        {
            int j = Next(i + 1);
            (order[i], order[j]) = (order[j], order[i]);
        }

        return order;
    }
}
