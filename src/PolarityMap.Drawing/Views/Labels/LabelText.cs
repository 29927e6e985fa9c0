namespace PolarityMap.Drawing.Views.Labels;

/// <summary>What one label says.</summary>
/// <param name="Address">The end or port, <c>PART/PORT</c>: its largest words, and the text of its QR code.</param>
/// <param name="Ends">Lines that must be there: what a cable's end sits in, and what is at the far end.</param>
/// <param name="About">What it is, left out where the label is too small.</param>
internal sealed record LabelText(string Address, IReadOnlyList<string> Ends, string About);
