using System.Globalization;
using PolarityMap.Core.Optics;
using PolarityMap.Core.Planning;

namespace PolarityMap.Core.Tests.Planning;

/// <summary>Writes the words of a nearest brief into a brief, as somebody would who reads them.</summary>
internal static class WrittenBrief
{
    public static (Brief Brief, PlanCandidate Candidate) Of(Brief brief, PlanCandidate candidate, string words)
    {
        if (words == "no later application")
            return (brief with { Networks = [.. brief.Networks.Select(n => n with { Later = null })] }, candidate);
        if (words.StartsWith("a key of its own for each network", StringComparison.Ordinal))
            return (brief with { Networks = [.. brief.Networks.Select((n, i) => n with { Network = n.Network with { Key = $"K{i + 1}", PlainFits = false } })] }, candidate);
        int colon = words.IndexOf(": ", StringComparison.Ordinal);
        string value = words[(colon + 2)..];
        foreach (string before in new[] { "at most ", "up to ", "above 0 m, such as " })
            value = value.StartsWith(before, StringComparison.Ordinal) ? value[before.Length..] : value;
        foreach (string key in words[..colon].Split(" and "))
            (brief, candidate) = Set(brief, candidate, key, value);
        return (brief, candidate);
    }

    private static (Brief Brief, PlanCandidate Candidate) Set(Brief brief, PlanCandidate candidate, string key, string value) => key switch
    {
        "fibre" => (brief with { Fibre = FibreClass.Find(value)! }, candidate),
        "limits" => (brief with { Limits = LimitProfile.Find(value)! }, candidate),
        "method" => (brief with { Method = PlanMethod.Find(value) }, candidate with { Method = PlanMethod.Find(value)! }),
        "base" => (brief with { Base = Whole(value) }, candidate with { Base = Whole(value) }),
        "separation" => (brief with { Separation = Enum.Parse<SeparationPolicy>(value, ignoreCase: true) }, candidate),
        "angled" => (brief with { Angled = value == "yes" }, candidate),
        "one-cassette" => (brief with { OneCassette = value == "yes" }, candidate),
        "spare" => (brief with { Spare = Share(value) }, candidate),
        "slack" => (brief with { Slack = new Slack(Share(value), default) }, candidate),
        "array-loss" => (brief with { ArrayLoss = Loss(value) }, candidate),
        "duplex-loss" => (brief with { DuplexLoss = Loss(value) }, candidate),
        "margin" => (brief with { Margin = Loss(value) }, candidate),
        "stock-lengths" => (brief with { StockLengths = [.. brief.StockLengths, Way(value)] }, candidate),
        "trunk-legs" => (brief with { TrunkLegs = [.. brief.TrunkLegs, Whole(value)] }, candidate),
        "ports-per-switch" => (brief with { PortsPerSwitch = Whole(value) }, candidate),
        _ => (InList(brief, key, value), candidate),
    };

    private static Brief InList(Brief brief, string key, string value)
    {
        string name = key[(key.IndexOf('.') + 1)..key.LastIndexOf('.')];
        return (key[..key.IndexOf('.')], key[(key.LastIndexOf('.') + 1)..]) switch
        {
            ("networks", "switches") => brief with { Networks = [.. brief.Networks.Select(n => n.Name == name ? n with { Switches = Whole(value) } : n)] },
            ("networks", "application") => brief with { Networks = [.. brief.Networks.Select(n => n.Name == name ? n with { Application = Application.Find(value)!, Later = n.Later?.Name == value ? null : n.Later } : n)] },
            ("networks", "later") => brief with { Networks = [.. brief.Networks.Select(n => n.Name == name ? n with { Later = Application.Find(value)! } : n)] },
            ("rooms", "distance") => brief with { Rooms = [.. brief.Rooms.Select(r => r.Name == name ? r with { Distance = Way(value) } : r)] },
            ("outlets", "distance") => brief with { Outlets = [.. brief.Outlets.Select(o => o.Name.ToString() == name ? o with { Distance = Way(value) } : o)] },
            _ => throw new ArgumentException($"no key of a brief: {key}", nameof(key)),
        };
    }

    private static int Whole(string text) => int.Parse(text, CultureInfo.InvariantCulture);

    private static Length Way(string text) => Length.TryParse(text, out Length length, out string why) ? length : throw new ArgumentException(why, nameof(text));

    private static Decibel Loss(string text) => Decibel.TryParse(text, out Decibel loss, out string why) ? loss : throw new ArgumentException(why, nameof(text));

    private static Percentage Share(string text) => Percentage.TryParse(text, out Percentage share, out string why) ? share : throw new ArgumentException(why, nameof(text));
}
