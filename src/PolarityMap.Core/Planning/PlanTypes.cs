using PolarityMap.Core.Optics;
using PolarityMap.Core.Parts;

namespace PolarityMap.Core.Planning;

/// <summary>The types of part that a candidate takes, described as the brief asks for them.</summary>
internal sealed class PlanTypes(PlanDraft draft)
{
    private readonly Dictionary<(int, CordPlace, string), PlannedType> _cords = [];

    private Brief Brief => draft.Brief;

    private PlanMethod Method => draft.Candidate.Method;

    private ArrayBase Array => draft.Candidate.Array;

    public PlannedType Switch(int network)
    {
        BriefNetwork of = Brief.Networks[network];
        return draft.Type($"{of.Application.Name} switch", Interface(of.Application), v => v.Set("application", of.Application.Name).Set("ports", Brief.PortsPerSwitch));
    }

    public PlannedType Device(int network, int ports)
    {
        BriefNetwork of = Brief.Networks[network];
        return draft.Type(ports == 1 ? $"{of.Application.Name} device" : $"{of.Application.Name} device of {ports}", Interface(of.Application), v =>
        {
            v.Set("application", of.Application.Name);
            if (ports > 1)
                v.Set("ports", ports);
        });
    }

    public PlannedType Cassette(bool far)
    {
        string wiring = far ? Method.FarFor(Array) : Method.NearFor(Array);
        return draft.Type($"{(far && !Method.HasOneCassette ? "far " : "")}cassette of {Array.Fibres / 2}", $"{wiring} cassette", SetCassette);
    }

    public PlannedType Outlet() => draft.Type($"outlet of {Array.Fibres / 2}", "outlet", v => SetCassette(v.Set("wiring", Method.FarFor(Array))));

    public PlannedType Trunk(Length length, int legs, bool fromAdapter = false)
    {
        string name = $"{(legs > 1 ? $"{legs}-leg " : "")}{(fromAdapter ? "outlet cable" : "trunk")} {length}";
        return draft.Type(name, $"{Method.TrunkFor(Array)} trunk", v =>
        {
            SetBase(v, 12);
            if (legs > 1)
                v.Set("legs", legs);
            v.Set("length", length);
            if (fromAdapter)
                v.Set("pins", "far");
            SetArray(v);
        });
    }

    public PlannedType Panel(int ports)
    {
        string of = Method.Keys == Keying.Opposed ? "Type-A adapter panel" : "Type-B adapter panel";
        return draft.Type($"panel of {ports}", of, v =>
        {
            SetBase(v, 12);
            v.Set("ports", ports);
        });
    }

    /// <summary>A duplex cord of a network. A key is carried at the ends that do not enter an interface.</summary>
    public PlannedType Cord(int network, CordPlace place, string type)
    {
        if (_cords.TryGetValue((network, place, type), out PlannedType? known))
            return known;
        BriefNetwork of = Brief.Networks[network];
        return _cords[(network, place, type)] = CordType(of, place, $"{type} cord", v =>
        {
            SetCord(v, of);
            if (of.Network.Key is not null && place != CordPlace.Zone)
                v.Set("keyed", place == CordPlace.Switch ? "far" : "near");
            if (Brief.DuplexLoss is { } loss)
                v.Set("duplex-loss", loss);
        });
    }

    /// <summary>An array cord of a network, with the end face of the interface at one end and that of the trunks at the other.</summary>
    public PlannedType ArrayCord(int network, CordPlace place, string map)
    {
        BriefNetwork of = Brief.Networks[network];
        Polish plant = Brief.IsAngled ? Polish.Angled : Polish.Flat;
        Polish face = of.Application.Layouts[0].Angled is { } angled ? angled ? Polish.Angled : Polish.Flat : plant;
        return CordType(of, place, $"{map} cord", v =>
        {
            SetCord(v, of);
            SetBase(v, map is "Type-A" or "Type-B" or "Type-C" ? 12 : 24);
            if (face != plant)
            {
                v.Set("polish", (place == CordPlace.Switch ? face : plant).Word());
                v.Set("far-polish", (place == CordPlace.Switch ? plant : face).Word());
            }
            else
            {
                SetPolish(v);
            }

            if (Brief.ArrayLoss is { } loss)
                v.Set("array-loss", loss);
        });
    }

    public Length LengthOf(CordPlace place) => place switch
    {
        CordPlace.Switch => Brief.Cords.Switch,
        CordPlace.Zone => Brief.Cords.Zone,
        _ => Brief.Cords.Device,
    };

    private static string Interface(Application application) => application.IsParallel ? "parallel interface" : "duplex interface";

    /// <summary>A cord named after its place, or after its network alone where it serves in several places.</summary>
    private PlannedType CordType(BriefNetwork of, CordPlace place, string cord, Action<AttributeValues> set)
    {
        string name = $"{of.Name} {place switch
        {
            CordPlace.Switch => "switch",
            CordPlace.Zone => "zone",
            _ => "device",
        }} cord";
        PlannedType type = draft.Type(name, cord, set);
        if (type.Name != name && type.IsWritten)
            draft.Rename(type, $"{of.Name} cord");
        return type;
    }

    private static void SetCord(AttributeValues v, BriefNetwork of)
    {
        v.Set("network", of.Name);
        if (of.Network.Colour is { } colour)
            v.Set("jacket", colour);
    }

    private void SetCassette(AttributeValues v)
    {
        SetBase(v, Array.IsOneRow || v.Has("wiring") || Method.NearFor(Array) == "straight" ? 12 : 24);
        if (Method.Keys != Keying.Opposed)
            v.Set("keys", Method.Keys.Word());
        SetArray(v);
        if (Brief.DuplexLoss is { } loss)
            v.Set("duplex-loss", loss);
    }

    private void SetArray(AttributeValues v)
    {
        SetPolish(v);
        if (Brief.ArrayLoss is { } loss)
            v.Set("array-loss", loss);
    }

    /// <summary>The end face, where it is not that which the fibre has by custom.</summary>
    private void SetPolish(AttributeValues v)
    {
        if (Brief.IsAngled == Brief.Fibre.IsMultimode)
            v.Set("polish", (Brief.IsAngled ? Polish.Angled : Polish.Flat).Word());
    }

    private void SetBase(AttributeValues v, int without)
    {
        if (draft.Candidate.Base != without)
            v.Set("base", draft.Candidate.Base);
    }
}

/// <summary>Where a patch cord is plugged.</summary>
internal enum CordPlace
{
    /// <summary>Near end in a switch.</summary>
    Switch,

    /// <summary>Between two cassettes of a zone box.</summary>
    Zone,

    /// <summary>Far end in a device.</summary>
    Device,
}
