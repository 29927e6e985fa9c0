using PolarityMap.Core.Optics;

namespace PolarityMap.Core.Parts.Kinds;

/// <summary>The ports of interfaces, with the lanes of what they are for.</summary>
internal static class InterfacePorts
{
    /// <summary>Names of the applications whose ports satisfy a condition.</summary>
    public static IReadOnlyList<string> ApplicationsOf(Func<PortForm, bool> wanted)
    {
        var names = new List<string>();
        foreach (Application application in Application.All)
        {
            if (wanted(application.Form))
                names.Add(application.Name);
        }

        return names;
    }

    /// <summary>The face of an interface's receptacle.</summary>
    public static Face FaceOf(PortForm form) => form switch
    {
        PortForm.Simplex => Face.Simplex,
        PortForm.Duplex => Face.Duplex,
        PortForm.Array12 => ArrayBase.Of(12).Face,
        PortForm.Array16 => ArrayBase.Of(16).Face,
        PortForm.Array24 => ArrayBase.Of(24).Face,
        _ => ArrayBase.Of(32).Face,
    };

    /// <summary>
    /// Adds the ports 1, 2, 3, … of an application. A layout of two receptacles makes the ports 1a, 1b, 2a, and so on. A plug
    /// enters an array receptacle key up to key up, and the receptacle has pins (six public sources). Each receptacle counts its
    /// lanes from 1, since it is a port of its own to the cabling.
    /// </summary>
    /// <param name="shape">Where the ports go.</param>
    /// <param name="count">How many interfaces.</param>
    /// <param name="application">What they are for.</param>
    /// <param name="layout">Which of the application's port layouts they have.</param>
    /// <param name="model">What all its ports have in common; face, lanes and keying come from the layout.</param>
    /// <param name="groups">Number of links a port is split into; 0 for none.</param>
    public static void Add(ShapeBuilder shape, int count, Application application, PortLayout layout, PortShape model, int groups)
    {
        Face face = FaceOf(layout.Form);
        for (int n = 1; n <= count; n++)
        {
            for (int receptacle = 0; receptacle < layout.Receptacles; receptacle++)
            {
                int port = shape.AddPort(Receptacle(model with { Application = application, Groups = groups, Receptacles = layout.Receptacles }, face, layout.Receptacles == 1 ? $"{n}" : $"{n}{(char)('a' + receptacle)}", layout.Angled));
                (int first, int lanes) = LanesOf(layout, receptacle);
                foreach (LaneSpec lane in layout.Lanes)
                {
                    if (lane.Receptacle != receptacle)
                        continue;
                    int number = lane.Lane - first + 1;
                    shape.AddLane(new Lane(port, lane.Position, Direction(lane.Use), number)
                    {
                        Group = groups > 0 ? ((number - 1) * groups / lanes) + 1 : number,
                        Sends = lane.Transmit,
                        Hears = lane.Receive,
                    });
                }
            }
        }
    }

    /// <summary>A port with the nature of a receptacle for its face.</summary>
    public static PortShape Receptacle(PortShape model, Face face, string name, bool? angled) => face.Family == ConnectorFamily.Array
        ? model with
        {
            Name = name,
            Face = face,
            Keys = Keying.Aligned,
            KeysFixed = true,
            Pinned = true,
            Connector = "MPO",
            Polish = angled is { } a ? a ? Polish.Angled : Polish.Flat : null,
        }
        : model with { Name = name, Face = face, Polish = angled is null ? null : angled.Value ? Polish.Angled : Polish.Flat };

    /// <summary>The lowest lane number of a receptacle and how many lanes it has.</summary>
    private static (int First, int Count) LanesOf(PortLayout layout, int receptacle)
    {
        int first = int.MaxValue, last = 0;
        foreach (LaneSpec lane in layout.Lanes)
        {
            if (lane.Receptacle != receptacle)
                continue;
            first = Math.Min(first, lane.Lane);
            last = Math.Max(last, lane.Lane);
        }

        return (first, last - first + 1);
    }

    private static LaneDirection Direction(LaneUse use) => use switch
    {
        LaneUse.Transmit => LaneDirection.Transmit,
        LaneUse.Receive => LaneDirection.Receive,
        _ => LaneDirection.Both,
    };
}
