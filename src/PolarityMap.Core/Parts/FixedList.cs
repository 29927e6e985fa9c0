using System.Collections;

namespace PolarityMap.Core.Parts;

/// <summary>
/// A list that never changes. Its class is known wherever it is read, so that an index or a loop over it is one on an array;
/// by way of an interface it would be a call for each item.
/// </summary>
public sealed class FixedList<T> : IReadOnlyList<T>
{
    private readonly T[] _items;

    internal FixedList(T[] items) => _items = items;

    public int Count => _items.Length;

    /// <summary>The items as they lie, without copying any.</summary>
    public ReadOnlySpan<T> Span => _items;

    public T this[int index] => _items[index];

    public Enumerator GetEnumerator() => new(_items);

    IEnumerator<T> IEnumerable<T>.GetEnumerator() => ((IEnumerable<T>)_items).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => _items.GetEnumerator();

    /// <summary>Goes through the items in order.</summary>
    public struct Enumerator
    {
        private readonly T[] _items;
        private int _next;

        internal Enumerator(T[] items) => _items = items;

        public readonly T Current => _items[_next - 1];

        public bool MoveNext() => _next++ < _items.Length;
    }
}
