using System.Text;

namespace PolarityMap.Documents.Editing;

/// <summary>A text with insertions and replacements that are made all at once, so that places stay those of the text as it was.</summary>
internal sealed class TextEdit
{
    private readonly string _text;
    private readonly string _newLine;
    private readonly List<int> _lineStarts = [0];
    private readonly List<(int Index, int Length, string Text)> _changes = [];

    public TextEdit(string text)
    {
        _text = text;
        for (int i = 0; i < text.Length; i++)
        {
            if (text[i] == '\n' || (text[i] == '\r' && (i + 1 == text.Length || text[i + 1] != '\n')))
                _lineStarts.Add(i + 1);
        }

        // New lines end as the first line of the document does.
        int end = text.AsSpan().IndexOfAny('\r', '\n');
        _newLine = end < 0 || text[end] == '\n' ? "\n" : end + 1 < text.Length && text[end + 1] == '\n' ? "\r\n" : "\r";
    }

    /// <summary>The index of a place.</summary>
    public int IndexOf(SourcePlace place) => IndexOf(place.Line, place.Column);

    /// <summary>The index of a line and column, both from 1.</summary>
    public int IndexOf(int line, int column) => Math.Min(_text.Length, _lineStarts[Math.Min(line, _lineStarts.Count) - 1] + column - 1);

    /// <summary>The character at an index; NUL at the end of the text.</summary>
    public char CharAt(int index) => index < _text.Length ? _text[index] : '\0';

    /// <summary>Puts another text in the place of a stretch, or between two characters.</summary>
    public void Replace(int index, int length, string text) => _changes.Add((index, length, text));

    /// <summary>Adds lines after a line, counted from 1.</summary>
    public void InsertLines(int line, IEnumerable<string> lines)
    {
        int end = EndOfLine(line);
        foreach (string added in lines)
            _changes.Add((end, 0, _newLine + added));
    }

    /// <summary>Adds lines at the end of the text, which ends in a line break then if it did before.</summary>
    public void AppendLines(IEnumerable<string> lines)
    {
        // A last line without a line break gets one; the last of the lines then goes without.
        bool isEnded = _text.Length == 0 || _text[^1] is '\n' or '\r';
        string joined = string.Join(_newLine, lines);
        _changes.Add((_text.Length, 0, isEnded ? joined + _newLine : _newLine + joined));
    }

    /// <summary>The text with all changes in it.</summary>
    public string Result()
    {
        var result = new StringBuilder(_text);
        (int Index, int Length, string Text)[] ordered = [.. _changes.Select((c, n) => (c, n)).OrderByDescending(c => c.c.Index).ThenByDescending(c => c.n).Select(c => c.c)];
        foreach ((int index, int length, string text) in ordered)
            result.Remove(index, length).Insert(index, text);
        return result.ToString();
    }

    /// <summary>The index of the line break that ends a line, or the end of the text.</summary>
    private int EndOfLine(int line)
    {
        int start = _lineStarts[Math.Min(line, _lineStarts.Count) - 1];
        int length = _text.AsSpan(start).IndexOfAny('\r', '\n');
        return length < 0 ? _text.Length : start + length;
    }
}
