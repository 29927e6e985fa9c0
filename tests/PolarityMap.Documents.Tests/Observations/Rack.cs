using System.Text;
using PolarityMap.Core.Locate;
using PolarityMap.Core.Strands;
using PolarityMap.Documents.Observations;
using PolarityMap.Documents.Text;
using Xunit;

namespace PolarityMap.Documents.Tests.Observations;

/// <summary>A small plant, and what files say of it.</summary>
internal static class Rack
{
    /// <summary>
    /// Two switches over cassettes and a trunk as in method A; a desk port patched through an adapter panel with a spare adapter;
    /// an array of 12 places of which a parallel port lights 8; a way on one fibre.
    /// </summary>
    public const string Document = """
        plant: A rack
        defaults: { fibre: OM4 }
        parts:
          SW-L: { kind: duplex interface, ports: 3 }
          SW-R: { kind: duplex interface, ports: 3 }
          DESK: duplex interface
          LAMP: duplex interface
          Q-L: { kind: parallel interface }
          Q-R: { kind: parallel interface }
          BX-U: { kind: single-fibre interface, application: 1000BASE-BX10-U }
          BX-D: { kind: single-fibre interface, application: 1000BASE-BX10-D }
          K-L: { kind: straight cassette, keys: opposed }
          K-R: { kind: straight cassette, keys: opposed }
          TRUNK: { kind: Type-A trunk, length: 100 m }
          PANEL: { kind: duplex panel, ports: 2 }
          C-1: { kind: A-to-B cord, length: 2 m }
          C-2: { kind: A-to-B cord, length: 2 m }
          Q-C: { kind: Type-B cord, length: 10 m }
          S-1: { kind: simplex cord, fibre: OS2, length: 500 m }
        runs:
          - SW-L/1..3, A-to-B cord 2 m, K-L/1..3
          - K-L/rear, TRUNK, K-R/rear
          - K-R/1..3, A-to-A cord 2 m, SW-R/1..3
          - DESK/1, C-1, PANEL/1, C-2, LAMP/1
          - Q-L/1, Q-C, Q-R/1
          - BX-U/1, S-1, BX-D/1

        """;

    public static readonly TracedPlant Traced = TracedPlant.Of(Reading.Plant(Document));

    /// <summary>What a file says, with its problems.</summary>
    public static (SeenNotes? Notes, string Problems) Read(string path, byte[] bytes)
    {
        var problems = new ProblemList();
        SeenNotes? notes = SeenFile.Read(path, bytes, problems)?.Bind(Traced, problems);
        Assert.Equal(notes is null, !problems.IsEmpty);
        return (notes, problems.ToString());
    }

    public static (SeenNotes? Notes, string Problems) Read(string path, string text) => Read(path, Encoding.UTF8.GetBytes(text));

    /// <summary>What a file with nothing wrong in it says.</summary>
    public static IReadOnlyList<Observation> Observations(string path, string text)
    {
        (SeenNotes? notes, string problems) = Read(path, text);
        Assert.Equal("", problems);
        return notes!.Observations;
    }

    /// <summary>An observation in words, in one line.</summary>
    public static string Words(Observation observation) => FieldWords.Saw(Traced, observation);

    /// <summary>
    /// A text with its mark § taken out, and the place where the mark was: the place that a message is to name.
    /// </summary>
    public static (string Text, string Place) Marked(string path, string marked)
    {
        int at = marked.IndexOf('§', StringComparison.Ordinal);
        string before = marked[..at];
        return (marked.Remove(at, 1), $"{path}:{before.Count(c => c == '\n') + 1}:{at - (before.LastIndexOf('\n') + 1) + 1}");
    }
}
