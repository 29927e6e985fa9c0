using System.Buffers.Binary;
using System.Text;

namespace PolarityMap.Drawing.Tests.Fonts;

/// <summary>
/// Reads the few TrueType tables the tests need, straight from the file layout in the public OpenType
/// specification (table directory, head, hhea, hmtx, OS/2, name, cmap format 4), so that it owes nothing to the
/// code under test.
/// </summary>
internal sealed class TrueTypeFile(byte[] bytes)
{
    internal int UnitsPerEm => U16(Table("head") + 18);

    /// <summary>sCapHeight, present from version 2 of the table.</summary>
    internal int CapHeight => U16(Table("OS/2") + 88);

    internal int Glyph(int codePoint)
    {
        int cmap = Format4();
        int segments = U16(cmap + 6) / 2;
        int ends = cmap + 14;
        int starts = ends + (segments * 2) + 2;
        int deltas = starts + (segments * 2);
        int offsets = deltas + (segments * 2);
        for (int i = 0; i < segments; i++)
        {
            if (codePoint > U16(ends + (2 * i)))
                continue;
            int start = U16(starts + (2 * i));
            if (codePoint < start)
                return 0;
            int delta = U16(deltas + (2 * i));
            int offset = U16(offsets + (2 * i));
            if (offset == 0)
                return (codePoint + delta) & 0xFFFF;
            int glyph = U16(offsets + (2 * i) + offset + (2 * (codePoint - start)));
            return glyph == 0 ? 0 : (glyph + delta) & 0xFFFF;
        }

        return 0;
    }

    internal int Advance(int glyph)
    {
        int last = U16(Table("hhea") + 34) - 1;
        return U16(Table("hmtx") + (4 * Math.Min(glyph, last)));
    }

    internal IEnumerable<(int Id, string Text)> Names()
    {
        int table = Table("name");
        int storage = table + U16(table + 4);
        for (int i = 0; i < U16(table + 2); i++)
        {
            int record = table + 6 + (12 * i);
            string text = Encoding.BigEndianUnicode.GetString(bytes, storage + U16(record + 10), U16(record + 8));
            yield return (U16(record + 6), text);
        }
    }

    private int Format4()
    {
        int table = Table("cmap");
        for (int i = 0; i < U16(table + 2); i++)
        {
            int subtable = table + (int)U32(table + 4 + (8 * i) + 4);
            if (U16(subtable) == 4)
                return subtable;
        }

        throw new InvalidDataException("no cmap of format 4");
    }

    private int Table(string tag)
    {
        for (int i = 0; i < U16(4); i++)
        {
            int record = 12 + (16 * i);
            if (Encoding.ASCII.GetString(bytes, record, 4) == tag)
                return (int)U32(record + 8);
        }

        throw new InvalidDataException("no table " + tag);
    }

    private int U16(int at) => BinaryPrimitives.ReadUInt16BigEndian(bytes.AsSpan(at));

    private uint U32(int at) => BinaryPrimitives.ReadUInt32BigEndian(bytes.AsSpan(at));
}
