using System.Collections;

namespace PolarityMap.Core.Deviations;

/// <summary>One difference that is made when somebody asks for it: a part of another make is a shape of its own, and there are very many.</summary>
internal sealed class LateDifference(Func<Difference> make) : IReadOnlyList<Difference>
{
    private Difference? _made;

    public int Count => 1;

    public Difference this[int index] => index == 0 ? _made ??= make() : throw new ArgumentOutOfRangeException(nameof(index));

    public IEnumerator<Difference> GetEnumerator()
    {
        yield return this[0];
    }

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
