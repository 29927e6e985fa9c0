namespace PolarityMap.Drawing.Scene;

/// <summary>The form of ids, narrow enough for XML, HTML and CSS selectors alike.</summary>
internal static class SceneId
{
    internal static bool IsValid(string id)
    {
        if (id.Length == 0 || !char.IsAsciiLetter(id[0]))
            return false;
        foreach (char c in id)
        {
            if (!char.IsAsciiLetterOrDigit(c) && c is not ('-' or '_' or '.'))
                return false;
        }

        return true;
    }
}
