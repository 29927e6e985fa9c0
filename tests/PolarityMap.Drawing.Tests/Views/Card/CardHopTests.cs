using PolarityMap.Core.Parts;
using PolarityMap.Core.Strands;
using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Views;
using Xunit;

namespace PolarityMap.Drawing.Tests.Views.Card;

/// <summary>
/// What a finger meets that follows a strand down its cards, against a walk of the tests' own over the two arrays of the graph:
/// inside a part, out over a mating, and so on. The walk uses nothing that the cards use.
/// </summary>
public sealed class CardHopTests
{
    public static TheoryData<string> Documents => CardDocuments.All;

    [Theory]
    [MemberData(nameof(Documents))]
    public void A_finger_on_a_strand_meets_its_positions_in_the_order_of_the_walk(string document)
    {
        (ViewInput input, IReadOnlyList<DrawingSheet> sheets) = CardDocuments.Drawn(document);
        TracedPlant traced = input.Traced;
        DrawnCard[] cards = [.. sheets.Select(DrawnCard.Of)];
        int followed = 0;
        foreach (string id in cards.SelectMany(c => c.Strands.Select(s => s.Id)).Distinct())
        {
            int number = int.Parse(id["strand-".Length..]);
            string met = string.Join(' ', cards.SelectMany(c => c.Followed(id)));
            List<int> walk = Walk(traced, number);
            string down = string.Join(' ', walk.Select(p => Cell(traced, p)));
            string up = string.Join(' ', Enumerable.Reverse(walk).Select(p => Cell(traced, p)));
            Assert.True(met == down || met == up, $"strand {number}: the finger meets {met}, the walk {down}");
            followed++;
        }

        // Every strand with something plugged in that an interface is on is told.
        Assert.Equal(input.Selection.Strands.Count(s => traced.Strands[s].Length > 1), followed);
    }

    [Theory]
    [MemberData(nameof(Documents))]
    public void The_filled_place_of_a_face_is_where_the_strand_leaves_or_the_source_goes_in(string document)
    {
        (ViewInput input, IReadOnlyList<DrawingSheet> sheets) = CardDocuments.Drawn(document);
        TracedPlant traced = input.Traced;
        SceneGroup[] hops = [.. sheets.SelectMany(d => DrawnCard.Of(d).Hops)];
        // What each hop says of each strand: the strand, and the cells where it enters and leaves.
        (int Number, string? Enters, string? Leaves)[][] visits = [.. hops.Select(h => h.Title!.Split("; strand ")[1..].Select(Visit).ToArray())];
        var walks = visits.SelectMany(v => v).GroupBy(v => v.Number).ToDictionary(g => g.Key, g => new Queue<int>(Told(traced, g.Key, [.. g.SelectMany(v => (string?[])[v.Enters, v.Leaves]).OfType<string>()])));
        for (int h = 0; h < hops.Length; h++)
        {
            var expected = new List<(int, int)>();
            foreach ((int number, string? enters, string? leaves) in visits[h])
            {
                if (enters is not null)
                    walks[number].Dequeue();
                if (leaves is null)
                    continue;
                int position = walks[number].Dequeue();
                int lit = enters is not null ? position : traced.Graph.Outside[position];
                // A loop has no end for a source, so nothing is lit.
                if (lit < 0 || traced.Strands.IsLoop(traced.StrandOf(position)) || (enters is null && traced.Graph.Inside[lit] < 0 && traced.Graph.LaneAt(lit) is null))
                    continue;
                PositionPlace place = traced.Graph.PlaceOf(lit);
                Face face = traced.Plant.Port(place.Port).Face;
                // A plug that meets no fibre where it sits lets no light be seen.
                bool blocked = traced.Graph.Outside[lit] < 0 && traced.MatingAt(lit) is not null;
                if (face.Family is ConnectorFamily.Duplex or ConnectorFamily.Array && !blocked)
                    expected.Add((face.Count, place.Position));
            }

            Assert.Equal(expected, DrawnCard.Faces(hops[h]));
        }

        Assert.All(walks.Values, Assert.Empty);
    }

    // Trade facts, polarity, 3.1, method B, as printed: left port, cassette position, array, trunk, array, position, right port.
    [Theory]
    [InlineData(1, "A 1 12 1 12 B")]
    [InlineData(1, "B 2 11 2 11 A")]
    [InlineData(2, "A 3 10 3 10 B")]
    [InlineData(2, "B 4 9 4 9 A")]
    [InlineData(3, "A 5 8 5 8 B")]
    [InlineData(3, "B 6 7 6 7 A")]
    [InlineData(4, "A 7 6 7 6 B")]
    [InlineData(4, "B 8 5 8 5 A")]
    [InlineData(5, "A 9 4 9 4 B")]
    [InlineData(5, "B 10 3 10 3 A")]
    [InlineData(6, "A 11 2 11 2 B")]
    [InlineData(6, "B 12 1 12 1 A")]
    public void Method_B_is_told_as_in_the_table(int port, string row)
    {
        string[] r = row.Split(' ');
        // With A-to-B cords cassette B is lit by the transmitter, interface A; the light goes on to the receiver, interface B.
        string[] cords = r[0] == "B" ? ["A", "near:B far:A", "near:B far:A", "B"] : ["B", "near:A far:B", "near:A far:B", "A"];
        AssertTold("methods/duplex-B.yaml", port, $"{port}:{cords[0]} {cords[1]} {port}:{r[0]} rear:{r[1]} near:{r[2]} far:{r[3]} rear:{r[4]} {port}:{r[5]} {cords[2]} {port}:{cords[3]}");
    }

    // Trade facts, polarity, 3.1, method A, as printed; the right cord is A-to-A.
    [Theory]
    [InlineData(1, "A 1 1 1 1 A")]
    [InlineData(1, "B 2 2 2 2 B")]
    [InlineData(2, "A 3 3 3 3 A")]
    [InlineData(2, "B 4 4 4 4 B")]
    [InlineData(3, "A 5 5 5 5 A")]
    [InlineData(3, "B 6 6 6 6 B")]
    [InlineData(4, "A 7 7 7 7 A")]
    [InlineData(4, "B 8 8 8 8 B")]
    [InlineData(5, "A 9 9 9 9 A")]
    [InlineData(5, "B 10 10 10 10 B")]
    [InlineData(6, "A 11 11 11 11 A")]
    [InlineData(6, "B 12 12 12 12 B")]
    public void Method_A_is_told_as_in_the_table(int port, string row)
    {
        string[] r = row.Split(' ');
        string[] cords = r[0] == "B" ? ["A", "near:B far:A", "near:A far:A", "B"] : ["B", "near:A far:B", "near:B far:B", "A"];
        AssertTold("methods/duplex-A.yaml", port, $"{port}:{cords[0]} {cords[1]} {port}:{r[0]} rear:{r[1]} near:{r[2]} far:{r[3]} rear:{r[4]} {port}:{r[5]} {cords[2]} {port}:{cords[3]}");
    }

    private static void AssertTold(string document, int port, string expected)
    {
        DrawnCard card = DrawnCard.Of(CardDocuments.Drawn(document).Sheets[port - 1]);
        Assert.Contains(expected, card.Strands.Select(s => string.Join(' ', card.Followed(s.Id))));
    }

    /// <summary>
    /// From an end of the strand of a number the walk takes the side that there is, and then the other side, and so on until one
    /// is missing. A loop has no end: there it goes inside from the first position and round to it.
    /// </summary>
    private static List<int> Walk(TracedPlant traced, int number)
    {
        ReadOnlySpan<int> inside = traced.Graph.Inside, outside = traced.Graph.Outside;
        int start = -1, end = -1;
        for (int p = 0; p < traced.Graph.PositionCount && end < 0; p++)
        {
            if (traced.NumberOf(traced.StrandOf(p)) != number)
                continue;
            start = start < 0 ? p : start;
            end = inside[p] < 0 || outside[p] < 0 ? p : -1;
        }

        start = end >= 0 ? end : start;
        var walk = new List<int> { start };
        bool goesInside = inside[start] >= 0;
        for (int p = start; ; goesInside = !goesInside)
        {
            p = goesInside ? inside[p] : outside[p];
            if (p < 0 || p == start)
                return walk;
            walk.Add(p);
        }
    }

    private static string Cell(TracedPlant traced, int p)
    {
        PositionPlace place = traced.Graph.PlaceOf(p);
        PortShape port = traced.Plant.Port(place.Port);
        string position = port.Face.Family switch
        {
            ConnectorFamily.Duplex => place.Position == 1 ? ":A" : ":B",
            ConnectorFamily.Simplex => "",
            _ => $":{place.Position}",
        };
        return port.Name + position;
    }

    /// <summary>A strand's name in a hop's words, such as <c>3 enters 1:B, leaves rear:2, light there at place 2 of 12</c>.</summary>
    private static (int Number, string? Enters, string? Leaves) Visit(string words)
    {
        return (int.Parse(words[..words.IndexOf(' ')]), After("enters "), After("leaves "));

        string? After(string verb)
        {
            int at = words.IndexOf(verb, StringComparison.Ordinal);
            return at < 0 ? null : words[(at + verb.Length)..].Split(',')[0];
        }
    }

    /// <summary>The walk of a strand in the direction in which its cells are told.</summary>
    private static List<int> Told(TracedPlant traced, int number, string[] cells)
    {
        List<int> walk = Walk(traced, number);
        if (!cells.SequenceEqual(walk.Select(p => Cell(traced, p))))
            walk.Reverse();
        Assert.Equal(walk.Select(p => Cell(traced, p)), cells);
        return walk;
    }
}
