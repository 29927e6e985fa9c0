using PolarityMap.Core.Optics;
using PolarityMap.Core.Parts;

namespace PolarityMap.Core.Planning;

/// <summary>What can be told of a candidate before anything is built.</summary>
internal static class Structure
{
    public static void Check(PlanDraft draft)
    {
        Brief brief = draft.Brief;
        PlanMethod method = draft.Candidate.Method;
        foreach (BriefNetwork network in brief.Networks)
        {
            if (OfApplication(network, network.Application, draft.Candidate, "application") is { } now)
                draft.Refuse(now);
            if (network.Later is { } later && OfApplication(network, later, draft.Candidate, "later") is { } then)
                draft.Refuse(then);
        }

        if (brief.OneCassette && !method.HasOneCassette && brief.Networks.Any(n => !n.Application.IsParallel))
        {
            string near = method.NearFor(draft.Candidate.Array), far = method.FarFor(draft.Candidate.Array);
            draft.Refuse(new Refusal("one-cassette", RefusalCode.Cassettes, $"one kind of cassette is asked for, and method {method.Name} takes {near} ones at one end and {far} ones at the other; one kind would have to be mounted upside down at one end, which is not planned"));
        }

        Ways(draft);
    }

    /// <summary>Refuses cables that would have no length.</summary>
    private static void Ways(PlanDraft draft)
    {
        Brief brief = draft.Brief;
        foreach (BriefOutlets outlets in brief.Outlets)
        {
            BriefRoom room = brief.Rooms[outlets.Room];
            if (brief.WayOf(outlets, cable: 0) == 0)
            {
                draft.Refuse(outlets.Distance is { Millimetres: > 0 }
                    ? new Refusal("separation", RefusalCode.Way, $"{room.Name} holds switches, so that the trunks to a zone box for {outlets.Name} in it would have no length")
                    : new Refusal($"outlets.{outlets.Name}.distance", RefusalCode.Way, $"{room.Name} holds switches, and {outlets.Name} in it has no distance, so that the trunks would have no length"));
            }
            else if (brief.Separation == SeparationPolicy.Gathered && outlets.Distance is { Millimetres: 0 })
            {
                draft.Refuse(new Refusal($"outlets.{outlets.Name}.distance", RefusalCode.Way, $"the cables from the zone box to {outlets.Name} would have no length"));
            }
        }
    }

    /// <summary>True where no plant can be built of the brief at all, so that there is nothing to check.</summary>
    public static bool IsUnbuildable(Brief brief) => brief.Networks.Any(n => !IsPlanned(n.Application));

    /// <summary>True for applications of pairs, and of arrays in one receptacle.</summary>
    public static bool IsPlanned(Application application) => application.Form != PortForm.Simplex && application.Layouts[0].Receptacles == 1;

    /// <summary>Why an application cannot be planned on an array, or null.</summary>
    public static Refusal? OfApplication(BriefNetwork network, Application application, PlanCandidate candidate, string key)
    {
        string requirement = $"networks.{network.Name}.{key}";
        if (!IsPlanned(application))
        {
            string why = application.Form == PortForm.Simplex ? "runs on one fibre, and plans are made of pairs and arrays" : "has two receptacles for one port, and plans give each port one";
            return new Refusal(requirement, RefusalCode.Application, $"{application.Name} {why}");
        }

        if (!application.IsParallel)
            return null;
        int wide = application.Form.Positions();
        Face trunk = candidate.Array.Face;
        return trunk.Count == wide
            ? null
            : new Refusal(requirement, RefusalCode.Array, $"{application.Name} has an array of {wide} positions, and trunks of base {candidate.Base} one of {trunk.Count}");
    }
}
