namespace PolarityMap.Documents.Observations;

/// <summary>Places of many characters of one text. LF, CR LF and a lone CR each end a line.</summary>
internal sealed class LineIndex
{
    private readonly List<int> _starts = [0];
    private readonly string _fileName;
    private readonly int _length;

    public LineIndex(string text, string fileName)
    {
        _fileName = fileName;
        _length = text.Length;
        for (int i = 0; i < text.Length; i++)
        {
            if (text[i] == '\n' || (text[i] == '\r' && !(i + 1 < text.Length && text[i + 1] == '\n')))
                _starts.Add(i + 1);
        }
    }

    public SourcePlace PlaceAt(int index)
    {
        int at = Math.Clamp(index, 0, _length);
        int line = _starts.BinarySearch(at);
        if (line < 0)
            line = ~line - 1;
        return new SourcePlace(_fileName, line + 1, at - _starts[line] + 1);
    }

    /// <summary>The index of a character by line and column, both from 1.</summary>
    public int IndexOf(int line, int column) => line > _starts.Count ? _length : Math.Min(_length, _starts[line - 1] + column - 1);
}
