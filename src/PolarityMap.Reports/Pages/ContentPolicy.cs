using System.Security.Cryptography;
using System.Text;
using PolarityMap.Reports.Templates;

namespace PolarityMap.Reports.Pages;

/// <summary>
/// Shuts a page: it may load nothing, and run no script and use no style but those that stand in it, told by their hashes.
/// </summary>
public static class ContentPolicy
{
    private const string Head = "<head>";

    /// <summary>The page with its policy as the first thing in its head.</summary>
    /// <exception cref="TemplateException">The page has no head.</exception>
    public static string Apply(string page)
    {
        int head = page.IndexOf(Head, StringComparison.Ordinal);
        if (head < 0)
            throw new TemplateException("the page has no <head>; the templates have to write one, so that the page can be shut against the network");
        string policy = $"default-src 'none'; img-src data:; font-src data:; style-src {Hashes(page, "style")}; script-src {Hashes(page, "script")}; base-uri 'none'; form-action 'none'";
        return page.Insert(head + Head.Length, $"\n<meta charset=\"utf-8\">\n<meta http-equiv=\"Content-Security-Policy\" content=\"{policy}\">");
    }

    private static string Hashes(string page, string element)
    {
        var hashes = new List<string>();
        foreach (string content in Contents(page, element))
        {
            string hash = $"'sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(content)))}'";
            if (!hashes.Contains(hash))
                hashes.Add(hash);
        }

        return hashes.Count == 0 ? "'none'" : string.Join(' ', hashes);
    }

    /// <summary>What stands in each element of a name that is not only data.</summary>
    private static IEnumerable<string> Contents(string page, string element)
    {
        int at = 0;
        while ((at = page.IndexOf($"<{element}", at, StringComparison.OrdinalIgnoreCase)) >= 0)
        {
            int begin = page.IndexOf('>', at) + 1;
            int end = begin == 0 ? -1 : page.IndexOf($"</{element}", begin, StringComparison.OrdinalIgnoreCase);
            if (end < 0)
                yield break;
            if (!page.AsSpan(at, begin - at).Contains("application/json", StringComparison.Ordinal))
                yield return page[begin..end];
            at = end;
        }
    }
}
