using CsCheck;
using PolarityMap.Core.Budget;
using PolarityMap.Core.Optics;
using Xunit;

namespace PolarityMap.Core.Tests.Budget;

/// <summary>How the three figures lie to each other, whatever the parts state.</summary>
public sealed class OrderPropertyTests
{
    /// <summary>What one cord states; nulls where it states nothing. Tenths of a decibel.</summary>
    private sealed record Cord(int Metres, int? Stated, int? Expected, int? Attenuation);

    // By definition: a statement that is no worse than the standard lowers a figure and never raises it.
    [Fact]
    public void Standard_is_at_least_stated_and_stated_at_least_expected() => Cords(mostStated: 7, mostAttenuation: 30).Sample(cords =>
    {
        foreach (StrandBudget s in Build(cords).Budgets().Strands)
        {
            Assert.True(s.Standard.Total >= s.Stated.Total, $"{s.Standard.Total} {s.Stated.Total}");
            Assert.True(s.Stated.Total >= s.Expected.Total, $"{s.Stated.Total} {s.Expected.Total}");
            Assert.Equal(s.Standard.MatingCount, s.Expected.MatingCount);
            Assert.Equal(s.Stated.Fibre + s.Stated.Matings + s.Stated.Splices, s.Stated.Total);
        }
    }, iter: 300);

    // A part that admits to be worse than the standard is believed: the judged figure is then the greater one.
    [Fact]
    public void Stated_is_at_least_expected_even_where_parts_are_worse_than_the_standard() => Cords(mostStated: 20, mostAttenuation: 80).Sample(cords =>
    {
        foreach (StrandBudget s in Build(cords).Budgets().Strands)
            Assert.True(s.Stated.Total >= s.Expected.Total, $"{s.Stated.Total} {s.Expected.Total}");
    }, iter: 300);

    // Reckoned again from the cords alone, without a strand: the larger statement of each two neighbours, or 0.75 dB.
    [Fact]
    public void The_stated_figure_is_the_sum_over_the_cords() => Cords(mostStated: 20, mostAttenuation: 80).Sample(cords =>
    {
        decimal sum = cords.Sum(c => c.Metres * (c.Attenuation is { } a ? a / 10m : 3.5m) / 1000m);
        for (int i = 1; i < cords.Length; i++)
            sum += cords[i - 1].Stated is { } one && cords[i].Stated is { } two ? Math.Max(one, two) / 10m : 0.75m;
        Assert.All(Build(cords).Budgets().Strands, s => Assert.Equal(sum, s.Stated.Total.Value));
    }, iter: 300);

    private static Gen<Cord[]> Cords(int mostStated, int mostAttenuation)
    {
        // Zero stands for nothing stated.
        static int? Given(int n) => n == 0 ? null : n;
        Gen<Cord> cord = Gen.Select(Gen.Int[1, 300], Gen.Int[0, mostStated], Gen.Int[0, 9], Gen.Int[0, mostAttenuation])
            .Select((metres, stated, expected, attenuation) => new Cord(metres, Given(stated), Given(expected), Given(attenuation)));
        return cord.Array[1, 7];
    }

    private static Bench Build(Cord[] cords)
    {
        Bench bench = new Bench().Add("L", "duplex interface", v => v.Set("application", "10GBASE-SR")).Add("R", "duplex interface", v => v.Set("application", "10GBASE-SR"))
            .Add("P", "duplex panel", v => v.Set("ports", cords.Length));
        for (int i = 1; i <= cords.Length; i++)
        {
            Cord cord = cords[i - 1];
            bench.Add($"C{i}", "duplex cord", v =>
            {
                v.Glass("OM3", cord.Metres).Set("type", "A-to-B").Duplex(cord.Stated / 10m);
                if (cord.Expected is { } e)
                    v.Set("expected-duplex-loss", new Decibel(e / 10m));
                if (cord.Attenuation is { } a)
                    v.Set("attenuation", new Attenuation(a / 10m));
            });
            if (i > 1)
                bench.Mate($"C{i - 1}/far", $"C{i}/near", through: $"P/{i - 1}");
        }

        return bench.Mate("L/1", "C1/near").Mate($"C{cords.Length}/far", "R/1");
    }
}
