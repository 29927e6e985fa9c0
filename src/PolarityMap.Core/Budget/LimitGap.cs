namespace PolarityMap.Core.Budget;

/// <summary>Why a strand has no loss limit to be judged by.</summary>
public enum LimitGap
{
    /// <summary>It has one.</summary>
    None,

    /// <summary>Neither end says what it is for.</summary>
    NoApplication,

    /// <summary>The ends are for applications that do not work together, which a rule of its own says.</summary>
    ApplicationsDiffer,

    /// <summary>No part of the strand states its fibre class.</summary>
    FibreNotStated,

    /// <summary>Different cores follow each other, which a rule of its own says.</summary>
    CoresMixed,

    /// <summary>The application does not run on this class of fibre, which a rule of its own says.</summary>
    FibreNotListed,

    /// <summary>The application's loss limit is not on record; its distance may be.</summary>
    NotOnRecord,
}
