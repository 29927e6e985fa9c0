using PolarityMap.Core.Parts;

namespace PolarityMap.Documents.Tables.Import;

/// <summary>
/// Cords that have their names from their ends, such as <c>SW-1/3~K-1/3</c>: they are written into a run without a name, which gives
/// them the same one again. A cord whose ends are elsewhere by now, as after an as-built difference, is none of them.
/// </summary>
internal sealed class InlineCords
{
    private readonly Draft _draft;
    private readonly Dictionary<string, List<HopJoint>> _at = new(StringComparer.Ordinal);

    public InlineCords(Draft draft, List<HopJoint> joints)
    {
        _draft = draft;
        foreach (HopJoint joint in joints)
        {
            Add(joint.From, joint);
            if (joint.To is { } to)
                Add(to, joint);
        }
    }

    /// <summary>Writes the run of a cord; false when its name does not follow from its ends.</summary>
    public bool Take(HopPart part, IReadOnlyList<CellAttribute> attributes)
    {
        HopJoint? near = JointAt(part, "near"), far = JointAt(part, "far");
        if (near is null && far is null)
            return false;
        string[] left = Neighbours(near, part), right = Neighbours(far, part);
        string plain = WithoutNumber(part.Name);
        foreach (string before in left)
        {
            foreach (string after in right)
            {
                if (plain != $"{(before.Length > 0 ? before : "open")}~{(after.Length > 0 ? after : "open")}")
                    continue;
                Write(part, attributes, near, before, far, after);
                return true;
            }
        }

        return false;
    }

    /// <summary>A second cord between the same ends has a number behind its name.</summary>
    private static string WithoutNumber(string name)
    {
        int sign = name.LastIndexOf('#');
        return sign > 0 && sign < name.Length - 1 && name.AsSpan(sign + 1).IndexOfAnyExceptInRange('0', '9') < 0 && name.LastIndexOf('/') < sign && name.LastIndexOf('~') < sign
            ? name[..sign] : name;
    }

    private void Add(NamedPort port, HopJoint joint)
    {
        string key = Key(port.Part, port.Port);
        if (!_at.TryGetValue(key, out List<HopJoint>? joints))
            _at[key] = joints = [];
        joints.Add(joint);
    }

    private HopJoint? JointAt(HopPart part, string port) => _at.TryGetValue(Key(part.Name, port), out List<HopJoint>? joints) ? joints[0] : null;

    private static string Key(string part, string port) => $"{part}\n{port}";

    /// <summary>How a run may have named what a cord's end is in; one empty text for nothing.</summary>
    private static string[] Neighbours(HopJoint? joint, HopPart part)
    {
        if (joint is null)
            return [""];
        if ((joint.Through ?? (joint.From.Part == part.Name ? joint.To : joint.From)) is not { } port)
            return [""];
        return [port.ToString(), $"{port.Part}/{port.Port}", port.Part];
    }

    private void Write(HopPart part, IReadOnlyList<CellAttribute> attributes, HopJoint? near, string before, HopJoint? far, string after)
    {
        string type = _draft.TypeOf(part.Kind!, part.Sheet!.ColumnOf(part.KindMeaning), attributes, part.Sheet.Name, part.Row!.Number);
        var line = new DraftLine(part.Sheet.Name, part.Row.Number).Add("  - [");
        if (before.Length > 0)
        {
            line.Add(AttributeWords.Quoted(before), part.Sheet.ColumnOf("in")).Add(", ");
            Keys(line, near!);
        }

        line.Add(AttributeWords.Quoted(type), part.Sheet.ColumnOf("part"));
        if (after.Length > 0)
        {
            line.Add(", ");
            Keys(line, far!);
            line.Add(AttributeWords.Quoted(after), part.Sheet.ColumnOf("meets"));
        }

        _draft.Runs.Add(line.Add("]"));
        Bring(near, part);
        Bring(far, part);
    }

    private static void Keys(DraftLine line, HopJoint joint)
    {
        if (joint.Keys.Length > 0)
            line.Add(AttributeWords.Quoted(joint.Keys)).Add(", ");
    }

    /// <summary>In an adapter two plugs meet, and the run of a cord brings its own only.</summary>
    private static void Bring(HopJoint? joint, HopPart part)
    {
        if (joint is null)
            return;
        if (joint.Through is null)
            joint.IsWritten = true;
        else
            joint.Plugged.Add(part.Name);
    }
}
