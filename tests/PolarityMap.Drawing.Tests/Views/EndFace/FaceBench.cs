using PolarityMap.Core.Checks;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Views;
using PolarityMap.Drawing.Views.EndFace;
using Xunit;

namespace PolarityMap.Drawing.Tests.Views.EndFace;

/// <summary>Puts a plant together from kinds and addresses and draws the faces of its matings.</summary>
internal sealed class FaceBench
{
    private readonly PlantBuilder _builder = new() { Title = new PlantTitle("Faces") };
    private readonly Dictionary<string, int> _parts = [];
    private int _line;

    public FaceBench Add(string name, string kind, Action<AttributeValues>? set = null)
    {
        PartKind found = PartKinds.Find(kind)!;
        var values = new AttributeValues(found.AllAttributes);
        set?.Invoke(values);
        var faults = new List<AttributeFault>();
        Shape? shape = found.Build(values, faults);
        Assert.Empty(faults);
        _parts.Add(name, _builder.AddPart(PartMaker.Make(name, found, values, shape!, NextPlace(), [])));
        return this;
    }

    /// <summary>Mates two ports; <c>PART/PORT:POSITION</c> names the place in a duplex port that a simplex plug takes.</summary>
    public FaceBench Mate(string a, string b, Keying keys = Keying.Aligned)
    {
        (PortRef portA, int positionA) = Port(a);
        (PortRef portB, int positionB) = Port(b);
        _builder.AddMating(new Mating(portA, portB, keys, NextPlace()) { PositionOfA = positionA, PositionOfB = positionB });
        return this;
    }

    public TracedPlant Trace() => TracedPlant.Of(_builder.Build());

    public ViewInput Input(Choice? choice = null, PaperChoice? paper = null)
    {
        TracedPlant traced = Trace();
        Selection selection = Selection.Of(traced, Checker.Check(traced), choice ?? new Choice());
        return new ViewInput(traced, selection) { Paper = paper ?? PaperChoice.SmallestThatIsClear };
    }

    /// <summary>The sheets as drawn.</summary>
    public List<DrawingSheet> Draw(Choice? choice = null, PaperChoice? paper = null)
    {
        IReadOnlyList<PlannedSheet> sheets = new EndFaceView().Plan(Input(choice, paper));
        return [.. sheets.Select((s, i) => s.Draw(new SheetPlace(i + 1, sheets.Count)))];
    }

    private SourcePlace NextPlace() => new("plant.yaml", ++_line, 1);

    private (PortRef Port, int Position) Port(string address)
    {
        string[] halves = address.Split('/', 2);
        string[] port = halves[1].Split(':');
        int part = _parts[halves[0]];
        int index = _builder.Parts[part].Shape.FindPort(port[0]);
        Assert.True(index >= 0, $"no port {address}");
        int position = 0;
        Assert.True(port.Length == 1 || _builder.Parts[part].Shape.Ports[index].Face.TryParsePosition(port[1], out position), address);
        return (new PortRef(part, index), position);
    }
}
