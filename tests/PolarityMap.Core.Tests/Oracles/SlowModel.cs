namespace PolarityMap.Core.Tests.Oracles;

/// <summary>One fibre hole of a ferrule, seen at the end face with key up. Coordinates are in fibre pitches from the middle, y upwards.</summary>
public readonly record struct Hole(int Number, double X, double Y);

/// <summary>A fixed link between two cassettes: each part is a lookup from what enters to what leaves.</summary>
public sealed record SlowLink(
    Dictionary<(int Port, char Position), int> LeftTransition,
    Dictionary<int, int> LeftMating,
    Dictionary<int, int> Trunk,
    Dictionary<int, int> RightMating,
    Dictionary<(int Port, char Position), int> RightTransition);

/// <summary>
/// A tiny reference model of a channel. It looks one thing up after another, and nothing else; it is written from
/// sections 1, 2 and 5 of the trade facts alone and knows no method.
/// </summary>
public static class SlowModel
{
    /// <summary>The holes of a ferrule: 1 at the top left, counting right, then on with the row below (section 1, rule 1).</summary>
    public static List<Hole> Ferrule(int rows, int columns)
    {
        var holes = new List<Hole>();
        for (var row = 1; row <= rows; row++)
        {
            for (var column = 1; column <= columns; column++)
                holes.Add(new Hole(holes.Count + 1, column - ((columns + 1) / 2.0), ((rows + 1) / 2.0) - row));
        }

        return holes;
    }

    /// <summary>
    /// What touches what when two like ferrules meet face to face (section 5). The other face is seen from behind, so its
    /// left and right change places; with opposed keys it is also turned half round.
    /// </summary>
    public static Dictionary<int, int> Mating(int rows, int columns, bool opposed)
    {
        var joins = new Dictionary<int, int>();
        foreach (var here in Ferrule(rows, columns))
        {
            foreach (var there in Ferrule(rows, columns))
            {
                var x = -there.X;
                var y = there.Y;
                if (opposed)
                {
                    x = -x;
                    y = -y;
                }

                if (Math.Sqrt(((here.X - x) * (here.X - x)) + ((here.Y - y) * (here.Y - y))) < 0.1)
                    joins.Add(here.Number, there.Number);
            }
        }

        return joins;
    }

    /// <summary>What an adapter of a kind joins on one row (sections 1.6 and 2.3): Type-A opposes the keys, Type-B aligns them.</summary>
    public static Dictionary<int, int> Adapter(string kind, int places) => kind switch
    {
        "Type-A" => Mating(1, places, opposed: true),
        "Type-B" => Mating(1, places, opposed: false),
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "no such adapter"),
    };

    /// <summary>
    /// What an uncrossed ribbon joins between its two end faces (section 2.1). Its far face is seen from the other side, as
    /// in a mating, and one end may be turned half round.
    /// </summary>
    public static Dictionary<int, int> UncrossedCable(int rows, int columns, bool keysAlike) => Mating(rows, columns, opposed: !keysAlike);

    /// <summary>The places of the ferrule that carries so many fibres in one row: eight fibres sit in twelve places (section 2.1).</summary>
    public static int Places(int fibres) => fibres == 8 ? 12 : fibres;

    /// <summary>The positions that carry fibre, in rising order.</summary>
    public static List<int> Populated(int fibres)
    {
        var positions = new List<int>();
        for (var position = 1; position <= Places(fibres); position++)
        {
            if (fibres != 8 || position <= 4 || position >= 9)
                positions.Add(position);
        }

        return positions;
    }

    /// <summary>An array cable by its type (section 2.1), near to far.</summary>
    public static Dictionary<int, int> Cable(string type, int fibres)
    {
        var map = new Dictionary<int, int>();
        foreach (var near in Populated(fibres))
        {
            map[near] = type switch
            {
                "Type-A" => near,
                "Type-B" => Places(fibres) + 1 - near,
                "Type-C" => near % 2 == 1 ? near + 1 : near - 1,
                _ => throw new ArgumentOutOfRangeException(nameof(type), type, "no such cable type"),
            };
        }

        return map;
    }

    /// <summary>A transition by its key (section 2.5): duplex port and position to array position.</summary>
    public static Dictionary<(int Port, char Position), int> Transition(string key, int fibres)
    {
        var populated = Populated(fibres);
        var ports = fibres / 2;
        var map = new Dictionary<(int Port, char Position), int>();
        for (var port = 1; port <= ports; port++)
        {
            var low = populated[port - 1];
            var high = populated[^port];
            var (a, b) = key switch
            {
                "straight" => (populated[(2 * port) - 2], populated[(2 * port) - 1]),
                "straight-reversed" => (populated[^(2 * port)], populated[^((2 * port) - 1)]),
                "U1" => (low, high),
                "U2" => (high, low),
                _ => throw new ArgumentOutOfRangeException(nameof(key), key, "no such transition"),
            };
            map[(port, 'A')] = a;
            map[(port, 'B')] = b;
        }

        return map;
    }

    /// <summary>A link of named parts, all of one size.</summary>
    public static SlowLink Link(string leftTransition, string leftAdapter, string trunk, string rightAdapter, string rightTransition, int fibres = 12) =>
        new(
            Transition(leftTransition, fibres),
            Adapter(leftAdapter, Places(fibres)),
            Cable(trunk, fibres),
            Adapter(rightAdapter, Places(fibres)),
            Transition(rightTransition, fibres));

    /// <summary>The same link walked from its other end.</summary>
    public static SlowLink Reversed(SlowLink link) =>
        new(link.RightTransition, Inverse(link.RightMating), Inverse(link.Trunk), Inverse(link.LeftMating), link.LeftTransition);

    /// <summary>
    /// What the left transceiver's (port, "Tx" or "Rx") meets at the right, or null where the way ends.
    /// There is one cord more than there are links; cords and links alternate from left to right.
    /// </summary>
    public static (int Port, string Role)? Answer(IReadOnlyList<string> cords, IReadOnlyList<SlowLink> links, int port, string role)
    {
        // A transceiver transmits at A and receives at B, and every duplex mating joins A to B (section 1, rules 3 and 4).
        var position = role == "Tx" ? 'A' : 'B';
        for (var i = 0; i < cords.Count; i++)
        {
            position = Across(position);
            position = Cord(cords[i], position);
            position = Across(position);
            if (i == cords.Count - 1)
                break;

            var link = links[i];
            if (!link.LeftTransition.TryGetValue((port, position), out var array))
                return null;
            var arrived = Walk([link.LeftMating, link.Trunk, link.RightMating], array);
            var found = arrived is null ? null : PortBehind(link.RightTransition, arrived.Value);
            if (found is null)
                return null;
            (port, position) = found.Value;
        }

        return (port, RoleOf(position));
    }

    /// <summary>What the left (port, role) meets through one cord, one link and one cord.</summary>
    public static (int Port, string Role)? Answer(string leftCord, SlowLink link, string rightCord, int port, string role) =>
        Answer([leftCord, rightCord], [link], port, role);

    /// <summary>True where every port's transmitter meets the receiver of the same port, and its receiver the transmitter.</summary>
    public static bool Works(IReadOnlyList<string> cords, IReadOnlyList<SlowLink> links, int ports)
    {
        for (var port = 1; port <= ports; port++)
        {
            if (Answer(cords, links, port, "Tx") != (port, "Rx") || Answer(cords, links, port, "Rx") != (port, "Tx"))
                return false;
        }

        return true;
    }

    /// <summary>
    /// What an array port's position meets behind array parts, a transition and a duplex cord: (duplex transceiver port, role).
    /// </summary>
    public static (int Port, string Role)? AnswerBreakout(
        int receptacle,
        IReadOnlyList<Dictionary<int, int>> steps,
        Dictionary<(int Port, char Position), int> transition,
        string cord)
    {
        var arrived = Walk(steps, receptacle);
        var found = arrived is null ? null : PortBehind(transition, arrived.Value);
        return found is null ? null : (found.Value.Port, RoleOf(Across(Cord(cord, Across(found.Value.Position)))));
    }

    /// <summary>What an array port's position meets through a harness whose legs plug straight into duplex transceivers.</summary>
    public static (int Port, string Role)? AnswerHarness(
        int receptacle,
        IReadOnlyList<Dictionary<int, int>> steps,
        Dictionary<(int Port, char Position), int> legs)
    {
        var arrived = Walk(steps, receptacle);
        var found = arrived is null ? null : PortBehind(legs, arrived.Value);
        return found is null ? null : (found.Value.Port, RoleOf(Across(found.Value.Position)));
    }

    /// <summary>Where a walk from array to array arrives, or null where a part has nothing at that position.</summary>
    public static int? Walk(IReadOnlyList<Dictionary<int, int>> steps, int position)
    {
        foreach (var step in steps)
        {
            if (!step.TryGetValue(position, out position))
                return null;
        }

        return position;
    }

    private static (int Port, char Position)? PortBehind(Dictionary<(int Port, char Position), int> transition, int array)
    {
        foreach (var (place, wired) in transition)
        {
            if (wired == array)
                return place;
        }

        return null;
    }

    private static Dictionary<int, int> Inverse(Dictionary<int, int> map)
    {
        var inverse = new Dictionary<int, int>();
        foreach (var (from, to) in map)
            inverse.Add(to, from);
        return inverse;
    }

    private static char Across(char position) => position == 'A' ? 'B' : 'A';

    private static string RoleOf(char position) => position == 'A' ? "Tx" : "Rx";

    private static char Cord(string cord, char position) => cord switch
    {
        "A-to-B" => Across(position),
        "A-to-A" => position,
        _ => throw new ArgumentOutOfRangeException(nameof(cord), cord, "no such cord"),
    };
}
