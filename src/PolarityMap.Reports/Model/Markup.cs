namespace PolarityMap.Reports.Model;

/// <summary>
/// HTML that this program made itself, such as a drawing. The only kind of text that reaches a page as it is; everything else
/// goes through <see cref="HtmlText"/>.
/// </summary>
public readonly record struct Markup(string Html)
{
    public override string ToString() => Html;
}
