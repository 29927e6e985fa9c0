namespace PolarityMap.Benchmarks.Locating;

/// <summary>How a search for injected deviations went.</summary>
/// <param name="IsSilent">True where nothing to see tells of them.</param>
/// <param name="Place">Place of the true cause, or of one that does the same to all light, when all tests are made; 0 when absent.</param>
/// <param name="IsAlike">True where it is another one that does the same to all light.</param>
/// <param name="IsLost">True when it was missing from the explanations while they were of its size.</param>
/// <param name="Tests">Tests until the true part, or its group that light does not tell apart, was left; -1 when that was not reached.</param>
/// <param name="Before">Tests among them that were made before sets as large as the true one were what was left.</param>
/// <param name="Bits">What had to be learnt then: the entropy of belief over groups.</param>
/// <param name="Surprise">What had to be learnt then to get at this very cause: the bits of its share, or of its group's.</param>
/// <param name="Milliseconds">Time of the first answer.</param>
/// <param name="Instead">What was left in first place when all tests are made.</param>
/// <param name="Left">How many explanations were left then.</param>
internal sealed record Course(bool IsSilent, int Place, bool IsAlike, bool IsLost, int Tests, int Before, double Bits, double Surprise, double Milliseconds, string Instead, int Left = 0);
