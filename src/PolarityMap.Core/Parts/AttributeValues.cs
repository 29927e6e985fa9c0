using PolarityMap.Core.Optics;

namespace PolarityMap.Core.Parts;

/// <summary>
/// The attributes of one part, already of the right sort and within the limits of the kind's specifications.
/// A value that was not given answers with the specification's default.
/// </summary>
public sealed class AttributeValues
{
    private readonly IReadOnlyList<AttributeSpec> _specs;
    private readonly Dictionary<string, object> _values = [];

    public AttributeValues(IReadOnlyList<AttributeSpec> specs, PartDefaults? defaults = null)
    {
        _specs = specs;
        Defaults = defaults ?? PartDefaults.None;
    }

    /// <summary>What the plant says for parts that do not say it themselves.</summary>
    public PartDefaults Defaults { get; }

    /// <summary>The names of the attributes that were given.</summary>
    public IEnumerable<string> Given => _values.Keys;

    public bool Has(string name) => _values.ContainsKey(name);

    public AttributeValues Set(string name, string word) => SetValue(name, word);

    public AttributeValues Set(string name, int number) => SetValue(name, number);

    public AttributeValues Set(string name, Length length) => SetValue(name, length);

    public AttributeValues Set(string name, IReadOnlyList<DuplexPair> wiring) => SetValue(name, wiring);

    public AttributeValues Set(string name, Decibel loss) => SetValue(name, loss);

    public AttributeValues Set(string name, Attenuation attenuation) => SetValue(name, attenuation);

    public AttributeValues Set(string name, IReadOnlyList<string> words) => SetValue(name, words);

    public AttributeValues Set(string name, IReadOnlyList<IReadOnlyList<WidePosition>> wiring) => SetValue(name, wiring);

    public AttributeValues Set(string name, IReadOnlyList<int> numbers) => SetValue(name, numbers);

    /// <summary>Takes every value of another set that this one does not have, nor anything that stands instead of it.</summary>
    public void FillFrom(AttributeValues other)
    {
        string[] own = [.. _values.Keys];
        foreach ((string name, object value) in other._values)
        {
            if (!IsReplaced(name, own))
                _values.TryAdd(name, value);
        }
    }

    /// <summary>A word or free text, or null when neither given nor defaulted.</summary>
    public string? Word(string name) => _values.TryGetValue(name, out object? v) ? v as string : Spec(name)?.Default;

    public int WholeNumber(string name) => _values.TryGetValue(name, out object? v)
        ? (int)v
        : int.Parse(Spec(name)!.Default!, System.Globalization.CultureInfo.InvariantCulture);

    public Length? Length(string name) => _values.TryGetValue(name, out object? v) ? (Length)v : null;

    public Decibel? Loss(string name) => _values.TryGetValue(name, out object? v) ? (Decibel)v : null;

    public Attenuation? Attenuation(string name) => _values.TryGetValue(name, out object? v) ? (Attenuation)v : null;

    public IReadOnlyList<string> Words(string name) => _values.TryGetValue(name, out object? v) ? (IReadOnlyList<string>)v : [];

    /// <summary>A conversion that the document writes out, or null.</summary>
    public IReadOnlyList<IReadOnlyList<WidePosition>>? ConversionList(string name) =>
        _values.TryGetValue(name, out object? v) ? v as IReadOnlyList<IReadOnlyList<WidePosition>> : null;

    /// <summary>A wiring that the document writes out, or null when it names one.</summary>
    public IReadOnlyList<DuplexPair>? WiringList(string name) => _values.TryGetValue(name, out object? v) ? v as IReadOnlyList<DuplexPair> : null;

    public IReadOnlyList<int> Numbers(string name) => _values.TryGetValue(name, out object? v) ? (IReadOnlyList<int>)v : [];

    /// <summary>Takes one value of another set as it was set there.</summary>
    internal void Copy(AttributeValues other, string name) => _values[name] = other._values[name];

    /// <summary>A value as it was set, or null when it was not given.</summary>
    internal object? Raw(string name) => _values.GetValueOrDefault(name);

    private AttributeValues SetValue(string name, object value)
    {
        _values[name] = value;
        return this;
    }

    private bool IsReplaced(string name, string[] own)
    {
        foreach (string given in own)
        {
            if (Spec(given)?.InsteadOf == name || Spec(name)?.InsteadOf == given)
                return true;
        }

        return false;
    }

    private AttributeSpec? Spec(string name)
    {
        foreach (AttributeSpec spec in _specs)
        {
            if (spec.Name == name)
                return spec;
        }

        return null;
    }
}
