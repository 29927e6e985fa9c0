using PolarityMap.Core.Deviations;

namespace PolarityMap.Core.Locate;

/// <summary>Pairs of observations that no plant built from these parts can show, however it is built.</summary>
internal static class Contradictions
{
    public static IReadOnlyList<Contradiction> Of(DeviationContext context, IReadOnlyList<Observation> observations)
    {
        var found = new List<Contradiction>();
        var first = new Dictionary<object, Observation>();
        var nowhere = new Dictionary<int, LightSeen>();
        var ends = new Dictionary<int, (LightSeen Light, int Other)>();
        foreach (Observation observation in observations)
        {
            switch (observation)
            {
                case LightSeen light:
                    Same((light.From, light.Look), light, l => l.Seen != light.Seen, "the same light was seen to come out at two places");
                    Nowhere(light);
                    Ends(light);
                    break;
                case LampSeen lamp:
                    Same(lamp.Port, lamp, l => l.IsOn != lamp.IsOn, "the lamp is said to be on and off");
                    break;
                case LossMeasured loss:
                    Same((loss.From, loss.Seen, true), loss, l => l.IsTooMuch != loss.IsTooMuch, "the same way was measured as good and as too weak");
                    break;
                case PartLooked look:
                    Same(look.Part, look, l => l.IsAsDescribed != look.IsAsDescribed, "the part is said to be as described and different");
                    break;
            }
        }

        return found;

        void Same<T>(object key, T now, Func<T, bool> differs, string why)
            where T : Observation
        {
            if (!first.TryAdd(key, now) && first[key] is T before && differs(before))
                found.Add(new Contradiction(before, now, why));
        }

        // Light that no interface shows does not come out at one.
        void Nowhere(LightSeen light)
        {
            if (light is { Look: < 0, Seen: < 0 })
            {
                nowhere.TryAdd(light.From, light);
                if (ends.TryGetValue(light.From, out (LightSeen Light, int Other) lit) && lit.Light != light && lit.Light.From == light.From)
                    found.Add(new Contradiction(lit.Light, light, "the light was seen at an interface, and at none"));
            }
            else if (IsInterface(light.Seen) && nowhere.TryGetValue(light.From, out LightSeen? none))
            {
                found.Add(new Contradiction(none, light, "the light was seen at an interface, and at none"));
            }
        }

        // A strand has two ends and no more.
        void Ends(LightSeen light)
        {
            if (!IsInterface(light.From) || !IsInterface(light.Seen))
                return;
            End(light.From, light.Seen, light);
            End(light.Seen, light.From, light);
        }

        void End(int end, int other, LightSeen light)
        {
            if (ends.TryAdd(end, (light, other)) || ends[end].Other == other)
                return;
            LightSeen before = ends[end].Light;
            if (before.From != light.From || before.Look != light.Look)
                found.Add(new Contradiction(before, light, $"one fibre would end at {context.Traced.Address(end)}, {context.Traced.Address(ends[end].Other)} and {context.Traced.Address(other)}"));
        }

        bool IsInterface(int position) => position >= 0 && context.Graph.HasLane(position);
    }
}
