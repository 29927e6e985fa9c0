using System.Collections;

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
internal sealed class HandedItems<T> : IReadOnlyList<T>
    where T : class, INumbered<T>
{
    private T[] _items = [];
    private int _count;
    private int[]? _handedBy;

    public int Count => _count;

    /// <summary>An item, by the builder's numbers.</summary>
    public T this[int index]
    {
        get
        {
            TakeBack();
            return _items[index];
        }

        set
        {
            TakeBack();
            _items[index] = value;
        }
    }

    public void Add(T item)
    {
        TakeBack();
        if (_count == _items.Length)
            Array.Resize(ref _items, Math.Max(16, 2 * _count));
        _items[_count++] = item;
    }

    public void RemoveAt(int index)
    {
        TakeBack();
        _count--;
        Array.Copy(_items, index + 1, _items, index, _count - index);
    }

    /// <summary>Makes room for so many more, where they are many beside what there is.</summary>
    public void Expect(int more)
    {
        TakeBack();
        if (more > _count / 4 && _count + more > _items.Length)
            Array.Resize(ref _items, _count + more);
    }

    /// <summary>Hands the items out, by the plant's numbers.</summary>
    /// <param name="numbers">For each of the builder's numbers that of the plant.</param>
    public T[] Hand(int[] numbers)
    {
        TakeBack();
        if (_count < _items.Length)
            Array.Resize(ref _items, _count);
        foreach (T item in _items)
            item.Renumber(numbers);
        _handedBy = numbers;
        return _items;
    }

    public IEnumerator<T> GetEnumerator()
    {
        for (int i = 0; i < _count; i++)
            yield return this[i];
    }

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    private void TakeBack()
    {
        if (_handedBy is null)
            return;
        var back = new int[_handedBy.Length];
        for (int i = 0; i < back.Length; i++)
            back[_handedBy[i]] = i;
        _items = [.. _items];
        for (int i = 0; i < _count; i++)
        {
            _items[i] = _items[i].Copy();
            _items[i].Renumber(back);
        }

        _handedBy = null;
    }
}
