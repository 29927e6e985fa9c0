using System.Collections;

namespace PolarityMap.Documents.Binding;

/// <summary>
/// The addresses that one text stands for, the leftmost range changing slowest. They are put together when asked for: a run of
/// a thousand chains has some hundred names of parts and a dozen of ports.
/// </summary>
/// <param name="parts">Indices of the parts.</param>
/// <param name="ports">The texts after the stroke, or one null.</param>
/// <param name="positions">The texts after the colon, or one null.</param>
internal sealed class AddressList(int[] parts, IReadOnlyList<string?> ports, IReadOnlyList<string?> positions) : IReadOnlyList<Address>
{
    private readonly int _eachPart = ports.Count * positions.Count;

    public int Count { get; } = parts.Length * ports.Count * positions.Count;

    public Address this[int index]
    {
        get
        {
            (int part, int within) = Math.DivRem(index, _eachPart);
            (int port, int position) = Math.DivRem(within, positions.Count);
            return new Address(parts[part], ports[port], positions[position]);
        }
    }

    public IEnumerator<Address> GetEnumerator()
    {
        for (int i = 0; i < Count; i++)
            yield return this[i];
    }

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
