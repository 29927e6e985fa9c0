namespace PolarityMap.Core.Optics;

/// <summary>The receptacle that an interface has, or each of its receptacles.</summary>
public enum PortForm
{
    /// <summary>One fibre, position 1.</summary>
    Simplex,

    /// <summary>Two fibres: A is position 1, B is position 2.</summary>
    Duplex,

    /// <summary>An array of one row of 12.</summary>
    Array12,

    /// <summary>An array of one row of 16, offset key.</summary>
    Array16,

    /// <summary>An array of two rows of 12: 1 to 12 on top, 13 to 24 below.</summary>
    Array24,

    /// <summary>An array of two rows of 16: 1 to 16 on top, 17 to 32 below.</summary>
    Array32,
}

/// <summary>Sizes of the forms.</summary>
public static class PortForms
{
    /// <summary>How many positions a receptacle of this form has, used or not.</summary>
    public static int Positions(this PortForm form) => form switch
    {
        PortForm.Simplex => 1,
        PortForm.Duplex => 2,
        PortForm.Array12 => 12,
        PortForm.Array16 => 16,
        PortForm.Array24 => 24,
        PortForm.Array32 => 32,
        _ => throw new ArgumentOutOfRangeException(nameof(form)),
    };

    /// <summary>True for the forms that take an array connector.</summary>
    public static bool IsArray(this PortForm form) => form >= PortForm.Array12;
}
