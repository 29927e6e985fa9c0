using PolarityMap.Core.Optics;

namespace PolarityMap.Core.Budget;

/// <summary>A loss that is neither fibre nor mating nor splice, such as the step from a larger core to a smaller one.</summary>
/// <param name="Name">What it comes from, in words.</param>
/// <param name="Loss">How much.</param>
public readonly record struct NamedLoss(string Name, Decibel Loss);
