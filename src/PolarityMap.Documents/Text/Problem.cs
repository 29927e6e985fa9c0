using System.Text;

namespace PolarityMap.Documents.Text;

/// <summary>One thing that is wrong with a document, with the place where it is wrong.</summary>
/// <param name="Place">Where.</param>
/// <param name="Message">What is wrong, one plain sentence without a full stop.</param>
/// <param name="Expected">What would be right, worded to follow "expected".</param>
/// <param name="Suggestion">The word that was probably meant, without quotes.</param>
public sealed record Problem(SourcePlace Place, string Message, string? Expected = null, string? Suggestion = null)
{
    /// <summary>The same without its place: <c>message; expected this; did you mean 'that'?</c>.</summary>
    public string Words
    {
        get
        {
            var words = new StringBuilder(Message);
            if (Expected is not null)
                words.Append("; expected ").Append(Expected);
            if (Suggestion is not null)
                words.Append("; did you mean '").Append(Suggestion).Append("'?");
            return words.ToString();
        }
    }

    /// <summary>Prints <c>file:line:col: message; expected this; did you mean 'that'?</c>, one line.</summary>
    public override string ToString() => $"{Place}: {Words}";
}
