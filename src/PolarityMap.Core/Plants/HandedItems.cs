namespace PolarityMap.Core.Plants;

/// <summary>Something that names parts by their numbers.</summary>
internal interface INumbered<T>
{
    /// <summary>A copy of its own.</summary>
    T Copy();

    /// <summary>Puts <c>numbers[i]</c> for the part number <c>i</c>.</summary>
    void Renumber(int[] numbers);
}

/// <summary>
/// Matings or links that a builder collects and hands to a plant. The plant numbers parts in another order; as there may be a
/// hundred thousand, the items are renumbered where they are, and the builder makes itself copies only if it is used again.
/// </summary>
internal sealed class HandedItems<T>
    where T : class, INumbered<T>
{
    private readonly List<T> _items = [];
    private int[]? _handedBy;

    /// <summary>The items, by the builder's numbers.</summary>
    public List<T> Items
    {
        get
        {
            if (_handedBy is not null)
                TakeBack(_handedBy);
            return _items;
        }
    }

    /// <summary>Hands the items out, by the plant's numbers.</summary>
    /// <param name="numbers">For each of the builder's numbers that of the plant.</param>
    public T[] Hand(int[] numbers)
    {
        foreach (T item in Items)
            item.Renumber(numbers);
        _handedBy = numbers;
        return [.. _items];
    }

    private void TakeBack(int[] handedBy)
    {
        var back = new int[handedBy.Length];
        for (int i = 0; i < back.Length; i++)
            back[handedBy[i]] = i;
        for (int i = 0; i < _items.Count; i++)
        {
            _items[i] = _items[i].Copy();
            _items[i].Renumber(back);
        }

        _handedBy = null;
    }
}
