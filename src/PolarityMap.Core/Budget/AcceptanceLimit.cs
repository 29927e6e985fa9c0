using PolarityMap.Core.Optics;

namespace PolarityMap.Core.Budget;

/// <summary>The most that a light-source test may read at one wavelength.</summary>
/// <param name="Wavelength">The wavelength of the test.</param>
/// <param name="Inner">What the link under test may lose between its end connectors.</param>
/// <param name="Limit">That and a reference plug at each end.</param>
public sealed record TestLimit(Wavelength Wavelength, LossSum Inner, Decibel Limit);

/// <summary>
/// What a light-source test of a strand's fixed part may read, with reference cords in place of the outermost cords (formula
/// of ISO/IEC 14763-3 for the one-cord method, one public source). Of a single cord the cord itself is tested.
/// </summary>
/// <param name="From">The position at which one test cord is plugged in.</param>
/// <param name="To">The position at which the other is.</param>
/// <param name="IsSingleCord">True when the strand is one cord and nothing else.</param>
/// <param name="Length">Length of the fixed part.</param>
/// <param name="IsMultimode">True for multimode fibre.</param>
/// <param name="ReferencePlug">What each end may add: a reference plug mated with an ordinary one.</param>
/// <param name="Method">The reference method by name.</param>
/// <param name="Tests">The limit at each test wavelength.</param>
public sealed record AcceptanceLimit(
    int From,
    int To,
    bool IsSingleCord,
    Length Length,
    bool IsMultimode,
    Decibel ReferencePlug,
    string Method,
    IReadOnlyList<TestLimit> Tests);
