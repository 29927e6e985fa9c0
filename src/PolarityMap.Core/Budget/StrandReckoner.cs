using PolarityMap.Core.Optics;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Core.Budget;

/// <summary>Reckons the losses of strands by one set of limits. Not for several threads at once.</summary>
internal sealed class StrandReckoner(TracedPlant traced, LimitProfile limits)
{
    private static readonly Wavelength s_multimode = new(850);

    private static readonly Wavelength s_singleMode = new(1310);

    private readonly StrandParts _parts = new();

    /// <summary>The budget of a strand with a lane at both ends, in one direction of its light.</summary>
    public StrandBudget Reckon(int strand, int sender, int receiver)
    {
        _parts.Fill(traced, strand);
        PortShape from = traced.Plant.Port(traced.Graph.PlaceOf(sender).Port);
        PortShape to = traced.Plant.Port(traced.Graph.PlaceOf(receiver).Port);
        (Application? application, LimitGap gap) = LinkApplication.Of(from, to);
        (FibreClass? fibre, bool mixed) = LowestClass();
        (FibreLimit? limit, FibreLimit? byDefault) = (null, null);
        if (application is not null)
        {
            gap = fibre is null ? LimitGap.FibreNotStated : mixed ? LimitGap.CoresMixed : LimitGap.None;
            if (gap == LimitGap.None)
            {
                limit = application.Limit(limits, fibre!.Name);
                byDefault = application.Limit(LimitProfile.Default, fibre.Name);
                gap = limit is { Loss: not null } ? LimitGap.None
                    : limit is not null || application.Limits(limits).Count == 0 ? LimitGap.NotOnRecord : LimitGap.FibreNotListed;
            }
        }

        Wavelength? known = traced.Graph.LaneAt(sender)?.Sends ?? traced.Graph.LaneAt(receiver)?.Hears;
        Reckoned worst = Worst(known is { } one ? [one] : application?.Wavelengths ?? [], fibre);
        Length length = LengthOf(0, _parts.Count, out int lengthsMissing);
        return new StrandBudget
        {
            Strand = strand,
            Sender = sender,
            Receiver = receiver,
            Application = application,
            Wavelength = worst.Wavelength,
            WavelengthIsAssumed = known is null && application is null && worst.Wavelength is not null,
            Fibre = fibre,
            FibresMissing = FibresMissing(),
            Length = length,
            LengthsMissing = lengthsMissing,
            Standard = worst.Standard,
            Stated = worst.Stated,
            Expected = worst.Expected,
            FibreLossIsUnknown = worst.IsIncomplete,
            WorstCable = WorstCable(worst.Wavelength, fibre),
            Limit = limit,
            DefaultLimit = byDefault,
            Gap = gap,
            Delay = DelayOf(worst.Wavelength, fibre),
        };
    }

    /// <summary>How many of the strand's matings fit into the limit beside its fibre and splices, the best ones first.</summary>
    public int MatingsThatFit(StrandBudget budget)
    {
        if (budget.LossLimit is not { } limit)
            return budget.Stated.MatingCount;
        _parts.Fill(traced, budget.Strand);
        var losses = new List<Decibel>();
        for (int i = 0; i + 1 < _parts.Count; i++)
        {
            if (_parts.JointAfter(i) is { IsMating: true } joint)
                losses.Add(Loss(joint).Stated);
        }

        losses.Sort();
        Decibel left = limit - budget.Stated.Fibre - budget.Stated.Splices;
        int fit = 0;
        while (fit < losses.Count && losses[fit] <= left)
            left -= losses[fit++];
        return fit;
    }

    /// <summary>
    /// The limit for testing the fixed part of a strand: all of it but the first and last cable where they come straight from
    /// an interface. Null where nothing is left of it, or where a length or the fibre in it is not known.
    /// </summary>
    public AcceptanceLimit? Acceptance(StrandBudget budget)
    {
        _parts.Fill(traced, budget.Strand);
        int first = 0, end = _parts.Count;
        if (end > 1)
        {
            first += _parts.IsCable(first) ? 1 : 0;
            end -= _parts.IsCable(end - 1) ? 1 : 0;
        }

        if (first >= end || budget.Fibre is not { } fibre)
            return null;
        Length length = LengthOf(first, end, out int missing);
        if (missing > 0)
            return null;
        bool multimode = fibre.IsMultimode;
        Decibel plug = limits.ReferencePlug(multimode);
        IReadOnlyList<Wavelength> wavelengths = ReferenceMethod.TestWavelengths(multimode);
        Wavelength? light = budget.Wavelength is { } w ? Nearest(w, wavelengths) : null;
        var tests = new TestLimit[wavelengths.Count];
        for (int i = 0; i < tests.Length; i++)
        {
            // What a part states is for the wavelength it is used at, and says nothing of the other window.
            LossSum inner = Sum(first, end, wavelengths[i], fibre, statementsCount: wavelengths[i] == light).Stated;
            tests[i] = new TestLimit(wavelengths[i], inner, (2 * plug) + inner.Total);
        }

        return new AcceptanceLimit(
            _parts.WayThrough(first).In,
            _parts.WayThrough(end - 1).Out,
            _parts.Count == 1 && _parts.IsCable(0),
            length,
            multimode,
            plug,
            ReferenceMethod.Name(limits, multimode),
            tests);
    }

    /// <summary>
    /// The most that a light-source test may read over a way, at the test wavelength that loses most. Null where the way passes
    /// no part.
    /// </summary>
    public WayLimit? Way(ReadOnlySpan<int> way)
    {
        _parts.Fill(traced, way);
        if (_parts.Count == 0)
            return null;
        (FibreClass? fibre, _) = LowestClass();
        bool multimode = fibre?.IsMultimode ?? true;
        Reckoned worst = Worst(fibre is null ? [] : ReferenceMethod.TestWavelengths(multimode), fibre);
        _ = LengthOf(0, _parts.Count, out int lengthsMissing);
        int plugs = (IsPlug(way[0]) ? 1 : 0) + (IsPlug(_parts.WayThrough(_parts.Count - 1).Out) ? 1 : 0);
        return new WayLimit(worst.Stated, limits.ReferencePlug(multimode), plugs, worst.Wavelength, lengthsMissing, worst.IsIncomplete);
    }

    private bool IsPlug(int position) => traced.Plant.Port(traced.Graph.PlaceOf(position).Port).Face.Family != ConnectorFamily.Bare;

    private static Wavelength Nearest(Wavelength light, IReadOnlyList<Wavelength> wavelengths)
    {
        Wavelength best = wavelengths[0];
        foreach (Wavelength w in wavelengths)
        {
            if (Math.Abs(w.Nanometres - light.Nanometres) < Math.Abs(best.Nanometres - light.Nanometres))
                best = w;
        }

        return best;
    }

    private static Attenuation Least(Attenuation a, Attenuation b) => a <= b ? a : b;

    /// <summary>The lowest class of the parts that state one, and whether their cores differ.</summary>
    private (FibreClass? Fibre, bool Mixed) LowestClass()
    {
        FibreClass? lowest = null;
        bool mixed = false;
        for (int i = 0; i < _parts.Count; i++)
        {
            if (_parts[i].Fibre is not { } fibre)
                continue;
            mixed |= lowest is not null && lowest.Core != fibre.Core;
            if (lowest is null || (lowest.Core == fibre.Core && fibre.Rank < lowest.Rank))
                lowest = fibre;
        }

        return (lowest, mixed);
    }

    private int FibresMissing()
    {
        int missing = 0;
        for (int i = 0; i < _parts.Count; i++)
            missing += _parts.IsCable(i) && _parts[i].Fibre is null ? 1 : 0;
        return missing;
    }

    private Length LengthOf(int first, int end, out int missing)
    {
        long total = 0;
        missing = 0;
        for (int i = first; i < end; i++)
        {
            if (_parts[i].Length is { } length)
                total += length.Millimetres;
            else if (_parts.IsCable(i))
                missing++;
        }

        return Length.FromMillimetres(Math.Min(total, Length.MaxMillimetres));
    }

    private Attenuation? WorstCable(Wavelength? wavelength, FibreClass? lowest)
    {
        Attenuation? worst = null;
        for (int i = 0; i < _parts.Count; i++)
        {
            if (_parts.IsCable(i) && Rates(_parts[i], wavelength, lowest, true).Stated is { } stated && (worst is not { } w || stated > w))
                worst = stated;
        }

        return worst;
    }

    private Delay? DelayOf(Wavelength? wavelength, FibreClass? lowest)
    {
        var delay = new Delay(0);
        for (int i = 0; i < _parts.Count; i++)
        {
            if (_parts[i].Length is not { } length)
                continue;
            decimal? index = traced.Plant.Practice.GroupIndex
                ?? (wavelength is { } w ? (_parts[i].Fibre ?? lowest)?.GroupIndex(w) : null);
            if (index is not { } known)
                return null;
            delay += Delay.Over(length, known);
        }

        return delay;
    }

    /// <summary>The sums at the wavelength that loses most.</summary>
    private Reckoned Worst(IReadOnlyList<Wavelength> wavelengths, FibreClass? lowest)
    {
        if (wavelengths.Count == 0)
            return Sum(0, _parts.Count, lowest is null ? null : lowest.IsMultimode ? s_multimode : s_singleMode, lowest, true);
        Reckoned worst = Sum(0, _parts.Count, wavelengths[0], lowest, true);
        for (int i = 1; i < wavelengths.Count; i++)
        {
            Reckoned other = Sum(0, _parts.Count, wavelengths[i], lowest, true);
            if (other.Stated.Total > worst.Stated.Total)
                worst = other;
        }

        return worst;
    }

    private Reckoned Sum(int first, int end, Wavelength? wavelength, FibreClass? lowest, bool statementsCount)
    {
        LossSum standard = default, byStatement = default, expected = default;
        bool incomplete = false;
        bool multimode = lowest?.IsMultimode ?? true;
        for (int i = first; i < end; i++)
        {
            Part part = _parts[i];
            if (part.Length is { } length)
            {
                (Attenuation? limit, Attenuation? stated, Attenuation? estimate) = Rates(part, wavelength, lowest, statementsCount);
                incomplete |= stated is null && length > default(Length);
                standard = limit is { } l ? standard.PlusFibre(length, l) : standard;
                byStatement = stated is { } s ? byStatement.PlusFibre(length, s) : byStatement;
                expected = estimate is { } e ? expected.PlusFibre(length, e) : expected;
            }

            if (part.Shape.Splices > 0)
            {
                Decibel stated = part.SpliceLoss ?? limits.SpliceMax;
                standard = standard.PlusSplices(part.Shape.Splices, limits.SpliceMax);
                byStatement = byStatement.PlusSplices(part.Shape.Splices, stated);
                expected = expected.PlusSplices(part.Shape.Splices, Decibel.Min(stated, LossEstimates.Splice(multimode)));
            }

            if (i + 1 < end && _parts.JointAfter(i) is { IsMating: true } joint)
            {
                (Decibel stated, Decibel estimate) = Loss(joint);
                standard = standard.PlusMatings(1, limits.MatingMax);
                byStatement = byStatement.PlusMatings(1, stated);
                expected = expected.PlusMatings(1, estimate);
            }
        }

        return new Reckoned(wavelength, standard, byStatement, expected, incomplete);
    }

    /// <summary>
    /// The attenuation of a part by its class, by its own statement, and expected. A part that states no class is taken to be of
    /// the strand's lowest.
    /// </summary>
    private (Attenuation? Standard, Attenuation? Stated, Attenuation? Expected) Rates(Part part, Wavelength? wavelength, FibreClass? lowest, bool statementsCount)
    {
        Attenuation? own = statementsCount ? part.Attenuation : null;
        if ((part.Fibre ?? lowest) is not { } fibre || wavelength is not { } w)
            return (own, own, own);
        Attenuation standard = limits.AttenuationOf(fibre, w);
        Attenuation stated = own ?? standard;
        return (standard, stated, Least(stated, LossEstimates.AttenuationOf(fibre, w)));
    }

    private (Decibel Stated, Decibel Expected) Loss(Joint joint)
    {
        Decibel stated = joint.A.StatedLoss is { } a && joint.B.StatedLoss is { } b ? Decibel.Max(a, b) : limits.MatingMax;
        Decibel expected = joint.A.ExpectedLoss is { } x && joint.B.ExpectedLoss is { } y ? Decibel.Max(x, y) : LossEstimates.Mating(joint.IsArray);
        return (stated, Decibel.Min(stated, expected));
    }

    private readonly record struct Reckoned(Wavelength? Wavelength, LossSum Standard, LossSum Stated, LossSum Expected, bool IsIncomplete);
}
