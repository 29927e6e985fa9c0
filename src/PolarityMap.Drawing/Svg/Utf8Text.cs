using System.Runtime.CompilerServices;
using System.Text;

namespace PolarityMap.Drawing.Svg;

/// <summary>A growing text in UTF-8: what a file holds, without a step over a string.</summary>
/// <param name="bytes">Where it is written, until it grows beyond that.</param>
internal sealed class Utf8Text(byte[] bytes)
{
    private byte[] _bytes = bytes;

    public Utf8Text(int capacity)
        : this(new byte[capacity])
    {
    }

    public int Length { get; private set; }

    /// <summary>Where it is written now.</summary>
    public byte[] Bytes => _bytes;

    public ReadOnlyMemory<byte> Written => _bytes.AsMemory(0, Length);

    // Where it is called with a literal, whose length is known, that becomes a copy in one or two steps.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Utf8Text Append(ReadOnlySpan<byte> text)
    {
        text.CopyTo(Room(text.Length));
        Length += text.Length;
        return this;
    }

    public Utf8Text Append(byte character)
    {
        Room(1)[0] = character;
        Length++;
        return this;
    }

    /// <summary>Appends any characters; a surrogate without its partner becomes U+FFFD.</summary>
    public Utf8Text Append(ReadOnlySpan<char> text)
    {
        const int mostBytesOfACharacter = 3;
        Length += Encoding.UTF8.GetBytes(text, Room(text.Length * mostBytesOfACharacter));
        return this;
    }

    /// <summary>Free bytes to write into; <see cref="Advance"/> says how many were written.</summary>
    public Span<byte> Reserve(int length) => Room(length);

    public void Advance(int length) => Length += length;

    public void Clear() => Length = 0;

    public override string ToString() => Encoding.UTF8.GetString(_bytes, 0, Length);

    private Span<byte> Room(int length)
    {
        if (_bytes.Length - Length < length)
            Grow(length);
        return _bytes.AsSpan(Length);
    }

    private void Grow(int length) => Array.Resize(ref _bytes, Math.Max(2 * _bytes.Length, Length + length));
}
