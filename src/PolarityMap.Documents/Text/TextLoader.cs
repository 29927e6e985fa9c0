using System.Buffers;
using System.Globalization;
using System.Text;
using System.Text.Unicode;

namespace PolarityMap.Documents.Text;

/// <summary>Turns the bytes of a file into text, or says why they are no text.</summary>
public static class TextLoader
{
    /// <summary>The largest file that is read, 16 MiB: far beyond any plant, small enough to hold in memory several times.</summary>
    public const int MaxBytes = 16 * 1024 * 1024;

    /// <summary>
    /// Decodes strict UTF-8, with or without a byte order mark, which is dropped. Line breaks stay as they are, so that
    /// indexes and places are those of the file. Bytes that are not UTF-8, other encodings and the
    /// <see cref="ForbiddenCharacters"/> are problems.
    /// </summary>
    public static bool TryDecode(ReadOnlySpan<byte> bytes, string fileName, ProblemList problems, out string text)
    {
        text = "";
        var start = new SourcePlace(fileName, 1, 1);
        if (bytes.Length > MaxBytes)
        {
            problems.Add(start, $"the file has {bytes.Length} bytes, more than the {MaxBytes} that are read; split it into several files");
            return false;
        }

        if (OtherEncoding(bytes) is { } encoding)
        {
            problems.Add(start, $"the file is {encoding}; save the file as UTF-8");
            return false;
        }

        if (bytes.StartsWith("\uFEFF"u8))
            bytes = bytes[3..];

        if (!Utf8.IsValid(bytes))
        {
            var bad = FirstBadByte(bytes);
            var before = Encoding.UTF8.GetString(bytes[..bad]);
            var code = bytes[bad].ToString("X2", CultureInfo.InvariantCulture);
            problems.Add(SourceLines.PlaceAt(before, before.Length, fileName), $"byte 0x{code} is not UTF-8 here; save the file as UTF-8");
            return false;
        }

        var decoded = Encoding.UTF8.GetString(bytes);
        if (!ForbiddenCharacters.Check(decoded, fileName, problems))
            return false;

        text = decoded;
        return true;
    }

    private static string? OtherEncoding(ReadOnlySpan<byte> bytes)
    {
        // The four-byte mark first: the little-endian one begins with the two-byte one.
        if (bytes.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xFE, 0, 0]) || bytes.StartsWith((ReadOnlySpan<byte>)[0, 0, 0xFE, 0xFF]))
            return "UTF-32";
        return bytes.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xFE]) || bytes.StartsWith((ReadOnlySpan<byte>)[0xFE, 0xFF]) ? "UTF-16" : null;
    }

    private static int FirstBadByte(ReadOnlySpan<byte> bytes)
    {
        var at = 0;
        while (at < bytes.Length && Rune.DecodeFromUtf8(bytes[at..], out _, out var consumed) == OperationStatus.Done)
            at += consumed;
        return at;
    }
}
