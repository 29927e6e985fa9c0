using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.Plan;

/// <summary>A piece of a plan that is not parted between pages.</summary>
/// <param name="Step">The number of the step that it belongs to.</param>
/// <param name="Height">Its height, mm.</param>
/// <param name="IsHead">True for the head of a step, which stays with what follows it.</param>
/// <param name="Draw">Draws it with its top left corner at a place.</param>
internal sealed record PlanRow(int Step, double Height, bool IsHead, Func<double, double, IEnumerable<SceneElement>> Draw);
